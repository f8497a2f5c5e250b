import type { BeadIndex } from '../../chart/bead-index.ts'

/**
 * A peyote chart's beads as they are worked: half rows, in which beads lie two columns apart and half
 * a bead out of step with the half rows above and below. `lattice` numbers beads by half row
 * (`rowOf`), then column (`atOf`); `beadOf` gives the chart's number, `numberOf` the way back.
 */
export type HalfRows = Readonly<{ lattice: BeadIndex; beadOf: Int32Array; numberOf: Int32Array }>

/** Sorts a chart's beads into half rows: a row's even columns, then its odd columns, which lie half a bead lower. */
export function halfRows({ count, atOf, slotOf, rowStart }: BeadIndex): HalfRows {
  const rows = rowStart.length - 1
  const beadOf = new Int32Array(count)
  const numberOf = new Int32Array(count)
  const halfOf = new Uint32Array(count)
  const columnOf = new Uint32Array(count)
  const halfStart = new Uint32Array(2 * rows + 1)
  const slots = new Uint16Array(count)
  let number = 0
  for (let half = 0; half < 2 * rows; half += 1) {
    halfStart[half] = number
    const from = rowStart[half >> 1] ?? 0
    const to = rowStart[(half >> 1) + 1] ?? 0
    for (let bead = from; bead < to; bead += 1) {
      const column = (atOf[bead] ?? 0) >> 1
      if ((column & 1) !== (half & 1)) continue
      beadOf[number] = bead
      numberOf[bead] = number
      halfOf[number] = half
      columnOf[number] = column
      slots[number] = slotOf[bead] ?? 0
      number += 1
    }
  }
  halfStart[2 * rows] = number
  const lattice: BeadIndex = {
    count,
    rowOf: halfOf,
    atOf: columnOf,
    slotOf: slots,
    rowStart: halfStart,
  }
  return { lattice, beadOf, numberOf }
}
