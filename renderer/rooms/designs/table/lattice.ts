import type { BeadForm } from '../../../../shared-core/beads/bead-form.ts'
import type { CellRef, Chart, ChartRow } from '../../../../shared-core/chart/chart.ts'
import { latticeStep, upTo } from '../../../../shared-core/chart/lattice-step.ts'
import { parity, rowPhases } from '../../../../shared-core/chart/row-phase.ts'
import { type StitchPitch, stitchPitch } from '../../../../shared-core/chart/stitch-pitch.ts'
import type { BeadLook } from '../../../drawing/bead-look.ts'
import type { BeadScene } from '../../../drawing/bead-scene.ts'
import { chartScene } from '../../../drawing/chart-scene.ts'
import type { SizeMm } from '../../../drawing/view.ts'

/** A row of places for beads: its left edge in half beads, how many, and the number of the first. */
export type LatticeRow = Readonly<{ start: number; length: number; first: number }>

/**
 * Every place a bead can have on the table: the chart's own cells, its holes, and a margin round it to
 * grow into. The scene draws places, and those without a bead stay empty, so that painting and taking
 * away both change `slotOf` alone.
 *
 * Cells of the table are counted from where the chart began when it was opened, so that a chart which
 * grows to the left or at the top moves nothing: chart = table + moved, place = table + origin.
 */
export type Lattice = Readonly<{
  scene: BeadScene
  pitch: StitchPitch
  rows: readonly LatticeRow[]
  origin: CellRef
  places: number
}>

/** How the beads of a chart look on the table. */
export type LatticeLook = Readonly<{
  form: BeadForm
  palette: readonly BeadLook[]
  boxOfSlot: readonly SizeMm[] | undefined
  threadMm: number
}>

/** Slot of a place that holds no bead: no palette is as long. */
export const NO_BEAD = 65_535

/** Places beyond a row's ends, and rows above and below. */
const MARGIN = { cells: 3, rows: 2 }
/** Places to begin on where nothing is drawn yet. */
const FIRST_PLACES = { across: 12, down: 12 }

/** Lays out the places of a chart and round it. `moved`: how far its cells have come since it was opened. */
export function buildLattice(chart: Chart, moved: CellRef, look: LatticeLook): Lattice {
  const step = latticeStep(chart.stitch)
  const above = upTo(MARGIN.rows, step.down)
  const spans = spansOf(chart.rows, above)
  const least = spans.reduce((left, { from }) => Math.min(left, from), 0)
  const right = upTo(-least, step.across)
  const phaseOf = rowPhases(chart)
  let [places, left] = [0, Number.POSITIVE_INFINITY]
  const rows = spans.map(({ from, to }, at): LatticeRow => {
    const start = from + parity(from - phaseOf(at - above)) + right
    const length = Math.max(0, Math.ceil((to + right - start) / 2))
    places += length
    if (length > 0) left = Math.min(left, start)
    return { start, length, first: places - length }
  })
  const full = rows.map(
    ({ start, length }): ChartRow => ({ start, cells: new Uint16Array(length).fill(1) }),
  )
  const { form, palette, threadMm, boxOfSlot } = look
  const scene = chartScene({ chart: { stitch: chart.stitch, rows: full }, form, palette, threadMm })
  const pitch = stitchPitch(chart.stitch, {
    diameterMm: form.diameterMm.value,
    lengthMm: form.lengthMm.value,
    threadMm,
  })
  return {
    scene: {
      ...scene,
      palette,
      boxOfSlot,
      widthMm: scene.widthMm + (places === 0 ? 0 : left * pitch.halfMm),
      slotOf: new Uint16Array(places).fill(NO_BEAD),
      showsPlaces: true,
    },
    pitch,
    rows,
    origin: { row: moved.row + above, at: moved.at + right },
    places,
  }
}

type Span = Readonly<{ from: number; to: number }>
type Ends = readonly (Span | undefined)[]

/** From where to where places lie in each row, from `above` rows over the chart to a few below it. */
function spansOf(rows: readonly ChartRow[], above: number): readonly Span[] {
  const ends = rows.map(({ start, cells }): Span | undefined =>
    cells.length === 0 ? undefined : { from: start, to: start + 2 * cells.length },
  )
  const isEmpty = ends.every((end) => end === undefined)
  const own = isEmpty ? Math.max(FIRST_PLACES.down, rows.length) : rows.length
  return Array.from({ length: above + own + MARGIN.rows }, (_, at) =>
    isEmpty ? { from: 0, to: 2 * FIRST_PLACES.across } : widest(ends, at - above),
  )
}

/** A row's places reach as far as its own beads and those of its neighbours, and a little more. */
function widest(ends: Ends, row: number): Span {
  let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (let near = row - MARGIN.rows; near <= row + MARGIN.rows; near += 1) {
    const end = ends[near]
    if (end === undefined) continue
    from = Math.min(from, end.from)
    to = Math.max(to, end.to)
  }
  if (from > to) return { from: 0, to: 0 }
  return { from: from - 2 * MARGIN.cells, to: to + 2 * MARGIN.cells }
}

/** Whether every cell of a chart has a place, with `spare` places to grow into beside and beyond its rows. */
export function hasRoom(lattice: Lattice, chart: Chart, moved: CellRef, spare: number): boolean {
  const { rows, origin } = lattice
  const [down, across] = [origin.row - moved.row, origin.at - moved.at]
  let [top, bottom] = [-1, -1]
  for (const [number, { start, cells }] of chart.rows.entries()) {
    if (cells.length === 0) continue
    if (top < 0) top = number
    bottom = number
    const place = rows[number + down]
    if (place === undefined) return false
    const from = start + across - 2 * spare
    const to = start + across + 2 * (cells.length + spare)
    if (from < place.start || to > place.start + 2 * place.length) return false
  }
  return top < 0 || (top + down >= spare && bottom + down < rows.length - spare)
}

/** What fills the places: slots, and the rows they were read from, so that the next look reads only rows that changed. */
export type Filled = Readonly<{
  lattice: Lattice
  slotOf: Uint16Array
  /** The cells of each row of places, and where they began. */
  cellsAt: (Uint16Array | undefined)[]
  startAt: (number | undefined)[]
}>

/**
 * Fills the places of a lattice from a chart; rows that are the same as before are not looked at. What
 * was filled before is written on: a stroke over a giant makes no new array at every move of the hand.
 */
export function fillLattice(
  lattice: Lattice,
  chart: Chart,
  moved: CellRef,
  before: Filled | undefined,
): Filled {
  const [down, across] = [lattice.origin.row - moved.row, lattice.origin.at - moved.at]
  const filled =
    before?.lattice === lattice
      ? before
      : { lattice, slotOf: lattice.scene.slotOf.slice(), cellsAt: [], startAt: [] }
  for (const [number, place] of lattice.rows.entries()) {
    const row = chart.rows[number - down]
    const start = row === undefined ? undefined : row.start + across
    if (filled.cellsAt[number] === row?.cells && filled.startAt[number] === start) continue
    filled.cellsAt[number] = row?.cells
    filled.startAt[number] = start
    writePlaces(filled.slotOf, place, row, across)
  }
  return filled
}

function writePlaces(
  slotOf: Uint16Array,
  { start, length, first }: LatticeRow,
  row: ChartRow | undefined,
  across: number,
): void {
  slotOf.fill(NO_BEAD, first, first + length)
  if (row === undefined) return
  const offset = first + (row.start + across - start) / 2
  for (let i = 0; i < row.cells.length; i += 1) {
    const cell = row.cells[i] ?? 0
    const place = offset + i
    if (cell !== 0 && place >= first && place < first + length) slotOf[place] = cell - 1
  }
}

/** The number of a table cell's place, or -1 where it has none. */
export function placeAt({ rows, origin }: Lattice, { row, at }: CellRef): number {
  const place = rows[row + origin.row]
  if (place === undefined) return -1
  const offset = (at + origin.at - place.start) / 2
  return Number.isInteger(offset) && offset >= 0 && offset < place.length
    ? place.first + offset
    : -1
}
