import { type Quantity, wholeQuantity } from './quantity.ts'

/** Length of thread in whole millimetres. Geometry (positions, sizes) is a plain number of mm. */
export type ThreadMm = Quantity<'thread mm'>

/** The only door from `number` to `ThreadMm`. @throws RangeError for anything but a whole number. */
export function threadMm(value: number): ThreadMm {
  return wholeQuantity('threadMm', value)
}
