import { type Quantity, wholeQuantity } from './quantity.ts'

/** Working time in whole seconds. */
export type DurationS = Quantity<'s'>

/** The only door from `number` to `DurationS`. @throws RangeError for anything but a whole number. */
export function durationS(value: number): DurationS {
  return wholeQuantity('durationS', value)
}
