import type { CallInput } from '../../../shared-core/contract/calls.ts'
import { addDays, calendarDate, isCalendarDate } from '../../../shared-core/units/calendar-date.ts'
import type { Order } from './order-words.ts'

export type OrderInput = CallInput<'orders.save'>['order']

/** A line while it is typed: what is not chosen yet is null, figures are kept as text. */
export type LineDraft = Readonly<{
  key: number
  id?: string
  designId: string | null
  colourwayId: string | null
  unitsText: string
  units: number | undefined
  priceText: string
  priceMinor: number | undefined
}>

/** An order while it is typed. */
export type OrderDraft = Readonly<{
  customer: string
  promisedOn: string
  dueOn: string
  note: string
  lines: readonly LineDraft[]
}>

let lastKey = 0

/** A line with nothing chosen. */
export function blankLine(): LineDraft {
  lastKey += 1
  return {
    key: lastKey,
    designId: null,
    colourwayId: null,
    unitsText: '1',
    units: 1,
    priceText: '',
    priceMinor: undefined,
  }
}

const USUAL_DAYS = 14

/** A new order, promised today. */
export function blankDraft(today: string): OrderDraft {
  return {
    customer: '',
    promisedOn: today,
    dueOn: addDays(calendarDate(today), USUAL_DAYS),
    note: '',
    lines: [blankLine()],
  }
}

/** A saved order, to be changed. `money` writes a price as the maker types it. */
export function draftOf(order: Order, money: (minor: number) => string): OrderDraft {
  const { customer, promisedOn, dueOn, note } = order
  const lines = order.lines.map(({ id, designId, colourwayId, units, priceMinor }) => ({
    ...blankLine(),
    id,
    designId,
    colourwayId,
    unitsText: String(units),
    units,
    priceText: priceMinor === null ? '' : money(priceMinor),
    priceMinor: priceMinor ?? undefined,
  }))
  return { customer, promisedOn, dueOn, note, lines }
}

/** Whether something is chosen and every design chosen has its colourway: no line would be left out. */
export function isChosen({ lines }: Pick<OrderDraft, 'lines'>): boolean {
  const chosen = lines.filter(({ designId }) => designId !== null)
  return chosen.length > 0 && chosen.every(({ colourwayId }) => colourwayId !== null)
}

/** The order as the contract takes it, from its finished lines; null while there is none. */
export function inputOf(draft: OrderDraft): OrderInput | null {
  const lines = draft.lines.flatMap(({ id, designId, colourwayId, units, priceMinor }) =>
    designId === null || colourwayId === null || units === undefined || units === 0
      ? []
      : [
          {
            ...(id === undefined ? {} : { id }),
            designId,
            colourwayId,
            units,
            priceMinor: priceMinor ?? null,
          },
        ],
  )
  if (lines.length === 0 || !isCalendarDate(draft.dueOn) || !isCalendarDate(draft.promisedOn))
    return null
  const { customer, promisedOn, dueOn, note } = draft
  return { customer, promisedOn, dueOn, note, lines }
}

/** The order for asking about cover before its customer is named. */
export function coverInputOf(draft: OrderDraft): OrderInput | null {
  const input = inputOf(draft)
  if (input === null) return null
  return { ...input, customer: input.customer.trim() === '' ? 'not named yet' : input.customer }
}
