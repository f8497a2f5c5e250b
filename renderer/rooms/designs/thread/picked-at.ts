import { PICK_UP } from '../../../../shared-core/route/event-codes.ts'
import type { EventList } from '../../../../shared-core/route/event-list.ts'
import type { Assembly } from '../assembly/assemble.ts'

/** Later than any event: beads of parts that are made after the one that is played. */
const LATER = 2_147_483_647

/** The event that picks up each bead of the picture, for the part that is played: -1 for parts before it. */
export function pickedAt(assembly: Assembly, partId: string, route: EventList): Int32Array {
  const found = new Int32Array(assembly.scene.xMm.length).fill(-1)
  const { kind, a, b, pool, count } = route
  const last = assembly.parts.findLast((part) => part.partId === partId)
  if (last !== undefined) found.fill(LATER, last.firstBead + last.beads)
  for (const part of assembly.parts) {
    if (part.partId !== partId) continue
    for (let event = 0; event < count; event += 1) {
      if (kind[event] !== PICK_UP) continue
      const from = a[event] ?? 0
      const end = from + (b[event] ?? 0)
      for (let at = from; at < end; at += 1) found[part.firstBead + (pool[at] ?? 0)] = event
    }
  }
  return found
}
