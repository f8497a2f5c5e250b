import { formatNumber, withoutTrailingZeros } from '../../../../shared-core/units/format-number.ts'
import { roundHalfAway } from '../../../../shared-core/units/rounding.ts'
import type { Spread } from '../../../../shared-core/units/spread.ts'
import type { Format } from '../../../app/format.ts'

type Size = Readonly<{ widthMm: Spread; heightMm: Spread }>

/** Width by height as one figure in one unit: `17.6 × 38.4 mm`, from 10 cm on `1.3 × 13.5 cm`. */
export function sizeWords({ widthMm, heightMm }: Size, format: Format): string {
  return crossed(widthMm.value, heightMm.value, format)
}

/** The range of a size, both ends; empty when they are written alike. */
export function sizeRange({ widthMm, heightMm }: Size, format: Format): string {
  const low = crossed(widthMm.low, heightMm.low, format)
  const high = crossed(widthMm.high, heightMm.high, format)
  return low === high ? '' : `${low} to ${high}`
}

function crossed(width: number, height: number, { decimal }: Format): string {
  const isLong = Math.max(width, height) >= 100
  const write = (mm: number) => {
    const rounded = roundHalfAway(String(isLong ? mm / 10 : mm), 1)
    return formatNumber(withoutTrailingZeros(rounded), decimal)
  }
  return `${write(width)} × ${write(height)} ${isLong ? 'cm' : 'mm'}`
}
