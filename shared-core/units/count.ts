import { type Quantity, wholeQuantity } from './quantity.ts'

/** A number of beads, findings or pieces: whole. */
export type Count = Quantity<'count'>

/** The only door from `number` to `Count`. @throws RangeError for anything but a whole number. */
export function count(value: number): Count {
  return wholeQuantity('count', value)
}
