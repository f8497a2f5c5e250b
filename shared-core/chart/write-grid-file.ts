import { type Chart, type ChartRow, slotLabel } from './chart.ts'
import { stitchName } from './stitch-name.ts'

/**
 * Writes a chart as a grid file: a comment that names the stitch, then a line a row from the top, its
 * offset in half beads, a semicolon and its slots set apart by commas, `-` where there is no bead.
 *
 * `readGridFile` reads it back to the same chart, blanks included; only a chart without rows is
 * refused there.
 */
export function writeGridFile({ stitch, rows }: Chart): string {
  const title = `# ${stitchName(stitch)}; offset in half beads; slots`
  return `${[title, ...rows.map(writeRow)].join('\n')}\n`
}

function writeRow({ start, cells }: ChartRow): string {
  return `${start};${Array.from(cells, (cell) => (cell === 0 ? '-' : slotLabel(cell - 1))).join(',')}`
}
