import type { Kept } from './kept.ts'

export type SalesOrderTable = Kept &
  Readonly<{
    serial: number
    customer: string
    promised_on: string
    due_on: string
    note: string
    state: 'open' | 'closed' | 'cancelled'
  }>

export type OrderLineTable = Kept &
  Readonly<{
    order_id: string
    position: number
    version_id: string
    colourway_id: string
    units: number
    price_minor: number | null
  }>
