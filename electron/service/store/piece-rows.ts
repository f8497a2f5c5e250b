import { refuse } from '../refused.ts'
import type { Row } from './database.ts'
import type { View } from './view.ts'

/** A piece with what it is, where it is and the sale it stands in, if any. */
export type PieceRow = Row<'piece'> &
  Readonly<{
    made_on: string
    version_id: string
    colourway_id: string
    colourway_name: string
    design_id: string
    design_name: string
    place_name: string | null
    place_channel_id: string | null
    order_serial: number | null
    sale_channel_name: string | null
    sale_channel_id: string | null
    sold_on: string | null
    price_minor: number | null
    tax_minor: number | null
    net_minor: number | null
    fees_minor: number | null
    profit_minor: number | null
  }>

/** Pieces that count, newest first: all, in some states, or with these ids. */
export function listPieceRows(
  { trx }: Pick<View, 'trx'>,
  which: Readonly<{ states?: readonly Row<'piece'>['state'][]; ids?: readonly string[] }> = {},
): Promise<PieceRow[]> {
  let query = trx
    .selectFrom('piece')
    .innerJoin('make', 'make.id', 'piece.make_id')
    .innerJoin('design_version', 'design_version.id', 'make.version_id')
    .innerJoin('design', 'design.id', 'design_version.design_id')
    .innerJoin('colourway', 'colourway.id', 'make.colourway_id')
    .leftJoin('place', 'place.id', 'piece.place_id')
    .leftJoin('order_line', 'order_line.id', 'make.order_line_id')
    .leftJoin('sales_order', 'sales_order.id', 'order_line.order_id')
    .leftJoin('sale', 'sale.id', 'piece.sale_id')
    .leftJoin('channel', 'channel.id', 'sale.channel_id')
    .selectAll('piece')
    .select([
      'make.made_on',
      'make.version_id',
      'make.colourway_id',
      'colourway.name as colourway_name',
      'design.id as design_id',
      'design.name as design_name',
      'place.name as place_name',
      'place.channel_id as place_channel_id',
      'sales_order.serial as order_serial',
      'channel.name as sale_channel_name',
      'channel.id as sale_channel_id',
      'sale.sold_on',
      'sale.price_minor',
      'sale.tax_minor',
      'sale.net_minor',
      'sale.fees_minor',
      'sale.profit_minor',
    ])
    .where('piece.removed_by', 'is', null)
  if (which.states !== undefined) query = query.where('piece.state', 'in', which.states)
  if (which.ids !== undefined) query = query.where('piece.id', 'in', which.ids)
  return query
    .orderBy('make.made_on', 'desc')
    .orderBy('piece.series')
    .orderBy('piece.serial', 'desc')
    .execute()
}

/** Pieces with these ids, in this order; refused, naming the field, when one is not there. */
export async function getPieceRows(
  view: Pick<View, 'trx'>,
  ids: readonly string[],
  fieldOf: (at: number) => string,
): Promise<PieceRow[]> {
  const found = new Map((await listPieceRows(view, { ids })).map((row) => [row.id, row]))
  return ids.map(
    (id, at) =>
      found.get(id) ??
      refuse(
        'not-found',
        `There is no piece ${id}.`,
        'Choose one from the shelf; it may have been taken back by an undo.',
        fieldOf(at),
      ),
  )
}
