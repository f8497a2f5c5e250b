import type { Id } from './quantity.ts'

/** An ISO 4217 currency code, three capital letters. */
export type CurrencyCode = Id<'currency'>

/** Currencies whose minor unit is not a hundredth (ISO 4217, table of 2026-01-01). */
const MINOR_DIGITS: Readonly<Record<string, number>> = {
  BIF: 0,
  CLP: 0,
  DJF: 0,
  GNF: 0,
  ISK: 0,
  JPY: 0,
  KMF: 0,
  KRW: 0,
  PYG: 0,
  RWF: 0,
  UGX: 0,
  UYI: 0,
  VND: 0,
  VUV: 0,
  XAF: 0,
  XOF: 0,
  XPF: 0,
  BHD: 3,
  IQD: 3,
  JOD: 3,
  KWD: 3,
  LYD: 3,
  OMR: 3,
  TND: 3,
  CLF: 4,
  UYW: 4,
}

/** The only door to `CurrencyCode`. @throws RangeError unless the text is three capital letters. */
export function currencyCode(text: string): CurrencyCode {
  if (!/^[A-Z]{3}$/.test(text))
    throw new RangeError(`currencyCode: expected three capitals, got ${text}`)
  return text as CurrencyCode
}

/** Decimal digits between the major and the minor unit: 2 for EUR, 0 for JPY, 3 for KWD. @source ISO 4217 */
export function minorDigits(currency: CurrencyCode): number {
  return MINOR_DIGITS[currency] ?? 2
}
