import { type Quantity, wholeQuantity } from './quantity.ts'

/** Mass in whole milligrams. */
export type MassMg = Quantity<'mg'>

/** The only door from `number` to `MassMg`. @throws RangeError for anything but a whole number. */
export function massMg(value: number): MassMg {
  return wholeQuantity('massMg', value)
}
