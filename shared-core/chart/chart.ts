/** The stitches a chart can be worked in. A strand (fringe, loop) is a part of its own, not a chart. */
export const STITCH_KINDS = [
  'brick',
  'peyote',
  'square',
  'loom',
  'ladder',
  'herringbone',
  'right-angle-weave',
] as const

/** One of the stitches a chart can be worked in. */
export type StitchKind = (typeof STITCH_KINDS)[number]

/**
 * One row of a chart.
 *
 * `start` is the left edge of the first cell in half beads from the chart's own left origin (0 or
 * more), so cell `i` lies at `start + 2 * i`. `cells` holds 0 where there is no bead, else the
 * slot's index in the palette plus one. Two bytes a cell; rows are shared between edits, never changed.
 */
export type ChartRow = Readonly<{ start: number; cells: Uint16Array }>

/**
 * A chart: rows from the top, each a sparse run of cells.
 *
 * In brick stitch rows lie half a bead out of step (`start` alternates between odd and even). In
 * peyote a row holds the beads as they lie flat, column by column, `start` is even, and every odd
 * column hangs half a bead lower. In right-angle weave even rows hold the beads that lie across
 * (odd positions), odd rows those that stand (even positions). In the other stitches `start` is even.
 */
export type Chart = Readonly<{ stitch: StitchKind; rows: readonly ChartRow[] }>

/** A place in a chart: row from the top, `at` in half beads from the left. */
export type CellRef = Readonly<{ row: number; at: number }>

/** The greatest number of slots a palette can hold. */
export const MAX_SLOTS = 65_535

/** A slot's letter: 0 is A, 25 is Z, 26 is AA. */
export function slotLabel(index: number): string {
  const last = String.fromCharCode(65 + (index % 26))
  return index < 26 ? last : slotLabel(Math.floor(index / 26) - 1) + last
}

/** A slot's index from its letter (A is 0, AA is 26), or `undefined` when it is not capital letters. */
export function slotIndex(label: string): number | undefined {
  if (!/^[A-Z]{1,4}$/.test(label)) return undefined
  let index = 0
  for (const letter of label) index = index * 26 + (letter.charCodeAt(0) - 64)
  return index <= MAX_SLOTS ? index - 1 : undefined
}

/** The slot index in a row at half-bead position `at`, or -1 where there is no bead. */
export function slotAt(chart: Chart, { row, at }: CellRef): number {
  const line = chart.rows[row]
  if (line === undefined) return -1
  const offset = at - line.start
  if (offset < 0 || offset % 2 !== 0) return -1
  return (line.cells[offset / 2] ?? 0) - 1
}
