import { rowExtent } from './bead-extent.ts'
import { type Chart, type ChartRow, type StitchKind, slotAt } from './chart.ts'
import { countSlots } from './count-slots.ts'
import { matchRows } from './match-rows.ts'

/**
 * Cells that differ, as arrays side by side: row and position in the later chart, the slot before and
 * after, -1 for no bead.
 */
export type CellChanges = Readonly<{
  count: number
  row: Int32Array
  at: Int32Array
  from: Int32Array
  to: Int32Array
}>

/** A slot whose number of beads differs. */
export type CountChange = Readonly<{ slot: number; from: number; to: number }>

/** What differs between two versions of a chart; rows are numbered from the top, 0-based. */
export type ChartDifference = Readonly<{
  isSame: boolean
  stitch: Readonly<{ from: StitchKind; to: StitchKind }> | undefined
  /** Rows of the later chart that the earlier has not. */
  rowsAdded: readonly number[]
  /** Rows of the earlier chart that the later has not. */
  rowsRemoved: readonly number[]
  /** Rows of the later chart whose beads are the same but lie further to one side than the rows before them. */
  rowsMoved: readonly number[]
  cells: CellChanges
  counts: readonly CountChange[]
}>

/**
 * Compares two versions of a chart.
 *
 * Rows with the same beads are matched first (see `matchRows`), so that an inserted row is one row
 * added and not a change of all below it; rows between them are compared cell by cell. A chart that
 * moved as a whole has not changed. Counts are exact.
 */
export function compareCharts(before: Chart, after: Chart): ChartDifference {
  const found = new Comparison(before, after)
  for (const { before: from, after: to } of matchRows(before.rows, after.rows)) found.pair(from, to)
  const stitch =
    before.stitch === after.stitch ? undefined : { from: before.stitch, to: after.stitch }
  const rows = {
    rowsAdded: found.added,
    rowsRemoved: found.removed,
    rowsMoved: found.moved,
  }
  const cells = found.cells()
  const isSame =
    stitch === undefined &&
    cells.count === 0 &&
    Object.values(rows).every(({ length }) => length === 0)
  return { isSame, stitch, ...rows, cells, counts: changedCounts(before, after) }
}

class Comparison {
  readonly added: number[] = []
  readonly removed: number[] = []
  readonly moved: number[] = []
  readonly #before: Chart
  readonly #after: Chart
  readonly #cells: number[] = []
  /** How far the later chart lies to the right, as the last rows with the same beads have it. */
  #slip: number | undefined

  constructor(before: Chart, after: Chart) {
    this.#before = before
    this.#after = after
  }

  pair(from: number, to: number): void {
    const [old, now] = [this.#before.rows[from], this.#after.rows[to]]
    if (old === undefined && now !== undefined) {
      if (hasBeads(now)) this.added.push(to)
    } else if (now === undefined && old !== undefined) {
      if (hasBeads(old)) this.removed.push(from)
    } else if (old !== undefined && now !== undefined) {
      this.#compare({ old, now, from, to })
    }
  }

  cells(): CellChanges {
    const count = this.#cells.length / 4
    const column = (offset: number): Int32Array =>
      Int32Array.from({ length: count }, (_, i) => this.#cells[4 * i + offset] ?? 0)
    return { count, row: column(0), at: column(1), from: column(2), to: column(3) }
  }

  #compare(rows: PairedRows): void {
    const slip = slipOf(rows.old, rows.now)
    if (slip === undefined) {
      for (const part of this.#fewestChanges(rows)) this.#cells.push(part)
    } else if (hasBeads(rows.now)) {
      if (this.#slip !== undefined && slip !== this.#slip) this.moved.push(rows.to)
      this.#slip = slip
    }
  }

  /** A changed row lies as the rows above it do, or where it lay before, whichever leaves less changed. */
  #fewestChanges(rows: PairedRows): readonly number[] {
    const inPlace = this.#changes(rows, 0)
    if (this.#slip === undefined || this.#slip === 0) return inPlace
    const moved = this.#changes(rows, this.#slip)
    return moved.length <= inPlace.length ? moved : inPlace
  }

  #changes({ old, now, from, to }: PairedRows, slip: number): readonly number[] {
    const changes: number[] = []
    old.cells.forEach((cell, i) => {
      const at = old.start + 2 * i + slip
      const slot = slotAt(this.#after, { row: to, at })
      if (slot !== cell - 1) changes.push(to, at, cell - 1, slot)
    })
    now.cells.forEach((cell, i) => {
      const at = now.start + 2 * i
      if (cell === 0 || isPlace(old, at - slip)) return
      if (slotAt(this.#before, { row: from, at: at - slip }) < 0) changes.push(to, at, -1, cell - 1)
    })
    return changes
  }
}

type PairedRows = Readonly<{ old: ChartRow; now: ChartRow; from: number; to: number }>

function hasBeads(row: ChartRow): boolean {
  const { first, last } = rowExtent(row)
  return last >= first
}

/** How far a row with the same beads has moved to the right, or `undefined` when its beads differ. */
function slipOf(old: ChartRow, now: ChartRow): number | undefined {
  const [a, b] = [rowExtent(old), rowExtent(now)]
  if (a.last - a.first !== b.last - b.first) return undefined
  for (let i = 0; i <= a.last - a.first; i += 1) {
    if (old.cells[a.first + i] !== now.cells[b.first + i]) return undefined
  }
  return now.start + 2 * b.first - old.start - 2 * a.first
}

/** Whether a position is one of a row's cells, blank or not. */
function isPlace({ start, cells }: ChartRow, at: number): boolean {
  const offset = at - start
  return offset >= 0 && offset % 2 === 0 && offset / 2 < cells.length
}

function changedCounts(before: Chart, after: Chart): readonly CountChange[] {
  const [a, b] = [countSlots(before), countSlots(after)]
  return Array.from({ length: Math.max(a.length, b.length) }, (_, slot) => ({
    slot,
    from: a[slot] ?? 0,
    to: b[slot] ?? 0,
  })).filter(({ from, to }) => from !== to)
}
