import { currencyCode } from '../../../shared-core/units/currency.ts'
import { formatMoney } from '../../../shared-core/units/format-money.ts'
import { money } from '../../../shared-core/units/money.ts'
import { readAskingPrices } from '../asking-prices.ts'
import { type BillBook, openBills } from '../bills.ts'
import type { TagsRequest } from '../documents/make-tags.ts'
import { readBody } from '../store/design-rows.ts'
import { getRow } from '../store/find-row.ts'
import { getPieceRows, type PieceRow } from '../store/piece-rows.ts'
import { workshopTables } from '../store/table-rows.ts'
import type { View } from '../store/view.ts'
import { getWorkshop, type Workshop } from '../store/workshop-rows.ts'
import { tagPicture } from '../tag-picture.ts'
import type { QueryHandler } from './handler.ts'

export const printTags: QueryHandler<'tags.print'> = async (reading, input) => {
  const workshop = await getWorkshop(reading.trx)
  const pieces = await getPieceRows(reading, input.pieceIds, (at) => `pieceIds.${at}`)
  const prices = await readPrices(reading, pieces, input.channelId)
  const bills = await openBills(
    reading,
    pieces.map((piece) => ({ versionId: piece.version_id, colourwayId: piece.colourway_id })),
  )
  const pictures = await readPictures(reading, pieces, bills)
  // Loaded with the first document: reading fonts and writing PDF would triple the time of the start.
  const { makeTags } = await import('../documents/make-tags.ts')
  const { bytes, pages } = await makeTags({
    tags: pieces.map((piece) =>
      toTag(piece, { workshop, bills, price: prices(piece), picture: pictures(piece) }),
    ),
    paper: input.paper,
    workshopName: workshop.name,
    madeAtMs: reading.atMs,
  })
  const [first] = pieces
  const name = pieces.length === 1 && first ? `tag-${first.code}` : `tags-${pieces.length}`
  return {
    fileName: `${name}.pdf`,
    mediaType: 'application/pdf',
    base64: Buffer.from(bytes).toString('base64'),
    pages,
  }
}

type Tag = TagsRequest['tags'][number]
type Parts = Readonly<{
  workshop: Workshop
  bills: BillBook
  price: number | null
  picture: Tag['picture']
}>

function toTag(piece: PieceRow, { workshop, bills, price, picture }: Parts): Tag {
  const currency = currencyCode(workshop.currency)
  return {
    name: piece.design_name,
    colourway: piece.colourway_name,
    code: piece.code,
    price:
      price === null
        ? null
        : formatMoney(money(price, currency), { decimal: workshop.decimalMark }),
    materials: materialsOf(piece, bills),
    care: workshop.tagCare,
    caution: workshop.tagCaution,
    maker: workshop.tagMaker,
    picture,
  }
}

async function readPrices(
  view: View,
  pieces: readonly PieceRow[],
  channelId: string | undefined,
): Promise<(piece: PieceRow) => number | null> {
  if (channelId === undefined) return () => null
  await getRow(view.trx, 'channel', channelId, 'channelId')
  const asking = await readAskingPrices(
    view,
    pieces.map((piece) => ({ colourwayId: piece.colourway_id, designId: piece.design_id })),
  )
  return (piece) => asking(piece.colourway_id, channelId)
}

/** `Glass beads, braided thread; ear wire, steel`: what a buyer with an allergy must know. */
function materialsOf(piece: PieceRow, bills: BillBook): string {
  const making = { versionId: piece.version_id, colourwayId: piece.colourway_id }
  const bill = bills.billOf(making).lines
  const nameOf = (materialId: string) => bills.materials.get(materialId)?.name ?? ''
  const names = (kind: 'thread' | 'finding') =>
    bill.flatMap((line) =>
      line.kind === kind && line.material ? [nameOf(line.material.materialId)] : [],
    )
  const beads = bill.some((line) => line.kind === 'bead') ? ['Glass beads'] : []
  return [...beads, ...new Set(names('thread')), ...new Set(names('finding'))].join('; ')
}

async function readPictures(
  view: View,
  pieces: readonly PieceRow[],
  bills: BillBook,
): Promise<(piece: PieceRow) => Tag['picture']> {
  const keyOf = (piece: PieceRow) => `${piece.version_id} ${piece.colourway_id}`
  const pictures = new Map<string, Tag['picture']>()
  const tables = await workshopTables(view.trx)
  for (const piece of pieces) {
    if (pictures.has(keyOf(piece))) continue
    const body = await readBody(view, piece.version_id)
    const assigned = bills.assigned(piece.colourway_id)
    const colours = Object.fromEntries(
      Object.entries(assigned).map(([key, id]) => [
        key,
        bills.materials.get(id)?.colour_hex ?? undefined,
      ]),
    )
    pictures.set(keyOf(piece), tagPicture(body, colours, tables))
  }
  return (piece) => pictures.get(keyOf(piece)) ?? null
}
