import { makeFormat } from '../../../renderer/app/format.ts'
import { todayDate } from '../../../renderer/app/today.ts'
import { addDays, calendarDate } from '../../../shared-core/units/calendar-date.ts'

/** What the journey is about: one workshop, one design, one order. */
export const job = {
  workshop: 'Saltmarsh Beadworks',
  design: 'Tidewrack diamond earrings',
  band: 'Mudflat band',
  market: 'Saturday market',
  marketBox: 'Saturday market box',
  drawer: 'The drawer',
  pairs: 10,
  dueInDays: 9,
  made: 4,
} as const

export const today = todayDate()
export const dueOn = addDays(calendarDate(today), job.dueInDays)

/** Figures as the workshop of the journey writes them. */
export const format = makeFormat({ decimal: ',', currency: 'EUR', today })
