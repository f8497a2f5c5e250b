import type { BeadLook } from '../../../drawing/bead-look.ts'
import type { BeadScene } from '../../../drawing/bead-scene.ts'
import type { Assembly } from '../assembly/assemble.ts'
import type { PlainPart } from '../reading/plain-reading.ts'

/** A figure for each bead of the picture, from the arrays of its parts; every copy of a part shows the same. */
export function levelsOf(
  { scene, parts: placed }: Assembly,
  parts: readonly PlainPart[],
  pick: (part: PlainPart) => Uint16Array | Uint8Array,
): Uint16Array {
  const levels = new Uint16Array(scene.xMm.length)
  for (const { partId, firstBead, beads } of placed) {
    const part = parts.find((one) => one.partId === partId)
    if (part !== undefined) levels.set(pick(part).subarray(0, beads), firstBead)
  }
  return levels
}

/** The same beads, coloured by level instead of by slot; all in the form and size of the panel's. */
export function levelScene(
  scene: BeadScene,
  levels: Uint16Array,
  hexes: readonly string[],
): BeadScene {
  const family = scene.palette[0]?.family ?? 'cylinder'
  const palette = hexes.map((hex): BeadLook => ({ hex, finish: 'matte', family }))
  const most = hexes.length - 1
  const { boxOfSlot: _, ...rest } = scene
  return { ...rest, slotOf: levels.map((level) => Math.min(level, most)), palette }
}
