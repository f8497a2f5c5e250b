import type { LineCover as CoreLineCover } from '../../../shared-core/stock/cover.ts'
import { cheapestPurchase, type Purchase } from '../../../shared-core/stock/purchase.ts'
import { addDays, calendarDate } from '../../../shared-core/units/calendar-date.ts'
import type { BillBook, UnitBill } from '../bills.ts'
import { coverPromises } from '../cover-promises.ts'
import { type Market, readMarket } from '../market.ts'
import { listOpenLines, type OpenLine } from '../promises.ts'
import { refuse } from '../refused.ts'
import { getColourwayOf, getLatestVersion } from '../store/design-rows.ts'
import { getRow } from '../store/find-row.ts'
import { orderCode } from '../store/order-rows.ts'
import type { View } from '../store/view.ts'
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
  const desk = await openDesk(reading, lines)
  return desk.coverOf(own, today)
}

export const coverAllOrders: QueryHandler<'orders.coverAll'> = async (reading, { today }) => {
  const lines = await listOpenLines(reading)
  const desk = await openDesk(reading, lines)
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
async function openDesk(view: View, lines: readonly OpenLine[]): Promise<Desk> {
  const { cover, bills } = await coverPromises(view, lines)
  const market = await readMarket(view)
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

async function designNames({ trx }: View): Promise<ReadonlyMap<string, string>> {
  const rows = await trx.selectFrom('design').select(['id', 'name']).execute()
  return new Map(rows.map((row) => [row.id, row.name]))
}

type Words = Readonly<{ bills: BillBook; market: Market; names: ReadonlyMap<string, string> }>

function wordLine(line: OpenLine, cover: CoreLineCover, words: Words): LineCover {
  const { bills, market, names } = words
  const facts = bills.factsOf(line.versionId)
  const bill = bills.billOf(line)
  const limits: LineCover['limits'] = []
  const shortages: Shortage[] = []
  for (const key of cover.unassigned) wordGap(bill, key, cover.ordered, { limits, shortages })
  // Written out field by field: a workshop with thousands of promises words tens of thousands of these.
  for (const { materialId, perUnit, onHand, heldByOthers, units, short } of cover.limits) {
    const key = bill.byMaterial.get(materialId)?.key ?? ''
    const material = bills.materials.get(materialId)
    const name = material?.name ?? ''
    const unit = material?.unit ?? 'piece'
    limits.push({ key, materialId, name, unit, perUnit, onHand, heldByOthers, enoughFor: units })
    const purchase = short > 0 ? cheapestPurchase(short, market.offersOf(materialId)) : undefined
    const costMinor = purchase?.cost.amountMinor ?? null
    shortages.push({
      materialId,
      key,
      name,
      unit,
      short,
      packs: packsOf(purchase, market),
      costMinor,
    })
  }
  return {
    lineId: line.lineId,
    designName: names.get(facts.designId) ?? '',
    unitName: facts.unitName,
    units: cover.ordered,
    coveredUnits: cover.units,
    limits,
    shortages,
    proof: cover.proof,
  }
}

/** A key that no material fills yet: nothing can be made until one does. */
function wordGap(
  bill: UnitBill,
  key: string,
  units: number,
  into: Pick<LineCover, 'limits' | 'shortages'>,
): void {
  const entry = bill.lines.find((one) => one.key === key)
  if (entry === undefined) return
  const { name, unit, quantity } = entry
  const place = { key, name, unit, materialId: null }
  into.limits.push({ ...place, perUnit: quantity, onHand: 0, heldByOthers: 0, enoughFor: 0 })
  into.shortages.push({ ...place, short: quantity * units, packs: null, costMinor: null })
}

function packsOf(purchase: Purchase | undefined, market: Market): Shortage['packs'] {
  const offer = purchase && market.offer(purchase.offerId)
  if (purchase === undefined || offer === undefined) return null
  const supplier = market.supplier(offer.supplierId)
  return [
    {
      supplier: supplier?.name ?? '',
      packQuantity: offer.packQuantity,
      packs: purchase.packs,
      costMinor: purchase.cost.amountMinor,
      leadDays: supplier?.leadDays ?? 0,
    },
  ]
}

/** The order as a whole: what its lines lack together, bought together. */
function sumUp(lines: LineCover[], market: Market, today: string): OrderCover {
  const { short, isKnown } = shortOf(lines)
  let costMinor = 0
  let days = 0
  let canBuy = isKnown
  for (const [materialId, quantity] of short) {
    const purchase = cheapestPurchase(quantity, market.offersOf(materialId))
    canBuy &&= purchase !== undefined
    costMinor += purchase?.cost.amountMinor ?? 0
    days = Math.max(days, market.fewestDays(materialId))
  }
  return {
    lines,
    covered: lines.every((line) => line.coveredUnits >= line.units),
    costMinor: canBuy ? costMinor : null,
    hereOn: canBuy && short.size > 0 ? addDays(calendarDate(today), days) : null,
  }
}

/** What several lines lack of each material; not known where something has no material yet. */
function shortOf(lines: readonly LineCover[]) {
  const short = new Map<string, number>()
  let isKnown = true
  for (const { shortages } of lines) {
    for (const { materialId, short: quantity } of shortages) {
      if (materialId === null) isKnown = false
      else short.set(materialId, (short.get(materialId) ?? 0) + quantity)
    }
  }
  return { short, isKnown }
}
