// Row types of every table, one place to see the whole store; a data table, so longer than other files.
import type { Generated, Selectable } from 'kysely'
import type { BeadFamily } from '../../../shared-core/beads/bead-form.ts'
import type { ThreadConstruction } from '../../../shared-core/beads/thread.ts'
import type { Basis } from '../../../shared-core/units/spread.ts'

/** 0 for no, 1 for yes: the store has no truth values of its own. */
export type Flag = 0 | 1

/** A row that an act may add, change and take away; rows with `removed_by` do not count. */
type Kept = Readonly<{ id: string; removed_by: string | null }>

/** A line of a ledger. A line that takes back another names it, and the first of the chain. */
type LedgerLine = Readonly<{
  id: Generated<number>
  at_ms: number
  action_id: string
  head_id: number | null
  reverses_id: number | null
}>

export type ActionTable = Readonly<{
  id: string
  seq: number
  at_ms: number
  call: string
  label: string
  /** 1 for what cannot be undone: the sample's own past. */
  fixed: Flag
  state: 'done' | 'undone'
}>

export type ChangeTable = Readonly<{
  action_id: string
  seq: number
  kind: 'insert' | 'update' | 'append'
  table_name: string
  row_id: string
  before_json: string | null
  after_json: string | null
}>

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

export type DesignTable = Kept & Readonly<{ name: string; tags_json: string; archived: Flag }>

export type DesignVersionTable = Kept &
  Readonly<{
    design_id: string
    version: number
    body_json: string
    note: string
    saved_at_ms: number
  }>

export type VersionReadingTable = Readonly<{
  version_id: string
  edition: number
  reading_json: string
}>

/** What lies on the drawing table of a design: the body after `position` of `count` strokes. */
export type DraftTable = Readonly<{
  design_id: string
  body_json: string
  position: number
  count: number
  /** The version the drawing was last the same as, and after which stroke; null when that stroke is gone. */
  saved_version_id: string
  saved_position: number | null
}>

export type DraftStrokeTable = Readonly<{
  design_id: string
  seq: number
  label: string
  redo_json: string
  undo_json: string
}>

export type ColourwayTable = Kept & Readonly<{ design_id: string; position: number; name: string }>

export type ColourwayMaterialTable = Kept &
  Readonly<{ colourway_id: string; key: string; material_id: string }>

export type SetPriceTable = Kept &
  Readonly<{
    design_id: string
    colourway_id: string
    channel_id: string
    price_minor: number | null
  }>

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

export type MakeTable = Kept &
  Readonly<{
    version_id: string
    colourway_id: string
    order_line_id: string | null
    units: number
    made_on: string
    bench_s: number | null
    note: string
    materials_minor: number
    labour_minor: number
    overhead_minor: number
    cost_minor: number
    /** 1 where its bench time teaches nothing about the workshop's pace. */
    left_out: Flag
  }>

export type BenchWorkTable = Kept &
  Readonly<{
    version_id: string
    colourway_id: string
    order_line_id: string | null
    units: number
    begun_on: string
    /** Gross mg of tubes before the work, by material. */
    before_json: string
    /** From here to `kept_at_ms`: follows the hand, outside the history. */
    copy_at: number
    part_at: number
    step_at: number
    units_done: number
    worked_s: number
    resting: Flag
    kept_at_ms: number
    state: 'open' | 'done' | 'given-up'
    make_id: string | null
    log_json: string | null
    note: string
  }>

export type BenchHoldTable = Kept &
  Readonly<{ work_id: string; material_id: string; lot_id: string; quantity: number }>

/** A figure with its range and what it rests on, as four columns. */
type SpreadColumns<Name extends string, Unit extends string = ''> = Readonly<
  Record<`${Name}${Unit}` | `${Name}_low${Unit}` | `${Name}_high${Unit}`, number> &
    Record<`${Name}_basis`, Basis>
>

export type OwnFormTable = Kept &
  Readonly<{ form_id: string; name: string; family: BeadFamily; size_label: string }> &
  SpreadColumns<'diameter', '_mm'> &
  SpreadColumns<'length', '_mm'> &
  SpreadColumns<'hole', '_mm'> &
  SpreadColumns<'beads_per_gram'> &
  SpreadColumns<'cull_rate'>

export type OwnThreadTable = Kept &
  Readonly<{
    thread_id: string
    name: string
    construction: ThreadConstruction
    tex: number | null
  }> &
  SpreadColumns<'diameter', '_mm'>

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

export type StockMovementTable = LedgerLine &
  Readonly<{
    lot_id: string
    quantity: number
    value_minor: number
    kind: 'opening' | 'received' | 'made' | 'counted' | 'weighed' | 'returned' | 'waste'
    make_id: string | null
    note: string
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

/** Tables whose rows an act adds, changes and takes away. */
export type KeptTables = Readonly<{
  workshop: WorkshopTable
  channel: ChannelTable
  place: PlaceTable
  supplier: SupplierTable
  material: MaterialTable
  lot: LotTable
  offer: OfferTable
  weighing: WeighingTable
  design: DesignTable
  design_version: DesignVersionTable
  colourway: ColourwayTable
  colourway_material: ColourwayMaterialTable
  set_price: SetPriceTable
  sales_order: SalesOrderTable
  order_line: OrderLineTable
  make: MakeTable
  bench_work: BenchWorkTable
  bench_hold: BenchHoldTable
  own_form: OwnFormTable
  own_thread: OwnThreadTable
  piece: PieceTable
}>

/** Tables whose lines are only ever added. */
export type LedgerTables = Readonly<{
  stock_movement: StockMovementTable
  piece_movement: PieceMovementTable
  sale: SaleTable
}>

export type KeptName = keyof KeptTables
export type LedgerName = keyof LedgerTables

export type Database = KeptTables &
  LedgerTables &
  Readonly<{
    action: ActionTable
    change: ChangeTable
    lot_balance: LotBalanceTable
    version_reading: VersionReadingTable
    draft: DraftTable
    draft_stroke: DraftStrokeTable
  }>

/** A row as it is read. */
export type Row<T extends keyof Database> = Selectable<Database[T]>
