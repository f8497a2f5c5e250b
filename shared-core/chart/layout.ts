import type { BeadForm } from '../beads/bead-form.ts'
import { rowExtent } from './bead-extent.ts'
import { nextBead, nextBlank } from './bead-runs.ts'
import type { CellRef, Chart, ChartRow } from './chart.ts'
import { beadBox, cellCentre, isOddColumn, type StitchPitch, stitchPitch } from './stitch-pitch.ts'

/** A box in mm, y down. */
export type BoundsMm = Readonly<{ left: number; top: number; right: number; bottom: number }>

/**
 * Where every bead of a chart lies, in mm, y down, origin at the chart's left and top.
 *
 * `xMm` and `yMm` are centres in the order of bead numbers (8 bytes a bead), written out when first
 * asked for; who goes through rows takes them in closed form from `rowCentres` instead. Hole axis,
 * box and tilt follow from `pitch` by `holeAxis`, `beadBox` and `beadTilt`. `widthMm` and `heightMm`
 * are the extent of the beads, at the nominal bead size.
 */
export type ChartLayout = Readonly<{
  pitch: StitchPitch
  xMm: Float32Array
  yMm: Float32Array
  bounds: BoundsMm
  widthMm: number
  heightMm: number
}>

/** What a layout may be told: the gap the thread adds, in mm. */
export type LayoutOptions = Readonly<{
  /** What a thread takes up between two beads, mm (`threadGapMm`); beads touch when it is left out. */
  threadMm?: number
}>

/**
 * Lays a chart out at a bead form's nominal size.
 *
 * The rule of each stitch is `stitchPitch`'s. Looks at row ends only until centres are asked for; a
 * chart without beads has empty arrays and no size.
 */
export function layoutChart(
  chart: Chart,
  form: BeadForm,
  { threadMm = 0 }: LayoutOptions = {},
): ChartLayout {
  const size = { diameterMm: form.diameterMm.value, lengthMm: form.lengthMm.value, threadMm }
  const pitch = stitchPitch(chart.stitch, size)
  const bounds = chartBounds(chart, pitch)
  const widthMm = bounds.right - bounds.left
  const heightMm = bounds.bottom - bounds.top
  let written: Centres | undefined
  const writtenOut = () => {
    written ??= centres(chart.rows, pitch)
    return written
  }
  return {
    pitch,
    get xMm() {
      return writtenOut().xMm
    },
    get yMm() {
      return writtenOut().yMm
    },
    bounds,
    widthMm,
    heightMm,
  }
}

/** The box that holds every bead, in mm; all zero for a chart without beads. Looks at row ends only. */
export function chartBounds(chart: Chart, pitch: StitchPitch): BoundsMm {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity]
  chart.rows.forEach((row, number) => {
    const { first, last } = rowExtent(row)
    if (last < first) return
    const box = beadBox(pitch, number)
    const from = cellCentre(pitch, number, row.start + 2 * first)
    const to = cellCentre(pitch, number, row.start + 2 * last)
    left = Math.min(left, from.xMm - box.widthMm / 2)
    right = Math.max(right, to.xMm + box.widthMm / 2)
    top = Math.min(top, highest(pitch, row, number) - box.heightMm / 2)
    bottom = Math.max(bottom, lowest(pitch, row, number) + box.heightMm / 2)
  })
  return left > right ? { left: 0, top: 0, right: 0, bottom: 0 } : { left, top, right, bottom }
}

/**
 * The cell under a point, in a row or position that may lie outside the chart: where a bead would go.
 *
 * @param phaseOf - The parity (0 or 1) of positions in a row, see `rowPhase`.
 */
export function cellAtPoint(
  pitch: StitchPitch,
  point: Readonly<{ xMm: number; yMm: number }>,
  phaseOf: (row: number) => number,
): CellRef {
  const across = (point.xMm - pitch.leftMm) / pitch.halfMm
  if (pitch.dropMm > 0) {
    const at = 2 * nearest(across / 2)
    const drop = isOddColumn(at) ? pitch.dropMm : 0
    return { row: nearest((point.yMm - pitch.topMm - drop) / pitch.downMm), at }
  }
  const row = nearest((point.yMm - pitch.topMm) / pitch.downMm)
  const phase = phaseOf(row)
  return { row, at: phase + 2 * nearest((across - phase) / 2) }
}

/** Math.round without a negative zero, so that equal cells compare equal. */
function nearest(value: number): number {
  return Math.round(value) || 0
}

type Centres = Readonly<{ xMm: Float32Array; yMm: Float32Array }>

function centres(rows: readonly ChartRow[], pitch: StitchPitch): Centres {
  const room = rows.reduce((sum, row) => sum + row.cells.length, 0)
  const xMm = new Float32Array(room)
  const yMm = new Float32Array(room)
  const places = [placesAcross(rows, pitch, 0), placesAcross(rows, pitch, 1)] as const
  let bead = 0
  rows.forEach((row, number) => {
    bead = placeRow({ row, number, pitch, places, xMm, yMm, bead })
  })
  return bead === room ? { xMm, yMm } : { xMm: xMm.slice(0, bead), yMm: yMm.slice(0, bead) }
}

/** Every even or odd position across the chart in mm, so that a run of beads is one copy. */
function placesAcross(
  rows: readonly ChartRow[],
  { leftMm, halfMm }: StitchPitch,
  phase: number,
): Float32Array {
  let places = 0
  for (const { start, cells } of rows) {
    if (start % 2 === phase) places = Math.max(places, (start - phase) / 2 + cells.length)
  }
  const across = new Float32Array(places)
  for (let i = 0; i < places; i += 1) across[i] = leftMm + (phase + 2 * i) * halfMm
  return across
}

type RowPlacing = Readonly<{
  row: ChartRow
  number: number
  pitch: StitchPitch
  places: readonly [Float32Array, Float32Array]
  xMm: Float32Array
  yMm: Float32Array
  bead: number
}>

function placeRow({ row, number, pitch, places, xMm, yMm, bead: first }: RowPlacing): number {
  const { start, cells } = row
  const across = places[start % 2 === 0 ? 0 : 1]
  const offset = start >> 1
  const y = pitch.topMm + number * pitch.downMm
  let bead = first
  for (let from = nextBead(cells, 0); from < cells.length; ) {
    const to = nextBlank(cells, from)
    const end = bead + to - from
    xMm.set(across.subarray(offset + from, offset + to), bead)
    yMm.fill(y, bead, end)
    if (pitch.dropMm > 0) {
      const low = bead + (isOddColumn(start + 2 * from) ? 0 : 1)
      for (let i = low; i < end; i += 2) yMm[i] = y + pitch.dropMm
    }
    bead = end
    from = nextBead(cells, to)
  }
  return bead
}

function highest(pitch: StitchPitch, row: ChartRow, number: number): number {
  const even = pitch.topMm + number * pitch.downMm
  return pitch.dropMm === 0 || hasColumn(row, 0) ? even : even + pitch.dropMm
}

function lowest(pitch: StitchPitch, row: ChartRow, number: number): number {
  const even = pitch.topMm + number * pitch.downMm
  return pitch.dropMm > 0 && hasColumn(row, 1) ? even + pitch.dropMm : even
}

function hasColumn({ start, cells }: ChartRow, parity: number): boolean {
  const skip = isOddColumn(start) === (parity === 1) ? 0 : 1
  for (let i = skip; i < cells.length; i += 2) if (cells[i] !== 0) return true
  return false
}
