import { addDays, type CalendarDate, daysBetween } from '../units/calendar-date.ts'

/** A quantity on a day, in the material's unit: a promise's need by its due day, or a delivery's arrival. */
export type DatedQuantity = Readonly<{ on: CalendarDate; quantity: number }>

/** What is known of a material today. */
export type StockOutlook = Readonly<{
  today: CalendarDate
  /** On hand, less what is held for anything but the promises listed. */
  onHand: number
  promised: readonly DatedQuantity[]
  arriving: readonly DatedQuantity[]
  /** Demand to expect per day by history, promises included. */
  expectedPerDay: number
  /** Days from ordering to having it. */
  leadDays: number
  /** Stock to keep in hand against surprise. */
  safetyStock: number
}>

/** Why a material runs out: its promises alone need more, or the demand that history lets expect. */
export type RunsOutBecause = 'promised' | 'expected'

/**
 * When a material runs out and what to do by when.
 *
 * `daysOfCover`: days that stock lasts, today being the first. `orderBy`: the last day to order and have
 * it before stock falls below the safety stock; it may lie in the past, then `isLate`. `quantity`: what
 * to order at least, to last through another lead time after running out with the safety stock whole.
 */
export type RunningOut =
  | Readonly<{
      kind: 'runs out'
      on: CalendarDate
      because: RunsOutBecause
      daysOfCover: number
      orderBy: CalendarDate
      isLate: boolean
      quantity: number
    }>
  | Readonly<{ kind: 'lasts'; days: number }>

/** How far ahead is looked: a year. */
export const outlookDays = 366

/**
 * The day a material runs out by its promises and by the demand to expect.
 *
 * By each day, the demand is the larger of what is promised by then and what history expects by then, so
 * that an order is not counted twice. Promises overdue today count today. The material runs out on the
 * first day the demand is above what is on hand and has arrived by then.
 *
 * @example 5000 on hand, 400 a day expected, 7 days of lead -> runs out on day 13, order by day 6
 */
export function runningOut(outlook: StockOutlook): RunningOut {
  const { today, leadDays, safetyStock } = outlook
  const demand = demandByDay(outlook, outlookDays + leadDays)
  const supply = supplyByDay(outlook, outlookDays + leadDays)
  const day = firstBelow(supply, demand.total, 0)
  if (day === undefined || day > outlookDays) return { kind: 'lasts', days: outlookDays }
  const dip = firstBelow(supply, demand.total, safetyStock) ?? day
  const orderBy = addDays(today, dip - leadDays)
  const later = day + leadDays
  const need = (demand.total[later] ?? 0) + safetyStock - (supply[later] ?? 0)
  return {
    kind: 'runs out',
    on: addDays(today, day),
    because: (demand.promised[day] ?? 0) > (supply[day] ?? 0) ? 'promised' : 'expected',
    daysOfCover: day,
    orderBy,
    isLate: orderBy < today,
    quantity: Math.max(1, Math.ceil(need)),
  }
}

/** First day on which less than `keep` is left. */
function firstBelow(
  supply: readonly number[],
  demand: readonly number[],
  keep: number,
): number | undefined {
  const day = supply.findIndex((quantity, i) => quantity - (demand[i] ?? 0) < keep)
  return day < 0 ? undefined : day
}

function demandByDay({ promised, expectedPerDay, today }: StockOutlook, days: number) {
  const known = byDay(promised, today, days)
  const all = known.map((quantity, day) => Math.max(quantity, expectedPerDay * day))
  return { promised: known, total: all }
}

function supplyByDay({ arriving, onHand, today }: StockOutlook, days: number): readonly number[] {
  return byDay(arriving, today, days).map((quantity) => onHand + quantity)
}

/** Sums by each day from today (0) to `days`; what was due before today counts today. */
function byDay(
  entries: readonly DatedQuantity[],
  today: CalendarDate,
  days: number,
): readonly number[] {
  const sums = Array.from({ length: days + 1 }, () => 0)
  for (const { on, quantity } of entries) {
    const day = Math.max(0, daysBetween(today, on))
    if (day <= days) sums[day] = (sums[day] ?? 0) + quantity
  }
  for (let day = 1; day <= days; day++) sums[day] = (sums[day] ?? 0) + (sums[day - 1] ?? 0)
  return sums
}
