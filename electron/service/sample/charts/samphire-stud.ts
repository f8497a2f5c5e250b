import { drawChart } from '../draw-chart.ts'

/** Each line is a row: its start in half beads, then its slots. */
export const samphireStud = drawChart(
  'brick',
  `
3 BBBB
2 BABAB
1 BBAABB
0 BABAABB
1 BBAABB
2 BBABB
3 BBAB
`,
)
