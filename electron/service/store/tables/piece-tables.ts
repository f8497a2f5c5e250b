import type { Kept } from './kept.ts'
import type { LedgerLine } from './ledger-line.ts'

export type PieceTable = Kept &
  Readonly<{
    code: string
    series: string
    serial: number
    make_id: string
    cost_minor: number
    labour_minor: number
    bench_s: number
    state: 'here' | 'reserved' | 'sold' | 'given' | 'lost' | 'unmade'
    place_id: string | null
    sale_id: number | null
  }>

export type PieceMovementTable = LedgerLine &
  Readonly<{
    piece_id: string
    kind:
      | 'made'
      | 'moved'
      | 'reserved'
      | 'released'
      | 'sold'
      | 'returned'
      | 'repaired'
      | 'unmade'
      | 'given'
      | 'lost'
    place_id: string | null
    note: string
  }>

export type SaleTable = LedgerLine &
  Readonly<{
    piece_id: string
    channel_id: string
    units: -1 | 1
    sold_on: string
    price_minor: number
    tax_minor: number
    net_minor: number
    fees_minor: number
    cost_minor: number
    profit_minor: number
    returns_id: number | null
    note: string
  }>
