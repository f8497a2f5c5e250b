import type { Row } from './database.ts'
import type { View } from './view.ts'

/** Finished work's log, as it is kept: what was planned and what was found. */
export type BenchLog = Readonly<{
  beads: Compared
  massMg: Compared
  threadMm: Compared
  seconds: Compared
  /** Thread used beside what the route reckons by the tables, mm; null where the ends were not measured. */
  thread: Readonly<{ usedMm: number; reckonedMm: number }> | null
  /** Beads handled and put aside, by form, of slots that were counted. */
  culls: readonly Readonly<{ formId: string; handled: number; culled: number }>[]
}>

type Compared = Readonly<{ planned: number; actual: number | null }>

/** Work with what it is for, and what became of it. */
export type BenchRow = Row<'bench_work'> &
  Readonly<{
    design_id: string
    design_name: string
    version: number
    colourway_name: string
    order_serial: number | null
    order_customer: string | null
    order_due_on: string | null
    made_on: string | null
    made_units: number | null
    left_out: number | null
  }>

/** Bench work that counts: in some states, or one. Latest kept first. */
export function listBenchRows(
  { trx }: Pick<View, 'trx'>,
  which: Readonly<{ states?: readonly Row<'bench_work'>['state'][]; id?: string }>,
): Promise<BenchRow[]> {
  let query = trx
    .selectFrom('bench_work')
    .innerJoin('design_version', 'design_version.id', 'bench_work.version_id')
    .innerJoin('design', 'design.id', 'design_version.design_id')
    .innerJoin('colourway', 'colourway.id', 'bench_work.colourway_id')
    .leftJoin('order_line', 'order_line.id', 'bench_work.order_line_id')
    .leftJoin('sales_order', 'sales_order.id', 'order_line.order_id')
    .leftJoin('make', 'make.id', 'bench_work.make_id')
    .selectAll('bench_work')
    .select([
      'design.id as design_id',
      'design.name as design_name',
      'design_version.version',
      'colourway.name as colourway_name',
      'sales_order.serial as order_serial',
      'sales_order.customer as order_customer',
      'sales_order.due_on as order_due_on',
      'make.made_on',
      'make.units as made_units',
      'make.left_out',
    ])
    .where('bench_work.removed_by', 'is', null)
  if (which.states !== undefined) query = query.where('bench_work.state', 'in', which.states)
  if (which.id !== undefined) query = query.where('bench_work.id', '=', which.id)
  return query.orderBy('bench_work.kept_at_ms', 'desc').orderBy('bench_work.id').execute()
}

/** What work under way holds of the stock. For an order's line only while that order is open. */
export type Hold = Readonly<{
  workId: string
  materialId: string
  lotId: string
  quantity: number
  /** The line of an open order that the work is for. */
  lineId: string | null
}>

/** Everything that work under way holds. */
export async function listHolds({ trx }: Pick<View, 'trx'>): Promise<readonly Hold[]> {
  const rows = await trx
    .selectFrom('bench_hold')
    .innerJoin('bench_work', 'bench_work.id', 'bench_hold.work_id')
    .leftJoin('order_line', 'order_line.id', 'bench_work.order_line_id')
    .leftJoin('sales_order', 'sales_order.id', 'order_line.order_id')
    .select([
      'bench_hold.work_id',
      'bench_hold.material_id',
      'bench_hold.lot_id',
      'bench_hold.quantity',
      'order_line.id as line_id',
      'order_line.removed_by as line_removed',
      'sales_order.state as order_state',
    ])
    .where('bench_work.state', '=', 'open')
    .where('bench_work.removed_by', 'is', null)
    .where('bench_hold.removed_by', 'is', null)
    .orderBy('bench_hold.id')
    .execute()
  return rows.map((row) => ({
    workId: row.work_id,
    materialId: row.material_id,
    lotId: row.lot_id,
    quantity: row.quantity,
    lineId: row.order_state === 'open' && row.line_removed === null ? row.line_id : null,
  }))
}

/** Units under way for each order line that has any. */
export async function underWayByLine({
  trx,
}: Pick<View, 'trx'>): Promise<ReadonlyMap<string, number>> {
  const rows = await trx
    .selectFrom('bench_work')
    .select(({ fn }) => ['order_line_id', fn.sum<number>('units').as('units')])
    .where('state', '=', 'open')
    .where('removed_by', 'is', null)
    .where('order_line_id', 'is not', null)
    .groupBy('order_line_id')
    .execute()
  return new Map(rows.map((row) => [row.order_line_id ?? '', Number(row.units)]))
}
