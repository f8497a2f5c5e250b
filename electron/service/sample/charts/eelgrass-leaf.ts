import { drawChart } from '../draw-chart.ts'

/** Each line is a row: its start in half beads, then its slots. */
export const eelgrassLeaf = drawChart(
  'brick',
  `
6 BB
5 ABA
4 ABBA
3 AABAA
2 ACBBCA
1 AACBCAA
0 ACABBACA
1 ACABACA
0 AACBBCAA
1 AACBCAA
2 AABBAA
3 AABAA
4 ABBA
5 ABA
6 BB
`,
)
