/** Cells a chart may hold, blanks within rows counted. Beyond it no single piece is stitched and screens would stall. */
export const MAX_CELLS = 4_000_000

/** Columns a chart may span. */
export const MAX_COLUMNS = 100_000

/** Rows a chart may span. */
export const MAX_ROWS = 100_000
