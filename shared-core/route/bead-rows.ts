import type { BeadIndex } from '../chart/bead-index.ts'

/** For each bead, the first and last bead of its unbroken run in its row. */
export type BeadRuns = Readonly<{ first: Int32Array; last: Int32Array }>

/** Finds each bead's run, one pass each way. */
export function beadRuns({ rowOf, atOf, count }: BeadIndex): BeadRuns {
  const first = new Int32Array(count)
  const last = new Int32Array(count)
  const follows = (bead: number) =>
    rowOf[bead] === rowOf[bead - 1] && (atOf[bead] ?? 0) === (atOf[bead - 1] ?? 0) + 2
  for (let bead = 0; bead < count; bead += 1) {
    first[bead] = bead > 0 && follows(bead) ? (first[bead - 1] ?? 0) : bead
  }
  for (let bead = count - 1; bead >= 0; bead -= 1) {
    last[bead] = bead + 1 < count && follows(bead + 1) ? (last[bead + 1] ?? 0) : bead
  }
  return { first, last }
}
