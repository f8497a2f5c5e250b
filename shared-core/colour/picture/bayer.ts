/**
 * The ordered dither matrix of side `side` (a power of two): thresholds 0 to side^2 - 1, row by row.
 *
 * @throws RangeError when `side` is not 1, 2, 4, 8 or 16: a bug in the caller.
 * @source B. E. Bayer, IEEE International Conference on Communications 26 (1973): 4 M + 0 / 2 / 3 / 1.
 */
export function bayerMatrix(side: number): readonly (readonly number[])[] {
  if (![1, 2, 4, 8, 16].includes(side)) {
    throw new RangeError(`bayerMatrix: expected a power of two up to 16, got ${side}`)
  }
  if (side === 1) return [[0]]
  const quarter = bayerMatrix(side / 2)
  const rows = (left: number, right: number) =>
    quarter.map((row) => [
      ...row.map((threshold) => 4 * threshold + left),
      ...row.map((threshold) => 4 * threshold + right),
    ])
  return [...rows(0, 2), ...rows(3, 1)]
}

/** Whether a share of 0 to 1 turns a place on: when it is above (threshold + 0.5) / side^2. */
export function isOn(share: number, threshold: number, side: number): boolean {
  return share > (threshold + 0.5) / (side * side)
}
