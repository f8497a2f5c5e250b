import { DraftSession } from '../../../../renderer/rooms/designs/table/draft-session.ts'
import type { StrokePort } from '../../../../renderer/rooms/designs/table/stroke-writer.ts'
import type { ClipBoard } from '../../../../renderer/rooms/designs/table/table-clip.ts'
import { TableModel } from '../../../../renderer/rooms/designs/table/table-model.ts'
import { type Chart, type StitchKind, slotLabel } from '../../../../shared-core/chart/chart.ts'
import { sharedChartJson } from '../../../../shared-core/chart/shared-rows.ts'
import type { CallOutput } from '../../../../shared-core/contract/calls.ts'
import { designOf, panelOf } from '../../../shared-core/design/a-design.ts'

type Opened = CallOutput<'drafts.open'>

/** The store's part is proved with `DraftSession`; here it takes whatever comes. */
const port: StrokePort = {
  stroke: async ({ position }) => ({ ok: true, value: { position, count: position } }),
  moveTo: async ({ position }) => ({ ok: true, value: { position, count: position } }),
  strokes: async () => ({ ok: true, value: { strokes: [] } }),
}

type Openings = Readonly<{ clipBoard?: ClipBoard; colours?: readonly string[] }>

const FOUR = ['#465a66', '#465a66', '#465a66', '#465a66']

/** A table with one panel on it, over a draft of its own. */
export function openTable(
  chart: Chart,
  { clipBoard = { kept: undefined }, colours = FOUR }: Openings = {},
) {
  const palette = colours.map((colourHex, at) => {
    const label = slotLabel(at)
    return { label, name: label, formId: 'cylinder-11/0', colourHex, finish: 'matte' } as const
  })
  const panel = panelOf(chart, { chart: sharedChartJson(chart) })
  const body = designOf([panel], { unitName: 'pair', palette }) as Opened['body']
  const session = new DraftSession(
    {
      ...{ designId: 'des_000001', name: 'Drop', tags: [], version: 1, body },
      ...{ position: 0, count: 0, strokes: [], savedPosition: 0, isBehind: false },
    },
    port,
  )
  const model = new TableModel({
    view: session.view,
    stroke: (label, partId, edit, palette) => session.stroke(label, partId, edit, palette),
    clipBoard,
  })
  session.subscribe(model.refresh)
  return { session, model }
}

export const empty = (stitch: StitchKind): Chart => ({ stitch, rows: [] })
export const cells = (model: TableModel) =>
  model.view().chart.rows.map(({ cells: row }) => Array.from(row))
