import type { Panel } from '../../../../shared-core/design/design.ts'

/** Beads in a row of a panel; 0 where it has none. */
export function beadsInRow({ chart }: Panel, row: number): number {
  let beads = 0
  for (const [, count] of (chart.rows[row]?.cells ?? '').matchAll(/(\d+)[A-Z]/g)) {
    beads += Number(count)
  }
  return beads
}

/** The first row of a panel that has beads, from the top, 0-based. */
export function rowWithBeads(panel: Panel): number {
  return Math.max(
    0,
    panel.chart.rows.findIndex((_, row) => beadsInRow(panel, row) > 0),
  )
}
