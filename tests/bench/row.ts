/** One measured thing: the median of `n` runs, and the lowest and highest of them. */
export type Row = Readonly<{
  measure: string
  n: number
  unit: 'ms' | 'MiB' | 'dE00' | 'mm' | 'bytes'
  median: number
  low: number
  high: number
  /** The `measure` of the row this one is compared with. */
  baseline?: string
  /** The ratio to the baseline that this row should stay within. */
  target?: number
}>

/** Median, lowest and highest of measured values; `unit` says what they are. */
export function medianOf(
  values: readonly number[],
  unit: Row['unit'] = 'ms',
): Pick<Row, 'unit' | 'median' | 'low' | 'high'> {
  const sorted = values.toSorted((a, b) => a - b)
  const middle = sorted.length / 2
  const at = (index: number) => sorted[index] ?? Number.NaN
  const median = Number.isInteger(middle)
    ? (at(middle - 1) + at(middle)) / 2
    : at(Math.floor(middle))
  return { unit, median, low: at(0), high: at(sorted.length - 1) }
}
