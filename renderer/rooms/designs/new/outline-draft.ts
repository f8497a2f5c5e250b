import { type ChartJson, toChartJson } from '../../../../shared-core/chart/chart-json.ts'
import {
  chartFromOutline,
  OUTLINE_KINDS,
  type OutlineKind,
} from '../../../../shared-core/chart/outlines/chart-from-outline.ts'
import { type FringeGrade, fringeFan } from '../../../../shared-core/chart/outlines/fringe-fan.ts'
import { beadsOfRow, fringeTop } from '../../../../shared-core/chart/outlines/fringe-top.ts'
import type { Strand } from '../../../../shared-core/design/design.ts'
import type { Refusal } from '../../../../shared-core/refusal.ts'
import { ok, type Result } from '../../../../shared-core/result.ts'
import { DRAFT_PANEL } from '../draft/draft.ts'

/** Shapes to begin from: the outlines, and a fringe under a small top. */
export const SHAPES = [...OUTLINE_KINDS, 'fringe'] as const
export type ShapeKind = (typeof SHAPES)[number]

/** Stitches whose rows can follow an outline; a fringe hangs from the last row of any of them. */
export const OUTLINE_STITCHES = ['brick', 'peyote', 'square', 'loom'] as const
export type OutlineStitch = (typeof OUTLINE_STITCHES)[number]

/** What a maker asks of a shape; the last five are of a fringe only. */
export type ShapeWanted = Readonly<{
  kind: ShapeKind
  stitch: OutlineStitch
  columns: number
  rows: number
  /** Of a fringe: the outline whose upper part it hangs from. */
  top: OutlineKind
  grade: FringeGrade
  shortest: number
  longest: number
  tip: number
}>

/** A shape as a chart with its strands, and what to say of it. */
export type ShapeDrawn = Readonly<{
  chart: ChartJson
  strands: readonly Strand[] | undefined
  notes: readonly string[]
}>

/** Draws a shape in legal steps; a refusal where its size cannot be. */
export function drawShape(wanted: ShapeWanted): Result<ShapeDrawn, Refusal> {
  const { kind, stitch, columns, rows } = wanted
  if (kind !== 'fringe') return drawOutline({ ...wanted, kind })
  const top = fringeTop({ kind: wanted.top, stitch, columns, rows })
  if (!top.ok) return top
  const { chart, notes } = top.value
  const row = chart.rows.length - 1
  const places = beadsOfRow(chart.rows[row])
  const fan = fringeFan({ ...wanted, places, slot: 0, tipSlot: 1 })
  if (!fan.ok) return fan
  const strands = fan.value.map(
    ({ bead, copies, beads }, at): Strand => ({
      kind: 'strand',
      id: `strand${at + 1}`,
      name: copies === 1 ? `Strand ${bead + 1}` : `Strands ${bead + 1} to ${bead + copies}`,
      shape: 'fringe',
      beads,
      anchor: { panelId: DRAFT_PANEL, row, bead },
      copies,
    }),
  )
  return ok({ chart: toChartJson(chart), strands, notes })
}

type OutlineWanted = Readonly<{
  kind: OutlineKind
  stitch: OutlineStitch
  columns: number
  rows: number
}>

function drawOutline({ kind, stitch, columns, rows }: OutlineWanted): Result<ShapeDrawn, Refusal> {
  const drawn = chartFromOutline({ kind, stitch, columns, rows })
  if (!drawn.ok) return drawn
  const { chart, notes } = drawn.value
  return ok({ chart: toChartJson(chart), strands: undefined, notes })
}
