import { type BeadIndex, findBead } from '../../chart/bead-index.ts'
import { type Checkpoint, neverStops } from '../../route/checkpoint.ts'
import { DOWN, LEFT, RIGHT, UP } from '../../route/event-codes.ts'

/**
 * The units of a right-angle weave chart: rings of four beads. `ring` holds the beads of unit `u`
 * from `4 * u`, clockwise from the top (top, right, bottom, left). Arrays over units, row by row.
 */
export type WeaveUnits = Readonly<{
  count: number
  row: Int32Array
  column: Int32Array
  ring: Int32Array
  /** Units a bead belongs to, two at most; -1 for none. */
  unitsOf: Int32Array
}>

/** The way the thread runs through each place of a ring when it goes round clockwise. */
export const CLOCKWISE: readonly number[] = [RIGHT, DOWN, LEFT, UP]

/** Beads looked at between two looks at whether the rings are still wanted. */
const BEADS_A_LOOK = 65_536

/** Finds every whole ring of four beads. */
export function findUnits(index: BeadIndex, checkpoint: Checkpoint = neverStops): WeaveUnits {
  const row = new Int32Array(index.count)
  const column = new Int32Array(index.count)
  const ring = new Int32Array(4 * index.count)
  let count = 0
  const unitsOf = new Int32Array(index.count * 2).fill(-1)
  for (let top = 0; top < index.count; top += 1) {
    if (top % BEADS_A_LOOK === 0) checkpoint()
    const line = index.rowOf[top] ?? 0
    const at = index.atOf[top] ?? 0
    if (line % 2 !== 0 || at % 2 !== 1) continue
    const right = findBead(index, line + 1, at + 1)
    const bottom = findBead(index, line + 2, at)
    const left = findBead(index, line + 1, at - 1)
    if (right < 0 || bottom < 0 || left < 0) continue
    ring[4 * count] = top
    ring[4 * count + 1] = right
    ring[4 * count + 2] = bottom
    ring[4 * count + 3] = left
    for (let place = 4 * count; place < 4 * count + 4; place += 1) {
      const bead = ring[place] ?? 0
      unitsOf[unitsOf[2 * bead] === -1 ? 2 * bead : 2 * bead + 1] = count
    }
    row[count] = line >> 1
    column[count] = at >> 1
    count += 1
  }
  return {
    count,
    row: row.subarray(0, count),
    column: column.subarray(0, count),
    ring: ring.subarray(0, 4 * count),
    unitsOf,
  }
}

/** The unit on the other side of a bead, or -1. */
export function unitBeyond({ unitsOf }: WeaveUnits, bead: number, unit: number): number {
  const [one = -1, other = -1] = [unitsOf[2 * bead], unitsOf[2 * bead + 1]]
  if (one === unit) return other
  return other === unit ? one : -1
}

/** The place (0 to 3, clockwise from the top) of a bead in a unit's ring. */
export function placeIn({ ring }: WeaveUnits, unit: number, bead: number): number {
  for (let place = 0; place < 4; place += 1) if (ring[4 * unit + place] === bead) return place
  return -1
}
