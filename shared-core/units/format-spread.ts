import { formatNumber } from './format-number.ts'
import type { DecimalMark } from './parse-options.ts'
import type { Spread } from './spread.ts'

/**
 * A figure with its range as `parseSpread` reads it back: `1.6 mm (1.55 to 1.65)`, `5 mm` where
 * there is no range. To a millionth, no zeros at the end.
 */
export function formatSpread(
  { value, low, high }: Spread,
  {
    decimal = '.',
    unit,
  }: Readonly<{ decimal?: DecimalMark | undefined; unit?: string | undefined }>,
): string {
  const write = (figure: number) =>
    formatNumber(String(Number(figure.toFixed(6))).replace(/e.*$/, ''), decimal)
  const whole = unit === undefined ? write(value) : `${write(value)} ${unit}`
  return low === high ? whole : `${whole} (${write(low)} to ${write(high)})`
}
