import { drawChart } from '../draw-chart.ts'

/** Each line is a row: its start in half beads, then its slots. */
export const tidewrackDiamond = drawChart(
  'brick',
  `
9 AA
8 ABA
7 ADDA
6 ADDDA
5 ABBBBA
4 ADBBBDA
3 ABDDDDDA
2 ADBCCCBDA
1 ABDBBBBBDA
0 ADBDBBBDBDA
1 ADBDDDDDBA
0 ABDBDDDBDBA
1 ABCBBBBBDA
0 ADBDBBBDBDA
1 ADBDDDDDBA
2 ADBDDDBDA
3 ADBBBBBA
4 ADBBBDA
5 ADDDDA
6 ADDDA
7 ABBA
8 ABA
9 AA
`,
)
