import type { BeadFinish } from '../../../../shared-core/beads/bead-form.ts'
import { referenceTables } from '../../../../shared-core/beads/bead-tables.ts'
import { type Chart, slotAt } from '../../../../shared-core/chart/chart.ts'
import { blankChart } from '../../../../shared-core/chart/outlines/blank-chart.ts'
import { chartFromOutline } from '../../../../shared-core/chart/outlines/chart-from-outline.ts'
import { parseWordChart } from '../../../../shared-core/words/parse-word-chart.ts'
import type { BeadScene } from '../../../drawing/bead-scene.ts'
import { chartScene } from '../../../drawing/chart-scene.ts'
import { firstDraft } from '../draft/draft.ts'
import { beadSizeOf } from './bead-size.ts'
import { SAMPLE_WORDS } from './sample-words.ts'
import type { WayName } from './ways.ts'

const looks: readonly Readonly<{ hex: string; finish: BeadFinish }>[] = [
  { hex: '#465a66', finish: 'matte' },
  { hex: '#2f7d8c', finish: 'gloss' },
  { hex: '#e9dfd0', finish: 'matte' },
  { hex: '#d08a2e', finish: 'gloss' },
  { hex: '#9fc1c9', finish: 'matte' },
]

/** What each way leads to, as beads: drawn by the same core as the pages behind the cards. */
export function wayScenes(): Readonly<Record<WayName, BeadScene>> {
  return {
    blank: scene(painted(blank(15, 14), () => 2)),
    outline: scene(painted(diamond(), ({ row, at }) => (isRim(row, at) ? 1 : 0))),
    picture: scene(painted(blank(22, 20), evening)),
    grid: scene(
      painted(loom(14, 11), ({ row, at }) => ((at / 2 + row) % 4 < 2 ? 0 : (row >> 1) % 2 ? 3 : 2)),
    ),
    words: scene(words()),
  }
}

type Place = Readonly<{ row: number; at: number }>

function painted(chart: Chart, slotOf: (place: Place) => number): Chart {
  return {
    ...chart,
    rows: chart.rows.map(({ start, cells }, row) => ({
      start,
      cells: cells.map((cell, i) => (cell === 0 ? 0 : slotOf({ row, at: start + 2 * i }) + 1)),
    })),
  }
}

function blank(columns: number, rows: number): Chart {
  const made = blankChart({ stitch: 'brick', columns, rows })
  return made.ok ? made.value : { stitch: 'brick', rows: [] }
}

function loom(columns: number, rows: number): Chart {
  const made = blankChart({ stitch: 'loom', columns, rows })
  return made.ok ? made.value : { stitch: 'loom', rows: [] }
}

function diamond(): Chart {
  const made = chartFromOutline({ kind: 'diamond', stitch: 'brick', columns: 9, rows: 17 })
  return made.ok ? made.value.chart : { stitch: 'brick', rows: [] }
}

const drawnDiamond = diamond()

/** The outermost bead at either end of a row. */
function isRim(row: number, at: number): boolean {
  return (
    slotAt(drawnDiamond, { row, at: at - 2 }) < 0 || slotAt(drawnDiamond, { row, at: at + 2 }) < 0
  )
}

/** A low sun over water: sky, sun, its path, the tide. */
function evening({ row, at }: Place): number {
  const [x, y] = [(at - 22) / 2, (row - 8) * 0.82]
  if (row < 11) return Math.hypot(x, y) < 5 ? 3 : 4
  if (row === 11) return 0
  return Math.abs(x) < 4 - (row - 12) / 3 && row % 2 === 0 ? 3 : 1
}

function words(): Chart {
  const read = parseWordChart(SAMPLE_WORDS, { stitch: 'brick' })
  return read.ok ? read.value.chart : { stitch: 'brick', rows: [] }
}

function scene(chart: Chart): BeadScene {
  const { form, size } = beadSizeOf(firstDraft, referenceTables)
  return chartScene({ chart, form, palette: looks, threadMm: size.threadMm })
}
