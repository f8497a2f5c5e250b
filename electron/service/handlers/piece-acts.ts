import { checkChannel } from '../../../shared-core/pricing/channel.ts'
import { priceAt } from '../../../shared-core/pricing/price-at.ts'
import { saleChannel } from '../../../shared-core/pricing/price-sheet.ts'
import { currencyCode } from '../../../shared-core/units/currency.ts'
import { durationS } from '../../../shared-core/units/duration.ts'
import { localDay } from '../local-day.ts'
import { Refused, refuse } from '../refused.ts'
import type { Act } from '../store/act.ts'
import { getRow } from '../store/find-row.ts'
import { getPieceRows, type PieceRow } from '../store/piece-rows.ts'
import { getWorkshop, toChannel } from '../store/workshop-rows.ts'
import type { ActHandler } from './handler.ts'

export const movePieces: ActHandler<'pieces.move'> = async (act, { pieceIds, placeId }) => {
  const place = await getRow(act.trx, 'place', placeId, 'placeId')
  const pieces = await getPieceRows(act, [...new Set(pieceIds)], (at) => `pieceIds.${at}`)
  for (const piece of pieces) {
    refuseUnlessHere(piece, 'pieceIds')
    if (piece.place_id === placeId) continue
    await act.update('piece', piece.id, { place_id: placeId })
    await act.append('piece_movement', {
      piece_id: piece.id,
      kind: 'moved',
      place_id: placeId,
      note: '',
    })
  }
  const [first] = pieces
  const what = pieces.length === 1 && first ? first.code : `${pieces.length} pieces`
  return { value: {}, label: `Moved ${what} to ${place.name}` }
}

const GONE = { sold: 'sold', given: 'given away', lost: 'lost', unmade: 'unmade' } as const

function refuseUnlessHere(piece: PieceRow, field: string): void {
  if (piece.state === 'here' || piece.state === 'reserved') return
  refuse(
    'piece-gone',
    `${piece.code} is ${GONE[piece.state]}.`,
    piece.state === 'sold'
      ? 'Record its return first, if it came back.'
      : 'Choose a piece that is on the shelf.',
    field,
  )
}

export const sellPiece: ActHandler<'pieces.sell'> = async (act, input) => {
  const piece = await getPiece(act, input.pieceId)
  refuseUnlessHere(piece, 'pieceId')
  if (input.soldOn < piece.made_on) {
    refuse(
      'sold-before-made',
      `${piece.code} was made on ${piece.made_on}, after ${input.soldOn}.`,
      `Give ${piece.made_on} or a later day.`,
      'soldOn',
    )
  }
  const settings = toChannel(await getRow(act.trx, 'channel', input.channelId, 'channelId'))
  const currency = currencyCode((await getWorkshop(act.trx)).currency)
  const channel = checkChannel(saleChannel(settings, currency))
  if (!channel.ok) throw new Refused(channel.error)
  const outcome = priceAt(
    {
      currency,
      costMinor: piece.cost_minor,
      labourMinor: Math.min(piece.labour_minor, piece.cost_minor),
      benchSeconds: durationS(piece.bench_s),
    },
    channel.value,
    input.priceMinor,
  )
  const saleId = await act.append('sale', {
    piece_id: piece.id,
    channel_id: settings.id,
    units: 1,
    sold_on: input.soldOn,
    price_minor: input.priceMinor,
    tax_minor: outcome.taxMinor,
    net_minor: outcome.netMinor,
    fees_minor: outcome.feesMinor,
    cost_minor: outcome.costMinor,
    profit_minor: outcome.profitMinor,
    returns_id: null,
    note: input.note,
  })
  await act.update('piece', piece.id, { state: 'sold', place_id: null, sale_id: saleId })
  await act.append('piece_movement', {
    piece_id: piece.id,
    kind: 'sold',
    place_id: piece.place_id,
    note: input.note,
  })
  const { taxMinor, feesMinor, costMinor, profitMinor } = outcome
  return {
    value: { taxMinor, feesMinor, costMinor, profitMinor },
    label: `Sold ${piece.code} at ${settings.name}`,
  }
}

async function getPiece(act: Act, id: string): Promise<PieceRow> {
  const [piece] = await getPieceRows(act, [id], () => 'pieceId')
  if (piece === undefined) throw new Error(`expected piece ${id}`)
  return piece
}

const END_LABEL = { returned: 'Took back', given: 'Gave away', lost: 'Lost' } as const

export const endPiece: ActHandler<'pieces.end'> = async (act, input) => {
  const piece = await getPiece(act, input.pieceId)
  const label = `${END_LABEL[input.how]} ${piece.code}`
  if (input.how === 'returned') {
    await takeBack(act, piece, input)
    return { value: {}, label }
  }
  refuseUnlessHere(piece, 'pieceId')
  await act.update('piece', piece.id, { state: input.how, place_id: null })
  await act.append('piece_movement', {
    piece_id: piece.id,
    kind: input.how,
    place_id: piece.place_id,
    note: input.note,
  })
  return { value: {}, label }
}

type TakenBack = Readonly<{ placeId: string | null; on?: string | undefined; note: string }>

async function takeBack(act: Act, piece: PieceRow, input: TakenBack): Promise<void> {
  if (piece.state !== 'sold' || piece.sale_id === null) {
    refuse(
      'not-sold',
      `${piece.code} is not sold, so it cannot come back from a sale.`,
      'Choose a piece that is sold.',
      'pieceId',
    )
  }
  if (input.placeId === null) {
    return refuse(
      'no-place',
      `It is not said where ${piece.code} is now.`,
      'Choose the place it came back to.',
      'placeId',
    )
  }
  const place = await getRow(act.trx, 'place', input.placeId, 'placeId')
  const sale = await act.trx
    .selectFrom('sale')
    .selectAll()
    .where('id', '=', piece.sale_id)
    .executeTakeFirstOrThrow()
  await act.append('sale', {
    piece_id: piece.id,
    channel_id: sale.channel_id,
    units: -1,
    sold_on: laterDay(sale.sold_on, input.on ?? localDay(act.atMs)),
    price_minor: 0 - sale.price_minor,
    tax_minor: 0 - sale.tax_minor,
    net_minor: 0 - sale.net_minor,
    fees_minor: 0 - sale.fees_minor,
    cost_minor: 0 - sale.cost_minor,
    profit_minor: 0 - sale.profit_minor,
    returns_id: sale.id,
    note: input.note,
  })
  await act.update('piece', piece.id, { state: 'here', place_id: place.id, sale_id: null })
  await act.append('piece_movement', {
    piece_id: piece.id,
    kind: 'returned',
    place_id: place.id,
    note: input.note,
  })
}

/** Nothing comes back before it was sold. */
function laterDay(a: string, b: string): string {
  return a > b ? a : b
}
