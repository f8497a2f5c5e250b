import type { Refusal } from '../../refusal.ts'
import { ok, type Result } from '../../result.ts'
import type { Chart, ChartRow } from '../chart.ts'
import { normaliseChart } from '../normalise-chart.ts'
import { chartFromOutline, type OutlineOrder, type OutlineReading } from './chart-from-outline.ts'

/**
 * The small top a fringe hangs from: an outline down to its widest row, so that the whole width is there
 * to hang from. A band and a triangle are whole; of the others it is the upper part.
 *
 * @param order - `rows` are those of the top; an outline whose widest row falls elsewhere comes as near
 *   to them as its steps allow.
 * @returns The chart, or what `chartFromOutline` refuses.
 */
export function fringeTop(order: OutlineOrder): Result<OutlineReading, Refusal> {
  const whole = chartFromOutline(order)
  if (!whole.ok) return whole
  let best = cut(whole.value)
  // A taller outline has its widest row further down, in proportion.
  for (let tries = 0; tries < 6 && best.chart.rows.length !== order.rows; tries += 1) {
    const { chart, of } = best
    const rows = Math.max(1, Math.round((of * order.rows) / Math.max(1, chart.rows.length)))
    const drawn = chartFromOutline({ ...order, rows: rows === of ? of + 1 : rows })
    if (!drawn.ok) break
    const next = cut(drawn.value)
    if (missed(next, order) >= missed(best, order)) break
    best = next
  }
  return ok({ chart: best.chart, notes: best.notes })
}

/** Beads of a row: its places that are not empty. */
export function beadsOfRow(row: ChartRow | undefined): number {
  return row?.cells.reduce((sum, cell) => sum + (cell === 0 ? 0 : 1), 0) ?? 0
}

type Cut = OutlineReading & Readonly<{ of: number }>

function cut({ chart, notes }: OutlineReading): Cut {
  const beads = chart.rows.map(beadsOfRow)
  const widest = beads.lastIndexOf(Math.max(...beads))
  const upper: Chart = { ...chart, rows: chart.rows.slice(0, widest + 1) }
  return { chart: normaliseChart(upper).chart, notes, of: chart.rows.length }
}

function missed({ chart }: Cut, { rows }: OutlineOrder): number {
  return Math.abs(chart.rows.length - rows)
}
