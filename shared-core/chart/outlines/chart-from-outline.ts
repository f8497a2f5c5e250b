import type { Refusal } from '../../refusal.ts'
import { err, ok, type Result } from '../../result.ts'
import type { Chart, ChartRow, StitchKind } from '../chart.ts'
import { MAX_CELLS, MAX_COLUMNS, MAX_ROWS } from '../chart-limits.ts'
import { normaliseChart } from '../normalise-chart.ts'
import { parity } from '../row-phase.ts'
import { stitchName } from '../stitch-name.ts'
import { type BeadSize, stitchPitch } from '../stitch-pitch.ts'
import { band } from './band.ts'
import { diamond } from './diamond.ts'
import { leaf } from './leaf.ts'
import { oval } from './oval.ts'
import type { Profile } from './profile.ts'
import { type LineSpan, steppedEdges, type WantedSpan } from './stepped-edges.ts'
import { teardrop } from './teardrop.ts'
import { triangle } from './triangle.ts'

const PROFILES = { diamond, triangle, teardrop, oval, leaf, band } as const

/** An outline a new chart can be given. */
export type OutlineKind = keyof typeof PROFILES

/** Every outline, in the order they are offered. */
export const OUTLINE_KINDS = Object.keys(PROFILES) as readonly OutlineKind[]

/** The size of an outline in beads: across its widest row, and rows from top to bottom as the chart counts them. */
export type OutlineSize = Readonly<{ columns: number; rows: number }>

/** What to draw: an outline, a stitch and a size in beads. */
export type OutlineOrder = OutlineSize &
  Readonly<{
    kind: OutlineKind
    stitch: StitchKind
    /** Slot of every bead; the first when it is left out. */
    slot?: number
  }>

/** A new chart, and in `notes` where it had to leave the outline. */
export type OutlineReading = Readonly<{ chart: Chart; notes: readonly string[] }>

/**
 * A chart in the shape of an outline, of one slot.
 *
 * In brick each end of a row lies half a bead in or out from the next, as it can be stitched; in peyote
 * each end of a half row lies one column in or out, and an odd number of columns gives a column in the
 * middle. Square stitch and loom work take the nearest whole beads. Where the outline turns in faster
 * than these steps the chart stays wider, and a note says by how much.
 *
 * @returns The chart; or `outline-size` when it would have no beads or pass a chart's limits, or
 *   `outline-stitch` for ladder stitch, herringbone and right-angle weave.
 */
export function chartFromOutline(order: OutlineOrder): Result<OutlineReading, Refusal> {
  const { kind, stitch } = order
  if (!isPossibleSize(order)) return err(wrongSize())
  const drawn = draw(order)
  if (drawn === undefined) return err(wrongStitch(stitch))
  const { chart } = normaliseChart(drawn.chart)
  const beads = Math.round(drawn.astray * 2) / 2
  const notes =
    beads <= 1
      ? []
      : [
          `The steps of ${stitchName(stitch)} cannot follow this ${kind}: an end is up to ${beads} beads off.`,
        ]
  return ok({ chart, notes })
}

/** The size in beads that comes nearest to a size in mm, for beads of a size in a stitch. */
export function outlineSizeFor(
  stitch: StitchKind,
  { widthMm, heightMm }: Readonly<{ widthMm: number; heightMm: number }>,
  size: BeadSize,
): OutlineSize {
  const { halfMm, downMm, dropMm, topMm } = stitchPitch(stitch, size)
  const lastRowMm = downMm - 2 * topMm
  return {
    columns: Math.max(1, Math.round(widthMm / (2 * halfMm))),
    rows: Math.max(1, Math.round((heightMm - dropMm + lastRowMm) / downMm)),
  }
}

type Drawn = Readonly<{
  chart: Chart
  /** Greatest distance of an end from the outline, in beads. */
  astray: number
}>

function draw({ kind, stitch, columns, rows, slot = 0 }: OutlineOrder): Drawn | undefined {
  const size = { columns, rows }
  const profile = PROFILES[kind]
  const cell = slot + 1
  if (stitch === 'brick') return drawBrick(profile, size, cell)
  if (stitch === 'peyote' && profile !== band) return drawPeyote(profile, size, cell)
  if (stitch !== 'square' && stitch !== 'loom' && stitch !== 'peyote') return undefined
  return { chart: { stitch, rows: plainRows(profile, size, cell) }, astray: 0 }
}

function drawBrick(profile: Profile, { columns, rows }: OutlineSize, cell: number): Drawn {
  const wanted = Array.from({ length: rows }, (_, row) => {
    const half = columns * profile.widthAt((row + 0.5) / rows)
    return { from: columns - half, to: columns + half }
  })
  const spans =
    profile === band
      ? straightEdges(wanted)
      : follow(wanted, { profile, full: { from: 0, to: 2 * columns } })
  const chart: Chart = { stitch: 'brick', rows: spans.map((span) => filledRow(span, cell)) }
  return { chart, astray: farthest(spans, wanted) / 2 }
}

/** A straight strip leans out and in by half a bead by turns. */
function straightEdges(wanted: readonly WantedSpan[]): readonly LineSpan[] {
  return wanted.map(({ from, to }, line) => ({ from: from + (line % 2), to: to + (line % 2) }))
}

/** Half rows step as brick rows do: their beads lie two columns apart, each bead's place two columns wide. */
function drawPeyote(profile: Profile, { columns, rows }: OutlineSize, cell: number): Drawn {
  const wanted = Array.from({ length: 2 * rows - 1 }, (_, halfRow) => {
    const width = columns * profile.widthAt((halfRow + 1) / (2 * rows))
    return { from: (columns - width) / 2, to: (columns + width) / 2 + 1 }
  })
  const spans = follow(wanted, { profile, full: { from: 0, to: columns + 1 } })
  return {
    chart: { stitch: 'peyote', rows: peyoteRows(spans, cell) },
    astray: farthest(spans, wanted),
  }
}

/** The widest line is as wide as asked, though its middle may lie beside the outline's widest place. */
function follow(
  wanted: readonly WantedSpan[],
  { profile, full }: Readonly<{ profile: Profile; full: WantedSpan }>,
): readonly LineSpan[] {
  const widest = Math.min(wanted.length - 1, Math.floor(profile.widest * wanted.length))
  return steppedEdges(wanted.with(widest, full), widest)
}

function peyoteRows(spans: readonly LineSpan[], cell: number): readonly ChartRow[] {
  // Beads of even half rows belong in even columns; the outline moves by one column to be so.
  const leftmost = spans.reduce((least, { from }) => Math.min(least, from), 0)
  const slip = parity((spans[0]?.from ?? 0) - leftmost) - leftmost
  const rows: ChartRow[] = []
  for (let half = 0; half < spans.length; half += 2) {
    const pair = spans.slice(half, half + 2)
    const from = Math.min(...pair.map((span) => span.from))
    const cells = new Uint16Array(Math.max(...pair.map((span) => span.to)) - from - 1)
    for (const span of pair) {
      for (let column = span.from; column < span.to; column += 2) cells[column - from] = cell
    }
    rows.push({ start: 2 * (from + slip), cells })
  }
  return rows
}

function plainRows(profile: Profile, { columns, rows }: OutlineSize, cell: number): ChartRow[] {
  return Array.from({ length: rows }, (_, row) => {
    const width = profile.widthAt((row + 0.5) / rows)
    // The same blanks on both sides, so that the outline stays alike on both.
    const blank = Math.min(Math.floor((columns - 1) / 2), Math.round((columns * (1 - width)) / 2))
    return filledRow({ from: 2 * blank, to: 2 * (columns - blank) }, cell)
  })
}

function filledRow({ from, to }: LineSpan, cell: number): ChartRow {
  return { start: from, cells: new Uint16Array((to - from) / 2).fill(cell) }
}

function farthest(spans: readonly LineSpan[], wanted: readonly WantedSpan[]): number {
  return spans.reduce((most, { from, to }, line) => {
    const want = wanted[line] ?? { from, to }
    return Math.max(most, Math.abs(from - want.from), Math.abs(to - want.to))
  }, 0)
}

function isPossibleSize({ columns, rows, slot = 0 }: OutlineOrder): boolean {
  const isWhole = Number.isInteger(columns) && Number.isInteger(rows) && Number.isInteger(slot)
  const isLarge = columns > MAX_COLUMNS - 1 || rows > MAX_ROWS - 1 || columns * rows > MAX_CELLS
  return isWhole && columns >= 1 && rows >= 1 && slot >= 0 && !isLarge
}

function wrongSize(): Refusal {
  return {
    code: 'outline-size',
    message: 'An outline of this size has no beads, or more than a chart can hold.',
    next: `Give 1 to ${MAX_COLUMNS - 1} beads across and down, ${MAX_CELLS} in all at most.`,
    field: 'columns',
  }
}

function wrongStitch(stitch: StitchKind): Refusal {
  return {
    code: 'outline-stitch',
    message: `Outlines are not drawn in ${stitchName(stitch)}.`,
    next: 'Choose brick stitch, peyote, square stitch or loom work, or begin with a blank chart.',
    field: 'stitch',
  }
}
