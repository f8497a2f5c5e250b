import type { Finding } from './with-ratios.ts'

const heads = ['measure', 'median', 'spread', 'runs', 'ratio', 'target']

/** Findings as the lines of a table; the first column is flush left, figures flush right. */
export function benchTable(rows: readonly Finding[]): string {
  const cells = [heads, ...rows.map(cellsOf)]
  const widths = heads.map((_, column) => Math.max(...cells.map((row) => row[column]?.length ?? 0)))
  return cells
    .map((row) =>
      row
        .map((cell, column) =>
          column === 0 ? cell.padEnd(widths[column] ?? 0) : cell.padStart(widths[column] ?? 0),
        )
        .join('  '),
    )
    .join('\n')
}

function cellsOf({ measure, unit, median, low, high, n, ratio, target, verdict }: Finding) {
  return [
    measure,
    `${figure(median)} ${unit}`,
    `${figure(low)} to ${figure(high)}`,
    String(n),
    ratio === undefined ? '' : `${ratio.toFixed(2)}x`,
    target === undefined ? '' : `${target}x ${verdict ?? ''}`,
  ]
}

/** Three figures that matter, more for whole hundreds. */
function figure(value: number): string {
  if (value >= 100) return value.toFixed(0)
  return value >= 10 ? value.toFixed(1) : value.toFixed(2)
}
