import type { Chart, ChartRow, StitchKind } from '../../../shared-core/chart/chart.ts'

/**
 * A chart from a drawing, a line a row. In brick a character is half a bead: a letter starts a bead,
 * whose second half is any character but a letter. In the other stitches a character is a bead, `.` none.
 */
export function drawChart(stitch: StitchKind, lines: readonly string[]): Chart {
  const isHalf = stitch === 'brick' || stitch === 'right-angle-weave'
  return { stitch, rows: lines.map((line) => (isHalf ? halfBeadRow(line) : beadRow(line))) }
}

function halfBeadRow(line: string): ChartRow {
  const places = [...line].flatMap((letter, at) => (isSlot(letter) ? [at] : []))
  const start = places[0] ?? 0
  const last = places.at(-1)
  const cells = new Uint16Array(last === undefined ? 0 : (last - start) / 2 + 1)
  for (const at of places) cells[(at - start) / 2] = slot(line[at] ?? 'A')
  return { start, cells }
}

function beadRow(line: string): ChartRow {
  return {
    start: 0,
    cells: Uint16Array.from(line, (letter) => (isSlot(letter) ? slot(letter) : 0)),
  }
}

function isSlot(letter: string): boolean {
  return letter >= 'A' && letter <= 'Z'
}

function slot(letter: string): number {
  return letter.charCodeAt(0) - 64
}
