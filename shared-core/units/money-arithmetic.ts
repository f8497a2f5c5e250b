import type { CurrencyCode } from './currency.ts'
import { type Fraction, fraction, multiplyFractions } from './fraction.ts'
import { type Money, money } from './money.ts'
import { type RoundingMode, roundFraction } from './rounding.ts'

/** a + b. @throws RangeError for two currencies or a sum beyond the safe integers. */
export function addMoney(a: Money, b: Money): Money {
  assertSameCurrency(a, b)
  return money(a.amountMinor + b.amountMinor, a.currency)
}

/** a - b. @throws RangeError for two currencies. */
export function subtractMoney(a: Money, b: Money): Money {
  assertSameCurrency(a, b)
  return money(a.amountMinor - b.amountMinor, a.currency)
}

/** The amount with its sign turned. */
export function negateMoney(amount: Money): Money {
  return money(-amount.amountMinor, amount.currency)
}

/** The sum of the amounts, 0 of `currency` for none. @throws RangeError for another currency. */
export function sumMoney(currency: CurrencyCode, amounts: readonly Money[]): Money {
  return amounts.reduce(addMoney, money(0, currency))
}

/**
 * An amount times an exact factor, rounded once to whole minor units by the named mode.
 *
 * @example multiplyMoney(money(100, EUR), fraction(1, 3), 'half-even') // 33 cents
 */
export function multiplyMoney(amount: Money, factor: Fraction, mode: RoundingMode): Money {
  const exact = multiplyFractions(fraction(amount.amountMinor), factor)
  return money(roundFraction(exact, mode), amount.currency)
}

/** -1, 0 or 1 as a is less than, equal to or more than b. @throws RangeError for two currencies. */
export function compareMoney(a: Money, b: Money): -1 | 0 | 1 {
  assertSameCurrency(a, b)
  if (a.amountMinor === b.amountMinor) return 0
  return a.amountMinor < b.amountMinor ? -1 : 1
}

function assertSameCurrency(a: Money, b: Money): void {
  if (a.currency !== b.currency) {
    throw new RangeError(`money: ${a.currency} and ${b.currency} cannot be put together`)
  }
}
