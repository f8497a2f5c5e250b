import type { CallOutput } from '../../../shared-core/contract/calls.ts'
import { addDays, calendarDate } from '../../../shared-core/units/calendar-date.ts'
import { hrefTo } from '../../app/place.ts'
import { Swatch, type SwatchLook } from '../../ui/swatch.tsx'
import { tidePath } from './tide-path.ts'
import './days-ahead.css'

type Order = CallOutput<'orders.list'>['orders'][number]

const DAYS = 14
const DUE: SwatchLook = { hex: '#e39a2b', finish: 'gloss' }
const SHORT: SwatchLook = { hex: '#a4323a', finish: 'gloss' }
const READY: SwatchLook = { hex: '#4f8a63', finish: 'gloss' }

/** The fortnight ahead as a tide table: a column a day, and each promised order hanging on its day. */
export function DaysAhead({
  orders,
  shortIds,
  today,
}: Readonly<{ orders: readonly Order[]; shortIds: ReadonlySet<string>; today: string }>) {
  const days = Array.from({ length: DAYS }, (_, day) => addDays(calendarDate(today), day))
  const dueOn = Map.groupBy(orders, (order) => (order.dueOn < today ? today : order.dueOn))
  return (
    <section className="days" aria-label="Orders due in the next fourteen days">
      <svg
        className="days-tide"
        viewBox="0 0 1400 40"
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        <path d={tidePath({ width: 1400, height: 40, waves: 4 })} />
      </svg>
      <ol>
        {days.map((date, index) => (
          <li key={date} className={index === 0 ? 'day day-now' : 'day'}>
            <DayName date={date} />
            <ul className="day-orders">
              {(dueOn.get(date) ?? []).map((order) => (
                <li key={order.id}>
                  <OrderBead
                    order={order}
                    isShort={shortIds.has(order.id)}
                    isLate={order.dueOn < today}
                  />
                </li>
              ))}
            </ul>
          </li>
        ))}
      </ol>
    </section>
  )
}

const weekdays = new Intl.DateTimeFormat('en-GB', { weekday: 'short', timeZone: 'UTC' })
const months = new Intl.DateTimeFormat('en-GB', { month: 'short', timeZone: 'UTC' })

function DayName({ date }: Readonly<{ date: string }>) {
  const moment = Date.parse(date)
  const day = Number(date.slice(8))
  return (
    <time dateTime={date} className="day-name">
      <span className="day-week">{weekdays.format(moment)}</span>
      <span className="day-number">
        {day}
        {day === 1 && <span className="day-month"> {months.format(moment)}</span>}
      </span>
    </time>
  )
}

function OrderBead({
  order,
  isShort,
  isLate,
}: Readonly<{ order: Order; isShort: boolean; isLate: boolean }>) {
  const state = isLate ? 'late' : isShort ? 'short' : order.state === 'ready' ? 'ready' : ''
  const [series, number] = splitCode(order.code)
  const look = isShort || isLate ? SHORT : order.state === 'ready' ? READY : DUE
  return (
    <a className="day-order" href={hrefTo({ room: 'orders', id: order.id })} title={order.customer}>
      <Swatch look={look} size={26} />
      <span className="day-code">
        <span className="day-series">{series}</span>
        {number}
      </span>
      <span className="day-state">{state}</span>
    </a>
  )
}

/** An order's code in its series and its number: narrow days show the number alone. */
function splitCode(code: string): readonly [series: string, number: string] {
  const at = code.lastIndexOf('-') + 1
  return [code.slice(0, at), code.slice(at)]
}
