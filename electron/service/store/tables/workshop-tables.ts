import type { Flag, Kept } from './kept.ts'

export type WorkshopTable = Kept &
  Readonly<{
    name: string
    currency: string
    decimal_mark: ',' | '.'
    hourly_rate_minor: number
    overhead_kind: 'percent-of-labour' | 'per-hour' | 'per-piece'
    overhead_percent: string | null
    overhead_minor: number | null
    costing_method: 'fifo' | 'average'
    margin_percent: string
    price_step_minor: number
    scale_resolution_mg: number
    tag_maker: string
    tag_care: string
    tag_caution: string
  }>

export type ChannelTable = Kept &
  Readonly<{
    position: number
    name: string
    kind: 'market' | 'web' | 'consignment' | 'wholesale' | 'other'
    fee_percent: string
    fee_fixed_minor: number
    payment_percent: string
    payment_fixed_minor: number
    fees_on: 'net' | 'gross'
    tax_percent: string
    tax_included: Flag
  }>

export type PlaceTable = Kept &
  Readonly<{ position: number; name: string; channel_id: string | null }>
