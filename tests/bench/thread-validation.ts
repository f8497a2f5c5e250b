import { readFileSync } from 'node:fs'
import type { BeadForm } from '../../shared-core/beads/bead-form.ts'
import { referenceTables } from '../../shared-core/beads/bead-tables.ts'
import { indexBeads } from '../../shared-core/chart/bead-index.ts'
import type { Chart, ChartRow, StitchKind } from '../../shared-core/chart/chart.ts'
import type { RouteSettings } from '../../shared-core/design/design.ts'
import { measureThread } from '../../shared-core/route/measure-thread.ts'
import { panelGeometry } from '../../shared-core/route/part-geometry.ts'
import { threadSlack } from '../../shared-core/route/thread-slack.ts'
import { stitchOf } from '../../shared-core/stitches/stitches.ts'

// Predicted against published thread, for pieces whose bead counts are known or can be worked out.

type NumericExample = Readonly<{
  id: string
  stitch: string
  bead: string
  beads: number
  tails_mm: readonly [number, number]
  stated_mm: number
  kind: 'cut' | 'work'
  columns?: number
  rows?: readonly number[]
  beads_per_column?: number
  lock_every_row?: boolean
}>
type BoundExample = Readonly<{ id: string; stated_mm: number | readonly [number, number] }>
type Examples = Readonly<{ numeric: readonly NumericExample[]; bound: readonly BoundExample[] }>

/** One published length and what the route predicts for it, whole mm. */
export type Validation = Readonly<{
  id: string
  stitch: string
  beads: number
  statedMm: number
  predictedMm: number
  /** What the chart stands in for, where it is not the piece itself. */
  remark: string
}>

/** A published length that only bounds the model: what the route predicts for the least and the most the source can mean. */
export type Bound = Readonly<{
  id: string
  statedMm: readonly [number, number]
  leastMm: number
  mostMm: number
  remark: string
}>

export const examples: Examples = JSON.parse(
  readFileSync(new URL('../fixtures/thread-examples.json', import.meta.url), 'utf8'),
)

/** The thread each source names, as far as it does; the braid the trade uses most where it is silent. */
const THREADS: Readonly<Record<string, string>> = {
  'peyote-band-8-0': 'nylon-d',
  'brick-triangle-11-0': 'nylon-a',
}

const FORMS: Readonly<Record<string, string>> = {
  'japanese-round-8/0': 'rocaille-japanese-8/0',
  'japanese-round-11/0': 'rocaille-japanese-11/0',
  'czech-rocaille-11/0': 'rocaille-czech-11/0',
}

/** The predictions for every numeric example. */
export function validations(): readonly Validation[] {
  return examples.numeric.map((example) => {
    const { chart, settings, remark } = chartOf(example)
    const woven = wovenMm(chart, formOf(example.bead), THREADS[example.id], settings)
    const ends = example.kind === 'cut' ? example.tails_mm[0] + example.tails_mm[1] : 0
    return {
      id: example.id,
      stitch: example.stitch,
      beads: indexBeads(chart).count,
      statedMm: example.stated_mm,
      predictedMm: Math.round(woven + ends),
      remark,
    }
  })
}

function chartOf(example: NumericExample): Readonly<{
  chart: Chart
  settings: RouteSettings
  remark: string
}> {
  switch (example.id) {
    case 'peyote-band-8-0':
      return { chart: block('peyote', 51, 6), settings: {}, remark: '51 rows of 6 columns' }
    case 'brick-triangle-11-0':
      return {
        chart: triangle(example.rows ?? []),
        settings: { startRow: 0, start: 'ladder', lockEveryRow: example.lock_every_row ?? false },
        remark: 'ladder of 7, then 6 to 2, every row locked',
      }
    case 'ladder-bracelet-8-0':
      return {
        chart: block('ladder', example.beads_per_column ?? 2, example.columns ?? 50),
        settings: {},
        remark: 'woven thread only: the source adds more when its half runs out',
      }
    case 'herringbone-tube-11-0':
      return {
        chart: block('herringbone', 10, 10),
        settings: { startRow: 4 },
        remark: 'the tube laid flat: ten columns, rounds on both sides of the base',
      }
    default:
      throw new Error(`No chart is drawn for the example ${example.id}`)
  }
}

/** The bounds the vaguer sources set, by the least and the most they can mean. */
export function bounds(): readonly Bound[] {
  const ends = 300
  return examples.bound.map(({ id, stated_mm }): Bound => {
    const statedMm: readonly [number, number] =
      typeof stated_mm === 'number' ? [stated_mm, stated_mm] : stated_mm
    const range = (least: number, most: number, remark: string): Bound => ({
      id,
      statedMm,
      leastMm: Math.round(least),
      mostMm: Math.round(most),
      remark,
    })
    switch (id) {
      case 'brick-earring-small':
        // 3 to 6 g are bought for the pair; how much of it is used is not said.
        return range(
          brickDiamond('cylinder-11/0', 100) + ends,
          brickDiamond('cylinder-11/0', 600) + ends,
          '100 to 600 beads an earring: the grams are what is bought, and the length is called a good start',
        )
      case 'brick-edge-8-0':
        return range(
          wovenMm(block('brick', 2, 27), formOf('japanese-round-8/0')) / 2 + 102,
          wovenMm(block('brick', 2, 27), formOf('japanese-round-8/0')) / 2 + 102 + 450,
          '27 beads on a metal edge, start tail 4 in, end left long enough to sew or fringe on',
        )
      case 'brick-cross-11-0':
        return range(
          brickDiamond('rocaille-czech-11/0', 80) + ends,
          brickDiamond('rocaille-czech-11/0', 172) + ends,
          '80 to 172 beads an earring: 3 g bought for the pair, rounded up',
        )
      case 'peyote-ring':
        return range(
          wovenMm(block('peyote', 18, 4), formOf('cylinder-11/0')) + ends,
          wovenMm(block('peyote', 36, 10), formOf('cylinder-11/0')) + ends,
          'bead and width not given: 4 to 10 columns of cylinder 11/0 round part or all of a finger',
        )
      default:
        throw new Error(`No range is worked out for the example ${id}`)
    }
  })
}

function formOf(bead: string): BeadForm {
  const id = FORMS[bead] ?? bead
  const form = referenceTables.forms.find((other) => other.id === id)
  if (form === undefined) throw new Error(`No bead form ${id}`)
  return form
}

/** Woven thread of a chart, slack included, ends not, mm. */
export function wovenMm(
  chart: Chart,
  form: BeadForm,
  threadId = 'braided-6lb',
  settings: RouteSettings = {},
): number {
  const thread = referenceTables.threads.find(({ id }) => id === threadId)
  if (thread === undefined) throw new Error(`No thread ${threadId}`)
  const index = indexBeads(chart)
  const geometry = panelGeometry(chart, index, form, thread.diameterMm.value)
  const draft = stitchOf(chart).layRoute({ chart, index, geometry, settings })
  const { throughMm, runMm, bendMm } = measureThread(draft.events, geometry)
  return (throughMm + runMm + bendMm) * threadSlack(chart.stitch, thread.construction).value
}

/** A block of rows by columns. */
export function block(stitch: StitchKind, rows: number, columns: number): Chart {
  const offset = (row: number) => (stitch === 'brick' ? row % 2 : 0)
  return {
    stitch,
    rows: Array.from({ length: rows }, (_, row) => fullRow(offset(row), columns)),
  }
}

function triangle(rows: readonly number[]): Chart {
  return { stitch: 'brick', rows: rows.map((beads, row) => fullRow(row, beads)) }
}

function fullRow(start: number, beads: number): ChartRow {
  return { start, cells: new Uint16Array(beads).fill(1) }
}

/** Woven thread of a brick diamond of about so many beads. */
function brickDiamond(formId: string, beads: number): number {
  const widest = Math.max(2, Math.round(Math.sqrt(beads)))
  const growing = Array.from({ length: widest - 1 }, (_, at) => at + 2)
  const widths = [...growing, ...growing.toReversed().slice(1)]
  const chart: Chart = {
    stitch: 'brick',
    rows: widths.map((width) => fullRow(widest - width, width)),
  }
  return (wovenMm(chart, formOf(formId)) * beads) / indexBeads(chart).count
}
