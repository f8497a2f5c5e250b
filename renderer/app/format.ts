import { calendarDate } from '../../shared-core/units/calendar-date.ts'
import { currencyCode } from '../../shared-core/units/currency.ts'
import { durationS } from '../../shared-core/units/duration.ts'
import { formatDate, formatRelativeDays } from '../../shared-core/units/format-date.ts'
import { formatDuration } from '../../shared-core/units/format-duration.ts'
import { formatGeometry, formatThread } from '../../shared-core/units/format-length.ts'
import { formatMass, formatMassExactly } from '../../shared-core/units/format-mass.ts'
import { formatMoney } from '../../shared-core/units/format-money.ts'
import { formatCount } from '../../shared-core/units/format-number.ts'
import { threadMm } from '../../shared-core/units/length.ts'
import { massMg } from '../../shared-core/units/mass.ts'
import { money } from '../../shared-core/units/money.ts'
import type { DecimalMark } from '../../shared-core/units/parse-options.ts'
import type { Spread } from '../../shared-core/units/spread.ts'

/** How this workshop writes figures, and the day it is. */
export type FormatSettings = Readonly<{
  decimal: DecimalMark
  currency: string
  today: string
}>

/** Every figure as the workshop writes it. Takes plain numbers of the unit named; rounds for show only. */
export type Format = ReturnType<typeof makeFormat>

/** The formatters of one workshop. */
export function makeFormat({ decimal, currency, today }: FormatSettings) {
  const code = currencyCode(currency)
  const day = calendarDate(today)
  const format = {
    decimal,
    currency: code,
    today,
    mass: (mg: number) => formatMass(massMg(Math.round(mg)), decimal),
    thread: (mm: number) => formatThread(threadMm(Math.round(mm)), { decimal }),
    size: (mm: number) => formatGeometry(mm, { decimal }),
    duration: (s: number) => formatDuration(durationS(Math.round(s))),
    count: (count: number) => formatCount(count),
    /** A count and its noun: 1 pair, 12 pairs. */
    counted: (count: number, one: string, many = `${one}s`) =>
      `${formatCount(count)} ${Math.abs(count) === 1 ? one : many}`,
    money: (amountMinor: number) => formatMoney(money(amountMinor, code), { decimal }),
    /** An exact decimal of the contract (`6.5`) in percent. */
    percent: (text: string) => `${text.replace('.', decimal)} %`,
    date: (date: string) => formatDate(calendarDate(date), day),
    away: (date: string) => formatRelativeDays(calendarDate(date), day),
    /** A material's quantity in its own unit. */
    quantity: (quantity: number, unit: 'mg' | 'mm' | 'piece'): string =>
      unit === 'mg'
        ? format.mass(quantity)
        : unit === 'mm'
          ? format.thread(quantity)
          : formatCount(quantity),
    /** A material's quantity with every digit it has, to be held against what was typed. */
    exactly: (quantity: number, unit: 'mg' | 'mm' | 'piece'): string =>
      unit === 'mg'
        ? formatMassExactly(massMg(quantity), decimal)
        : format.quantity(quantity, unit),
    /** The range of a figure, `17.9 g to 18.9 g`; empty when both ends are written alike. */
    range: ({ low, high }: Spread, write: (value: number) => string): string =>
      write(low) === write(high) ? '' : `${write(low)} to ${write(high)}`,
  }
  return format
}
