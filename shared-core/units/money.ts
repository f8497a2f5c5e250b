import type { CurrencyCode } from './currency.ts'

/** An amount in whole minor units of its currency (cents, pence, yen). Never a fraction, never a float. */
export type Money = Readonly<{ amountMinor: number; currency: CurrencyCode }>

/** The only door to `Money`. @throws RangeError when `amountMinor` is not a whole number. */
export function money(amountMinor: number, currency: CurrencyCode): Money {
  if (!Number.isSafeInteger(amountMinor)) {
    throw new RangeError(`money: expected whole minor units, got ${amountMinor}`)
  }
  return { amountMinor: amountMinor || 0, currency }
}
