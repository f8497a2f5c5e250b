import { type LineCover as CoreLineCover, coverOrders } from '../../../shared-core/stock/cover.ts'
import {
  cheapestPurchase,
  type PackOffer,
  type Purchase,
} from '../../../shared-core/stock/purchase.ts'
import { addDays, calendarDate } from '../../../shared-core/units/calendar-date.ts'
import { currencyCode } from '../../../shared-core/units/currency.ts'
import { money } from '../../../shared-core/units/money.ts'
import { toCoreLot } from '../availability.ts'
import { type BillBook, openBills } from '../bills.ts'
import { listOpenLines, type OpenLine, toCoverLine } from '../promises.ts'
import { refuse } from '../refused.ts'
import type { Row } from '../store/database.ts'
import { getColourwayOf, getLatestVersion } from '../store/design-rows.ts'
import { getRow } from '../store/find-row.ts'
import { listLots } from '../store/material-rows.ts'
import { orderCode } from '../store/order-rows.ts'
import type { View } from '../store/view.ts'
import { getWorkshop, listSuppliers, type Supplier } from '../store/workshop-rows.ts'
import type { QueryHandler } from './handler.ts'
import { checkDates, type OrderInput } from './orders.ts'

export type OrderCover = Awaited<ReturnType<QueryHandler<'orders.cover'>>>
type LineCover = OrderCover['lines'][number]
type Shortage = LineCover['shortages'][number]

export const coverOrder: QueryHandler<'orders.cover'> = async (reading, { today, order }) => {
  const open = await listOpenLines(reading)
  const own =
    'draft' in order ? await draftLines(reading, order) : await ownLines(reading, order.id, open)
  const others = open.filter((line) => line.orderId !== ('id' in order ? order.id : undefined))
  const lines = [...others, ...own].toSorted(
    (a, b) => a.serial - b.serial || a.position - b.position,
  )
  const desk = await coverLines(reading, lines)
  return desk.coverOf(own, today)
}

export const coverAllOrders: QueryHandler<'orders.coverAll'> = async (reading, { today }) => {
  const lines = await listOpenLines(reading)
  const desk = await coverLines(reading, lines)
  const byOrder = Map.groupBy(lines, (line) => line.orderId)
  const inOrder = [...byOrder].toSorted(([, a], [, b]) => promised(a) - promised(b))
  return {
    orders: inOrder.map(([orderId, own]) => ({
      orderId,
      code: orderCode(own[0]?.serial ?? 0),
      cover: desk.coverOf(own, today),
    })),
  }

  function promised(own: readonly OpenLine[]): number {
    return desk.placeOf(own[0]?.lineId ?? '')
  }
}

/** Numbers of drafts stand behind every number given. */
const DRAFT_SERIAL = Number.MAX_SAFE_INTEGER

async function draftLines(
  view: View,
  { draft, id }: Readonly<{ draft: OrderInput; id?: string | undefined }>,
): Promise<OpenLine[]> {
  checkDates(draft, 'order.draft.dueOn')
  const saved = id === undefined ? undefined : await getRow(view.trx, 'sales_order', id, 'order.id')
  const before = new Map(
    (await listOpenLines(view))
      .filter((line) => line.orderId === id)
      .map((line) => [line.lineId, line]),
  )
  const lines: OpenLine[] = []
  for (const [position, line] of draft.lines.entries()) {
    const field = (name: string) => `order.draft.lines.${position}.${name}`
    const { design } = await getColourwayOf(view, line, field)
    const known = line.id === undefined ? undefined : before.get(line.id)
    const keepsVersion = known !== undefined && known.colourwayId === line.colourwayId
    lines.push({
      lineId: known?.lineId ?? `draft_${String(position).padStart(6, '0')}`,
      orderId: id ?? 'draft',
      versionId: keepsVersion ? known.versionId : (await getLatestVersion(view, design.id)).id,
      colourwayId: line.colourwayId,
      units: line.units,
      made: known?.made ?? 0,
      dueOn: draft.dueOn,
      promisedOn: draft.promisedOn,
      serial: saved?.serial ?? DRAFT_SERIAL,
      position,
    })
  }
  return lines
}

async function ownLines(
  view: View,
  id: string,
  open: readonly OpenLine[],
): Promise<readonly OpenLine[]> {
  const row = await getRow(view.trx, 'sales_order', id, 'order.id')
  if (row.state === 'open') return open.filter((line) => line.orderId === id)
  return refuse(
    'order-not-open',
    `Order ${orderCode(row.serial)} is ${row.state}, and only open orders hold stock.`,
    'Reopen it to see whether stock covers it.',
    'order.id',
  )
}

type Desk = Readonly<{
  coverOf: (own: readonly OpenLine[], today: string) => OrderCover
  /** Where a line stands in order of promise. */
  placeOf: (lineId: string) => number
}>

/** Covers lines, given in the order they were entered, and words what it finds. */
async function coverLines(view: View, lines: readonly OpenLine[]): Promise<Desk> {
  const bills = await openBills(view, lines)
  const lots = (await listLots(view.trx)).map(toCoreLot)
  const market = await readMarket(view)
  const request = lines.map((line, entry) => toCoverLine(line, bills, entry))
  const cover = coverOrders({ lines: request, lots, offers: market.offers })
  const byId = new Map(cover.lines.map((line, place) => [line.lineId, { line, place }]))
  const names = await designNames(view)
  return {
    placeOf: (lineId) => byId.get(lineId)?.place ?? lines.length,
    coverOf: (own, today) => {
      const covers = own.flatMap((line) => {
        const found = byId.get(line.lineId)
        return found ? [wordLine(line, found.line, { bills, market, names })] : []
      })
      return sumUp(covers, market, today)
    },
  }
}

type Market = Readonly<{
  offers: readonly PackOffer[]
  offersOf: (materialId: string) => readonly PackOffer[]
  rows: ReadonlyMap<string, Row<'offer'>>
  suppliers: ReadonlyMap<string, Supplier>
}>

async function readMarket({ trx }: View): Promise<Market> {
  const { currency } = await getWorkshop(trx)
  const rows = await trx
    .selectFrom('offer')
    .selectAll()
    .where('removed_by', 'is', null)
    .orderBy('id')
    .execute()
  const offers = rows.map((row) => ({
    offerId: row.id,
    supplierId: row.supplier_id,
    materialId: row.material_id,
    packQuantity: row.pack_quantity,
    price: money(row.price_minor, currencyCode(currency)),
  }))
  const byMaterial = Map.groupBy(offers, (offer) => offer.materialId)
  return {
    offers,
    offersOf: (materialId) => byMaterial.get(materialId) ?? [],
    rows: new Map(rows.map((row) => [row.id, row])),
    suppliers: new Map((await listSuppliers(trx)).map((supplier) => [supplier.id, supplier])),
  }
}

async function designNames({ trx }: View): Promise<ReadonlyMap<string, string>> {
  const rows = await trx.selectFrom('design').select(['id', 'name']).execute()
  return new Map(rows.map((row) => [row.id, row.name]))
}

type Words = Readonly<{ bills: BillBook; market: Market; names: ReadonlyMap<string, string> }>

function wordLine(line: OpenLine, cover: CoreLineCover, words: Words): LineCover {
  const { bills, names } = words
  const facts = bills.factsOf(line.versionId)
  const limits = cover.limits.map((limit) => ({
    ...named(line, limit.materialId, bills),
    materialId: limit.materialId,
    perUnit: limit.perUnit,
    onHand: limit.onHand,
    heldByOthers: limit.heldByOthers,
    enoughFor: limit.units,
  }))
  return {
    lineId: line.lineId,
    designName: names.get(facts.designId) ?? '',
    unitName: facts.unitName,
    units: cover.ordered,
    coveredUnits: cover.units,
    limits: [...missing(line, cover, bills).map(({ limit }) => limit), ...limits],
    shortages: [
      ...missing(line, cover, bills).map(({ shortage }) => shortage),
      ...cover.limits.map((limit) => ({
        ...named(line, limit.materialId, bills),
        materialId: limit.materialId,
        short: limit.short,
        ...wordPurchase(limit.purchase, words.market),
      })),
    ],
    proof: cover.proof,
  }
}

/** A material under the first key of the bill it fills. */
function named(line: OpenLine, materialId: string, bills: BillBook) {
  const material = bills.materials.get(materialId)
  const entry = bills.billOf(line).find((one) => one.material?.materialId === materialId)
  return {
    key: entry?.key ?? '',
    name: material?.name ?? '',
    unit: material?.unit ?? ('piece' as const),
  }
}

/** Keys that no material fills yet: nothing can be made until they are. */
function missing(line: OpenLine, cover: CoreLineCover, bills: BillBook) {
  return cover.unassigned.flatMap((key) => {
    const entry = bills.billOf(line).find((one) => one.key === key)
    if (entry === undefined) return []
    const place = { key, name: entry.name, unit: entry.unit, materialId: null }
    return [
      {
        limit: { ...place, perUnit: entry.quantity, onHand: 0, heldByOthers: 0, enoughFor: 0 },
        shortage: {
          ...place,
          short: entry.quantity * cover.ordered,
          packs: null,
          costMinor: null,
        },
      },
    ]
  })
}

function wordPurchase(
  purchase: Purchase | undefined,
  { rows, suppliers }: Market,
): Pick<Shortage, 'packs' | 'costMinor'> {
  const offer = purchase && rows.get(purchase.offerId)
  if (purchase === undefined || offer === undefined) return { packs: null, costMinor: null }
  const supplier = suppliers.get(offer.supplier_id)
  return {
    packs: [
      {
        supplier: supplier?.name ?? '',
        packQuantity: offer.pack_quantity,
        packs: purchase.packs,
        costMinor: purchase.cost.amountMinor,
        leadDays: supplier?.leadDays ?? 0,
      },
    ],
    costMinor: purchase.cost.amountMinor,
  }
}

/** The order as a whole: what its lines lack together, bought together. */
function sumUp(lines: LineCover[], market: Market, today: string): OrderCover {
  const shortages = lines.flatMap((line) => line.shortages)
  const short = new Map<string, number>()
  for (const { materialId, short: quantity } of shortages) {
    if (materialId !== null) short.set(materialId, (short.get(materialId) ?? 0) + quantity)
  }
  const unknown = shortages.some((shortage) => shortage.materialId === null)
  const buys = [...short].map(([materialId, quantity]) => ({
    purchase: cheapestPurchase(quantity, market.offersOf(materialId)),
    days: fewestDays(materialId, market),
  }))
  const complete = !unknown && buys.every((buy) => buy.purchase !== undefined)
  const cost = buys.reduce((sum, { purchase }) => sum + (purchase?.cost.amountMinor ?? 0), 0)
  const days = Math.max(...buys.map((buy) => buy.days))
  return {
    lines,
    covered: lines.every((line) => line.coveredUnits >= line.units),
    costMinor: complete ? cost : null,
    hereOn: complete && buys.length > 0 ? addDays(calendarDate(today), days) : null,
  }
}

function fewestDays(materialId: string, { offersOf, suppliers }: Market): number {
  return Math.min(
    ...offersOf(materialId).map((offer) => suppliers.get(offer.supplierId)?.leadDays ?? 0),
  )
}
