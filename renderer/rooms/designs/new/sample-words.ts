/** A small word chart to try: a diamond of thirteen rows, worked out from its widest row. */
export const SAMPLE_WORDS = `Brick stitch, a small diamond. (L) begins at the left, (R) at the right.

Row 7 (L): (1)A, (1)B, (3)C, (1)B, (1)A
Row 6 (R) [decrease ½ at both ends]: (1)A, (1)B, (2)C, (1)B, (1)A
Row 5 (L) [decrease ½ at both ends]: (1)A, (1)B, (1)C, (1)B, (1)A
Row 4 (R) [decrease ½ at both ends]: (1)A, (2)B, (1)A
Row 3 (L) [decrease ½ at both ends]: (1)A, (1)B, (1)A
Row 2 (R) [decrease ½ at both ends]: (2)A
Row 1 (L) [decrease ½ at both ends]: (1)A
Row 8 (R) [decrease ½ at both ends]: (1)A, (1)B, (2)C, (1)B, (1)A
Row 9 (L) [decrease ½ at both ends]: (1)A, (1)B, (1)C, (1)B, (1)A
Row 10 (R) [decrease ½ at both ends]: (1)A, (2)B, (1)A
Row 11 (L) [decrease ½ at both ends]: (1)A, (1)B, (1)A
Row 12 (R) [decrease ½ at both ends]: (2)A
Row 13 (L) [decrease ½ at both ends]: (1)A
`
