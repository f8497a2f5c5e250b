import type { Selectable } from 'kysely'
import type {
  ColourwayMaterialTable,
  ColourwayTable,
  DesignTable,
  DesignVersionTable,
  DraftStrokeTable,
  DraftTable,
  SetPriceTable,
  VersionReadingTable,
} from './tables/design-tables.ts'
import type { ActionTable, ChangeTable } from './tables/history-tables.ts'
import type { BenchHoldTable, BenchWorkTable, MakeTable } from './tables/make-tables.ts'
import type {
  LotBalanceTable,
  LotTable,
  MaterialTable,
  OfferTable,
  StockMovementTable,
  SupplierTable,
  WeighingTable,
} from './tables/material-tables.ts'
import type { OrderLineTable, SalesOrderTable } from './tables/order-tables.ts'
import type { OwnFormTable, OwnThreadTable } from './tables/own-tables.ts'
import type { PieceMovementTable, PieceTable, SaleTable } from './tables/piece-tables.ts'
import type { ChannelTable, PlaceTable, WorkshopTable } from './tables/workshop-tables.ts'

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

/** Every table of the store by its name: one place to see it whole. */
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
