import { drawChart } from '../draw-chart.ts'

/** Each line is a row: its start in half beads, then its slots. */
export const lanternDrop = drawChart(
  'brick',
  `
7 AAA
6 AAAA
5 AAAAA
4 ABBBBA
3 ABBCBBA
2 ABBCCBBA
1 ABBCDCBBA
0 ABBBDDBBBA
1 ABCDDDCBA
0 ABCBDDBCBA
1 ACDEEEDCA
0 ACDBEEBDCA
1 ACDEEEDCA
0 ABCBDDBCBA
1 ABCDDDCBA
2 ABBDDBBA
3 ABCDCBA
4 ABCCBA
5 ABBBA
6 AAAA
7 AAA
8 AA
`,
)
