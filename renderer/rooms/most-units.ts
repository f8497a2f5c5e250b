/** As many as one order line or one make takes. */
export const MOST_UNITS = 10_000
