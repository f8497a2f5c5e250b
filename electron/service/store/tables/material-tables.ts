import type { Flag, Kept } from './kept.ts'
import type { LedgerLine } from './ledger-line.ts'

export type SupplierTable = Kept & Readonly<{ name: string; lead_days: number; note: string }>

export type MaterialTable = Kept &
  Readonly<{
    code: string
    name: string
    kind: 'bead' | 'thread' | 'finding' | 'packaging'
    unit: 'mg' | 'mm' | 'piece'
    form_id: string | null
    colour_hex: string | null
    finish: string | null
    lots_matter: Flag
    low_at: number | null
    tare_mg: number | null
    drawer: string
    note: string
    declaration: string
  }>

export type LotTable = Kept &
  Readonly<{
    material_id: string
    dye_lot: string
    supplier_id: string | null
    bought_on: string | null
    cost_minor: number | null
    cost_quantity: number | null
    /** Whether it is known how much of it there is. */
    weighed: Flag
    note: string
  }>

export type LotBalanceTable = Readonly<{ lot_id: string; on_hand: number; value_minor: number }>

export type OfferTable = Kept &
  Readonly<{
    material_id: string
    supplier_id: string
    pack_quantity: number
    price_minor: number
  }>

export type WeighingTable = Kept &
  Readonly<{
    material_id: string
    at_ms: number
    beads: number
    gross_mg: number
    tare_mg: number
    scale_resolution_mg: number
  }>

export type StockMovementTable = LedgerLine &
  Readonly<{
    lot_id: string
    quantity: number
    value_minor: number
    kind: 'opening' | 'received' | 'made' | 'counted' | 'weighed' | 'returned' | 'waste'
    make_id: string | null
    note: string
  }>
