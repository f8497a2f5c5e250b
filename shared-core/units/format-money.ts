import Big from 'big.js'
import { minorDigits } from './currency.ts'
import { currencySymbol } from './currency-symbol.ts'
import { formatNumber, MINUS } from './format-number.ts'
import type { Money } from './money.ts'
import type { DecimalMark } from './parse-options.ts'

/** How money is shown. `mark` chooses the sign (€), the code (EUR) or the bare figure. */
export type MoneyStyle = Readonly<{
  decimal: DecimalMark
  mark?: 'symbol' | 'code' | 'none' | undefined
}>

/**
 * Money with all its minor digits: € 4,20 or −€ 12.50 or ¥ 840.
 *
 * @example formatMoney(money(420, EUR), { decimal: ',' }) // € 4,20
 */
export function formatMoney(amount: Money, style: MoneyStyle): string {
  const figure = formatNumber(
    majorDecimal({ ...amount, amountMinor: Math.abs(amount.amountMinor) }),
    style.decimal,
  )
  const sign = amount.amountMinor < 0 ? MINUS : ''
  if (style.mark === 'none') return `${sign}${figure}`
  const mark = style.mark === 'code' ? amount.currency : currencySymbol(amount.currency)
  return `${sign}${mark} ${figure}`
}

/** The amount in major units as a plain decimal text, for files: 420 cents is `4.20`. */
export function majorDecimal(amount: Money): string {
  const digits = minorDigits(amount.currency)
  return new Big(amount.amountMinor).times(new Big(10).pow(-digits)).toFixed(digits)
}
