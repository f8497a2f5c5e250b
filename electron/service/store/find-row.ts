import type { Transaction } from 'kysely'
import { refuse } from '../refused.ts'
import { anyTable } from './act.ts'
import type { Database, KeptName, Row } from './database.ts'

const NAMES: Readonly<Record<KeptName, readonly [what: string, where: string]>> = {
  workshop: ['workshop', 'settings'],
  channel: ['channel', 'settings'],
  place: ['place', 'settings'],
  supplier: ['supplier', 'settings'],
  material: ['material', 'stock'],
  lot: ['lot', 'stock'],
  offer: ['supplier’s pack', 'stock'],
  weighing: ['weighing', 'stock'],
  design: ['design', 'designs'],
  design_version: ['version', 'designs'],
  colourway: ['colourway', 'designs'],
  colourway_material: ['assignment', 'designs'],
  set_price: ['price', 'prices'],
  sales_order: ['order', 'orders'],
  order_line: ['order line', 'orders'],
  make: ['make', 'bench'],
  bench_work: ['bench work', 'bench'],
  bench_hold: ['hold', 'bench'],
  own_form: ['bead form of yours', 'beads and threads'],
  own_thread: ['thread of yours', 'beads and threads'],
  piece: ['piece', 'shelf'],
}

/** The row with this id that counts; refused, naming the field that pointed to it, when there is none. */
export async function getRow<T extends KeptName>(
  trx: Transaction<Database>,
  table: T,
  id: string,
  field = 'id',
): Promise<Row<T>> {
  const row = await anyTable(trx).find(table, id)
  if (row !== undefined && row['removed_by'] === null) return row as unknown as Row<T>
  const [what, where] = NAMES[table]
  return refuse(
    'not-found',
    `There is no ${what} ${id}.`,
    `Choose one from the list in ${where}; it may have been taken back by an undo.`,
    field,
  )
}
