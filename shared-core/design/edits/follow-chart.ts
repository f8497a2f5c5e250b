import type { Chart, ChartRow } from '../../chart/chart.ts'
import type { ChartEdit } from '../../chart/edits/chart-edit.ts'
import type { DesignBody, Panel, Strand, StrandAnchor } from '../design.ts'

/** An edit of a panel's chart, and the chart it started from. */
export type PanelChange = Readonly<{ panel: Panel; before: Chart; edit: ChartEdit }>

/**
 * The body with what points into a panel's chart moved along with its edit: the start row keeps its
 * row, a strand keeps its bead or, where that is gone, the nearest left in the row. A start row that
 * is gone is left to the studio; a strand whose row has no bead left hangs from nothing.
 *
 * The body itself comes back when nothing moves. The panel's chart is left as it is.
 */
export function followChart(body: DesignBody, change: PanelChange): DesignBody {
  const { panel } = change
  const isFollowed =
    panel.route.startRow !== undefined ||
    body.parts.some((part) => part.kind === 'strand' && part.anchor?.panelId === panel.id)
  if (!isFollowed) return body
  const parts = body.parts.map((part) => {
    if (part === panel) return followStart(panel, change)
    return part.kind === 'strand' && part.anchor?.panelId === panel.id
      ? followStrand(part, part.anchor, change)
      : part
  })
  return parts.every((part, at) => part === body.parts[at]) ? body : { ...body, parts }
}

function followStart(panel: Panel, change: PanelChange): Panel {
  const { startRow, ...route } = panel.route
  if (startRow === undefined) return panel
  const row = rowAfter(change, startRow)
  if (row === startRow) return panel
  return { ...panel, route: row === undefined ? route : { startRow: row, ...route } }
}

function followStrand(strand: Strand, anchor: StrandAnchor, change: PanelChange): Strand {
  const { copies, anchor: _, ...rest } = strand
  const moved = anchorAfter(anchor, change)
  if (moved?.row === anchor.row && moved.bead === anchor.bead) return strand
  return moved === undefined ? { ...rest, copies } : { ...rest, anchor: moved, copies }
}

function anchorAfter(anchor: StrandAnchor, change: PanelChange): StrandAnchor | undefined {
  const { before, edit } = change
  const old = before.rows[anchor.row]
  const row = rowAfter(change, anchor.row)
  const next = row === undefined ? undefined : edit.chart.rows[row]
  if (old === undefined || row === undefined || next === undefined) return undefined
  const places = beadPlaces(next)
  if (places.length === 0) return undefined
  const moved = old.cells === next.cells ? next.start - old.start : edit.shift.at
  const wanted = (beadPlaces(old)[anchor.bead] ?? old.start) + moved
  return { panelId: anchor.panelId, row, bead: nearestPlace(places, wanted) }
}

function beadPlaces({ start, cells }: ChartRow): readonly number[] {
  return Array.from(cells, (cell, i) => (cell === 0 ? -1 : start + 2 * i)).filter((at) => at >= 0)
}

function nearestPlace(places: readonly number[], wanted: number): number {
  let best = 0
  for (const [bead, at] of places.entries()) {
    if (Math.abs(at - wanted) < Math.abs((places[best] ?? 0) - wanted)) best = bead
  }
  return best
}

/** Where a row lies after an edit, or `undefined` when it is gone. */
function rowAfter({ before, edit }: PanelChange, row: number): number | undefined {
  let moved = 0
  for (const { row: to, remove, insert } of edit.inverse.splices) {
    const from = to - moved
    if (row < from) break
    if (row < from + insert.length)
      return rowWithin({ before, edit }, row, { from, to, remove, insert })
    moved += remove - insert.length
  }
  return row + moved
}

type Within = Readonly<{ from: number; to: number; remove: number; insert: readonly ChartRow[] }>

function rowWithin(
  { before, edit }: Pick<PanelChange, 'before' | 'edit'>,
  row: number,
  { from, to, remove, insert }: Within,
): number | undefined {
  const cells = before.rows[row]?.cells
  // A row that only moved keeps its cells, so it is found again wherever it went.
  for (let next = to; next < to + remove; next += 1) {
    if (edit.chart.rows[next]?.cells === cells) return next
  }
  if (remove === insert.length) return to + row - from
  const shifted = row + edit.shift.row
  return shifted >= to && shifted < to + remove ? shifted : undefined
}
