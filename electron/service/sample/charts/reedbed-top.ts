import { drawChart } from '../draw-chart.ts'

/** Each line is a row: its start in half beads, then its slots. */
export const reedbedTop = drawChart(
  'brick',
  `
9 AA
8 ADA
7 ADCA
6 ACDCA
5 ACBCCA
4 ACCBCDA
3 ABCBCCBA
2 ABCCBCBCA
1 ACBCBCCBCA
0 ABBBBBBBBBA
`,
)
