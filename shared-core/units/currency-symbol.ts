import type { CurrencyCode } from './currency.ts'

/** Signs in common use, by currency; a sign may stand for several currencies. */
const SYMBOLS: Readonly<Record<string, string>> = {
  AUD: '$',
  BRL: 'R$',
  CAD: '$',
  CHF: 'Fr.',
  CNY: '¥',
  CZK: 'Kč',
  DKK: 'kr',
  EUR: '€',
  GBP: '£',
  HUF: 'Ft',
  ILS: '₪',
  INR: '₹',
  ISK: 'kr',
  JPY: '¥',
  KRW: '₩',
  MXN: '$',
  NOK: 'kr',
  NZD: '$',
  PLN: 'zł',
  SEK: 'kr',
  SGD: '$',
  TRY: '₺',
  UAH: '₴',
  USD: '$',
  VND: '₫',
  ZAR: 'R',
}

/** The sign of a currency, or its code where none is in common use. */
export function currencySymbol(currency: CurrencyCode): string {
  return SYMBOLS[currency] ?? currency
}
