import type { Chart, StitchKind } from './chart.ts'
import { slotIndex, slotLabel } from './chart.ts'

/**
 * A chart as it is stored and sent: each row as its start in half beads and its cells as runs,
 * `3A 2- 1B` meaning three of slot A, two places without a bead, one of slot B.
 */
export type ChartJson = Readonly<{
  stitch: StitchKind
  rows: readonly Readonly<{ start: number; cells: string }>[]
}>

/** Writes a chart's rows as runs. `fromChartJson(toChartJson(chart))` gives the same chart. */
export function toChartJson(chart: Chart): ChartJson {
  return {
    stitch: chart.stitch,
    rows: chart.rows.map(({ start, cells }) => ({ start, cells: writeRuns(cells) })),
  }
}

/** Reads a stored chart. @throws RangeError for runs that `toChartJson` cannot have written: a damaged store. */
export function fromChartJson(json: ChartJson): Chart {
  return {
    stitch: json.stitch,
    rows: json.rows.map(({ start, cells }) => ({ start, cells: readRuns(cells) })),
  }
}

function writeRuns(cells: Uint16Array): string {
  const runs: string[] = []
  for (let from = 0; from < cells.length; ) {
    const cell = cells[from] ?? 0
    let to = from + 1
    while (to < cells.length && cells[to] === cell) to += 1
    runs.push(`${to - from}${cell === 0 ? '-' : slotLabel(cell - 1)}`)
    from = to
  }
  return runs.join(' ')
}

function readRuns(text: string): Uint16Array {
  const runs = text === '' ? [] : text.split(' ').map(readRun)
  const cells = new Uint16Array(runs.reduce((sum, run) => sum + run.length, 0))
  let at = 0
  for (const run of runs) {
    cells.fill(run.cell, at, at + run.length)
    at += run.length
  }
  return cells
}

function readRun(run: string): Readonly<{ length: number; cell: number }> {
  const match = /^([1-9][0-9]{0,6})([A-Z]{1,4}|-)$/.exec(run)
  const label = match?.[2]
  const index = label === '-' ? -1 : slotIndex(label ?? '')
  if (match === null || index === undefined) {
    throw new RangeError(`Chart row: expected runs such as 3A or 2-, got ${run}`)
  }
  return { length: Number(match[1]), cell: index + 1 }
}
