import type { z } from 'zod'
import type { piece as pieceShape } from '../../../shared-core/contract/piece-calls.ts'
import { type AskingPrices, readAskingPrices } from '../asking-prices.ts'
import type { VersionFacts } from '../store/facts.ts'
import { orderCode } from '../store/order-rows.ts'
import { getPieceRows, listPieceRows, type PieceRow } from '../store/piece-rows.ts'
import type { View } from '../store/view.ts'
import { versionFacts } from '../version-facts.ts'
import type { QueryHandler } from './handler.ts'

type Piece = z.output<typeof pieceShape>

const STATES = { here: ['here', 'reserved'], sold: ['sold'], all: undefined } as const

export const listPieces: QueryHandler<'pieces.list'> = async (reading, { state, search }) => {
  const states = STATES[state]
  const rows = await listPieceRows(reading, states === undefined ? {} : { states })
  const wanted = search?.trim().toLowerCase() ?? ''
  const chosen = rows.filter((row) =>
    [row.code, row.design_name, row.colourway_name, row.place_name ?? '', orderOf(row) ?? ''].some(
      (text) => text.toLowerCase().includes(wanted),
    ),
  )
  return { pieces: await viewPieces(reading, chosen) }
}

export const readPiece: QueryHandler<'pieces.read'> = async (reading, { id }) => {
  const [piece] = await viewPieces(reading, await getPieceRows(reading, [id], () => 'id'))
  if (piece === undefined) throw new Error(`expected piece ${id}`)
  const rows = await reading.trx
    .selectFrom('piece_movement')
    .innerJoin('action', 'action.id', 'piece_movement.action_id')
    .leftJoin('place', 'place.id', 'piece_movement.place_id')
    .selectAll('piece_movement')
    .select(['action.label', 'place.name as place_name'])
    .where('piece_id', '=', id)
    .orderBy('piece_movement.id', 'desc')
    .execute()
  return {
    piece,
    movements: rows.map((row) => ({
      id: row.id,
      atMs: row.at_ms,
      kind: row.reverses_id === null ? row.kind : ('reversed' as const),
      label: [row.label, row.place_name ?? '', row.note].filter((text) => text !== '').join(', '),
    })),
  }
}

/** Pieces as the shelf shows them. */
export async function viewPieces(view: View, rows: readonly PieceRow[]): Promise<Piece[]> {
  const facts = await versionFacts(
    view,
    rows.map((row) => row.version_id),
  )
  const asking = await readAskingPrices(
    view,
    rows
      .filter((row) => row.place_channel_id !== null)
      .map((row) => ({ colourwayId: row.colourway_id, designId: row.design_id })),
  )
  return rows.map((row) => viewPiece(row, facts, asking))
}

function viewPiece(
  row: PieceRow,
  facts: ReadonlyMap<string, VersionFacts>,
  asking: AskingPrices,
): Piece {
  const onOffer = row.state === 'here' || row.state === 'reserved'
  return {
    id: row.id,
    code: row.code,
    designId: row.design_id,
    designName: row.design_name,
    colourwayName: row.colourway_name,
    unitName: facts.get(row.version_id)?.unitName ?? '',
    madeOn: row.made_on,
    costMinor: row.cost_minor,
    state: row.state,
    placeId: row.place_id,
    placeName: row.place_name ?? '',
    orderCode: orderOf(row),
    askingMinor:
      onOffer && row.place_channel_id !== null
        ? asking(row.colourway_id, row.place_channel_id)
        : null,
    sale: saleOf(row),
  }
}

function orderOf(row: PieceRow): string | null {
  return row.order_serial === null ? null : orderCode(row.order_serial)
}

function saleOf(row: PieceRow): Piece['sale'] {
  if (row.sold_on === null) return null
  return {
    channelName: row.sale_channel_name ?? '',
    soldOn: row.sold_on,
    priceMinor: row.price_minor ?? 0,
    taxMinor: row.tax_minor ?? 0,
    feesMinor: row.fees_minor ?? 0,
    profitMinor: row.profit_minor ?? 0,
  }
}
