import { colourNames } from '../colour/colour-name.ts'
import type { Picture } from '../colour/picture/picture.ts'
import type { Refusal } from '../refusal.ts'
import { err, ok, type Result } from '../result.ts'
import { formatCount, formatCounted } from '../units/format-number.ts'
import type { Chart, ChartRow, StitchKind } from './chart.ts'
import { MAX_CELLS, MAX_COLUMNS, MAX_ROWS } from './chart-limits.ts'
import { normaliseChart } from './normalise-chart.ts'
import { stitchPhase } from './row-phase.ts'
import { stitchName } from './stitch-name.ts'

/** A colour of a pixel grid: its slot is its place in the list. */
export type GridColour = Readonly<{ hex: string; name: string; count: number }>

/** A chart read from pixels, its colours from the most used, and what was understood in plain sentences. */
export type PixelGridReading = Readonly<{
  chart: Chart
  colours: readonly GridColour[]
  beads: number
  notes: readonly string[]
}>

/** Colours from which a picture is a photograph rather than a grid. */
export const MAX_GRID_COLOURS = 64

/** A pixel from this alpha on is a bead. */
const SEEN = 128

/**
 * Reads a chart from a picture of one pixel a bead.
 *
 * Each distinct colour is a slot, the most used first, ties in the order they are met; pixels under half
 * covered are places without a bead. Rows of pixels are rows of the chart: in brick every second row is
 * set half a bead to the right, in peyote every second column hangs half a bead lower, in right-angle
 * weave rows lie and stand by turns.
 *
 * @returns The chart, cut as by `normaliseChart`; or `grid-empty` when no pixel is seen,
 *   `grid-many-colours` above `MAX_GRID_COLOURS`, `grid-large` past a chart's limits.
 */
export function readPixelGrid(
  picture: Picture,
  { stitch }: Readonly<{ stitch: StitchKind }>,
): Result<PixelGridReading, Refusal> {
  const { width, height } = picture
  if (width >= MAX_COLUMNS || height > MAX_ROWS || width * height > MAX_CELLS) {
    return err(pixelGridTooLarge(picture))
  }
  const counts = countColours(picture)
  if (counts === undefined) return err(manyColours())
  if (counts.size === 0) return err(noBeads())
  const used = [...counts].toSorted(([, a], [, b]) => b - a)
  const cellOf = new Map(used.map(([rgb], slot) => [rgb, slot + 1]))
  const rows = Array.from({ length: height }, (_, row) => pixelRow(picture, row, stitch, cellOf))
  const hexes = used.map(([rgb]) => hexOf(rgb))
  const names = colourNames(hexes)
  const colours = used.map(([, count], at) => ({
    hex: hexes[at] ?? '',
    name: names[at] ?? '',
    count,
  }))
  const beads = used.reduce((sum, [, count]) => sum + count, 0)
  const { chart } = normaliseChart({ stitch, rows })
  return ok({ chart, colours, beads, notes: notesOf(picture, { stitch, beads, colours }) })
}

/** How often each colour is seen, in the order they are met; `undefined` once there are too many. */
function countColours({ rgba }: Picture): ReadonlyMap<number, number> | undefined {
  const counts = new Map<number, number>()
  for (let at = 0; at < rgba.length; at += 4) {
    if ((rgba[at + 3] ?? 0) < SEEN) continue
    const rgb = colourAt(rgba, at)
    counts.set(rgb, (counts.get(rgb) ?? 0) + 1)
    if (counts.size > MAX_GRID_COLOURS) return undefined
  }
  return counts
}

function pixelRow(
  { rgba, width }: Picture,
  row: number,
  stitch: StitchKind,
  cellOf: ReadonlyMap<number, number>,
): ChartRow {
  const cells = new Uint16Array(width)
  for (let column = 0; column < width; column += 1) {
    const at = 4 * (row * width + column)
    if ((rgba[at + 3] ?? 0) >= SEEN) cells[column] = cellOf.get(colourAt(rgba, at)) ?? 0
  }
  return { start: stitchPhase(stitch, row, 0), cells }
}

function colourAt(rgba: Picture['rgba'], at: number): number {
  return ((rgba[at] ?? 0) << 16) | ((rgba[at + 1] ?? 0) << 8) | (rgba[at + 2] ?? 0)
}

function hexOf(rgb: number): string {
  return `#${rgb.toString(16).padStart(6, '0')}`
}

/** How a stitch's rows of pixels become rows of beads, in one sentence. */
export function gridRule(stitch: StitchKind): string {
  if (stitch === 'brick') return 'Every second row is set half a bead to the right.'
  if (stitch === 'peyote') return 'Every second column hangs half a bead lower.'
  if (stitch === 'right-angle-weave') {
    return 'Rows lie and stand by turns, the lying ones first, half a unit to the right.'
  }
  return 'Rows lie straight under each other.'
}

type Found = Readonly<{ stitch: StitchKind; beads: number; colours: readonly GridColour[] }>

function notesOf({ width, height }: Picture, { stitch, beads, colours }: Found): readonly string[] {
  const holes = width * height - beads
  return [
    `${formatCounted(width, 'pixel')} by ${formatCount(height)}, read as ${stitchName(stitch)}: ${formatCounted(beads, 'bead')} in ${formatCounted(colours.length, 'colour')}.`,
    gridRule(stitch),
    ...(holes === 0 ? [] : [`${formatCounted(holes, 'see-through pixel')} left without a bead.`]),
  ]
}

/** The refusal of a picture with more pixels than a chart has places; width and height in pixels. */
export function pixelGridTooLarge({
  width,
  height,
}: Readonly<{ width: number; height: number }>): Refusal {
  return {
    code: 'grid-large',
    message: `A grid of ${formatCount(width)} by ${formatCount(height)} pixels is more than a chart can hold.`,
    next: `A chart holds at most ${formatCount(MAX_CELLS)} beads; make the picture smaller, or begin from a picture instead.`,
  }
}

function manyColours(): Refusal {
  return {
    code: 'grid-many-colours',
    message: `This picture has more than ${MAX_GRID_COLOURS} colours, so it is not one pixel a bead.`,
    next: 'Begin from a picture instead: there it is fitted to beads and colours.',
  }
}

function noBeads(): Refusal {
  return {
    code: 'grid-empty',
    message: 'Every pixel of this picture is see-through.',
    next: 'Choose a picture whose beads are drawn in solid colours.',
  }
}
