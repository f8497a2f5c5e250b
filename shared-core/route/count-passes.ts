import { PASS } from './event-codes.ts'
import type { EventList } from './event-list.ts'

/** Passes per bead: how often the thread runs through each, its first stringing included. */
export function countPasses(events: EventList, beads: number): Uint16Array {
  const passes = new Uint16Array(beads)
  const { kind, a, pool } = events
  for (let at = 0; at < events.poolCount; at += 1) addOne(passes, pool[at] ?? 0)
  for (let index = 0; index < events.count; index += 1) {
    if (kind[index] === PASS) addOne(passes, a[index] ?? 0)
  }
  return passes
}

function addOne(passes: Uint16Array, bead: number): void {
  const before = passes[bead] ?? 0
  if (before < 65_535) passes[bead] = before + 1
}
