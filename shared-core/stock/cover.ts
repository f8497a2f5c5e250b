import { assert } from '../assert.ts'
import type { CalendarDate } from '../units/calendar-date.ts'
import type { Answer, Demand, LotDraw, MaterialStock } from './claim.ts'
import { type Lot, lotsByMaterial } from './lot.ts'
import type { MaterialNeed } from './material-need.ts'
import { openStock } from './open-stock.ts'
import type { Proof } from './place-most.ts'
import { cheapestPurchase, type PackOffer, type Purchase } from './purchase.ts'
import type { Reservation } from './reservation.ts'

/** A promise to cover: `units` still to make of what `needs` says, due on a day; `entry` numbers the lines as entered. */
export type CoverLine = Readonly<{
  lineId: string
  dueOn: CalendarDate
  entry: number
  units: number
  needs: readonly MaterialNeed[]
  /** Keys of the bill that have no material yet: nothing can be made until they have. */
  unassigned?: readonly string[]
}>

/** What is covered by what. `hold` and `nodeBudget` as `coverOrders` says. */
export type CoverRequest = Readonly<{
  lines: readonly CoverLine[]
  lots: readonly Lot[]
  reservations?: readonly Reservation[]
  offers?: readonly PackOffer[]
  hold?: 'promise' | 'makeable'
  nodeBudget?: number
}>

/** One material's part in a line's cover, quantities in the material's unit. */
export type MaterialCover = Readonly<{
  materialId: string
  perUnit: number
  /** Units this material alone allows, beside what earlier promises and reservations hold. */
  units: number
  upperBound: number
  proof: Proof
  onHand: number
  /** Of what is on hand, held by earlier promises, other lines' reservations and other purposes. */
  heldByOthers: number
  /** Lots of what this line holds. */
  draws: readonly LotDraw[]
  /** What is missing to finish all units. */
  short: number
  /** The cheapest single offer that fills `short`; absent when nothing is short or nobody offers it. */
  purchase?: Purchase
}>

/** A line's cover. `units` can be made now; no arrangement makes more than `upperBound`. */
export type LineCover = Readonly<{
  lineId: string
  ordered: number
  units: number
  upperBound: number
  proof: Proof
  unassigned: readonly string[]
  materials: readonly MaterialCover[]
  /** Materials that do not allow all units, most binding first. */
  limits: readonly MaterialCover[]
}>

/** What is missing of a material over all lines, in its unit, and the cheapest single offer for it. */
export type Shortage = Readonly<{ materialId: string; short: number; purchase?: Purchase }>

/** Lines in order of promise, and the shortages of all of them together, in order of first need. */
export type Cover = Readonly<{ lines: readonly LineCover[]; shortages: readonly Shortage[] }>

/**
 * What stock does for promises, in order of promise (due date, then entry).
 *
 * Each line gets what stock allows beside the lines before it. Materials do not depend on each other
 * once units are given, so each is asked alone and the least of them is what can be made. Where lots
 * matter no unit mixes lots: the units of all lines are packed into the lots (`placeMost`), exactly
 * unless the search is cut off, and then the line says `bounded` and by how much at most it errs;
 * later lines stand beside what earlier ones were given. Elsewhere lots are pooled, oldest first.
 *
 * `hold: 'promise'` (the default): an earlier line holds of each material all it can use for its
 * whole order, even while another material keeps it waiting; what is short is then what must be
 * bought to keep every promise. `hold: 'makeable'`: it holds only what the units it can make now take,
 * so that the units made now are the most in order of promise; a line that waits gives its
 * share away, so shortages there are not a list to buy from.
 *
 * Short: where lots matter, the units a material does not allow times its need, because ends of lots
 * too small for a unit are of no use and what is bought must come as one lot; elsewhere the plain
 * difference.
 *
 * @param request lines with whole units of 0 or more and needs above 0; a material is pooled or kept
 *   apart by lots in the same way in all needs
 * @example lots of 4 g, 4 g and 4 g, a need of 5 g where lots matter -> 0 units, short 5 g for each ordered
 */
export function coverOrders(request: CoverRequest): Cover {
  const lines = [...request.lines].sort(byPromise)
  const stocks = openStocks(request, lines)
  const held = lines.map((line) => holdLine(line, stocks, request.hold ?? 'promise'))
  const draws = new Map([...stocks.values()].map(({ stock }) => [stock, stock.draws()]))
  const offers = Map.groupBy(request.offers ?? [], (offer) => offer.materialId)
  const covers = lines.map((line, i) =>
    lineCover(
      line,
      (held[i] ?? []).map((holding) => materialCover(holding, draws, offers)),
    ),
  )
  return { lines: covers, shortages: shortagesOf(covers, offers) }
}

/** Order of promise: due date, then entry. */
export function byPromise(a: CoverLine, b: CoverLine): number {
  return a.dueOn < b.dueOn ? -1 : a.dueOn > b.dueOn ? 1 : a.entry - b.entry
}

type OpenStock = Readonly<{ stock: MaterialStock; onHand: number; lotsMatter: boolean }>
type Stocks = ReadonlyMap<string, OpenStock>
type Offers = ReadonlyMap<string, readonly PackOffer[]>

function openStocks(request: CoverRequest, lines: readonly CoverLine[]): Stocks {
  const lotsOf = lotsByMaterial(request.lots)
  const reservedOf = Map.groupBy(request.reservations ?? [], ({ materialId }) => materialId)
  const stocks = new Map<string, OpenStock>()
  for (const { needs } of lines) {
    for (const need of needs) {
      const { materialId, lotsMatter } = need
      if (stocks.has(materialId)) continue
      const lots = lotsOf.get(materialId) ?? []
      const reservations = reservedOf.get(materialId) ?? []
      const reserving = reservingDemands(materialId, reservations, lines)
      const { nodeBudget } = request
      const stock = openStock({ lotsMatter, lots, reservations, reserving, nodeBudget })
      const onHand = lots.reduce((sum, lot) => sum + lot.onHand, 0)
      stocks.set(materialId, { stock, onHand, lotsMatter })
    }
  }
  return stocks
}

/** Demands on a material of the lines it is reserved for, in order of promise. */
function reservingDemands(
  materialId: string,
  reservations: readonly Reservation[],
  lines: readonly CoverLine[],
): readonly Demand[] {
  const ids = new Set(reservations.flatMap(({ lineId }) => lineId ?? []))
  if (ids.size === 0) return []
  return lines
    .filter(({ lineId }) => ids.has(lineId))
    .flatMap((line) =>
      line.needs
        .filter((need) => need.materialId === materialId)
        .map((need) => demandOf(line, need)),
    )
}

function demandOf({ lineId, units }: CoverLine, { quantity }: MaterialNeed): Demand {
  return { lineId, units, perUnit: quantity }
}

/** What a material allows a line, and the place of what the line holds of it. */
type Holding = Readonly<{ need: MaterialNeed; open: OpenStock; answer: Answer; place: number }>

function holdLine(
  line: CoverLine,
  stocks: Stocks,
  hold: 'promise' | 'makeable',
): readonly Holding[] {
  assert(Number.isSafeInteger(line.units) && line.units >= 0, `${line.lineId}: whole units`)
  const asked = line.needs.map((need, i) => {
    checkNeed(line, need, i)
    const open = stocks.get(need.materialId)
    assert(
      open?.lotsMatter === need.lotsMatter,
      `${need.materialId}: lots matter in all needs or none`,
    )
    const demand = demandOf(line, need)
    return { need, open, demand, answer: open.stock.ask(demand) }
  })
  const units = hold === 'promise' ? 'all' : makeableUnits(line, asked)
  return asked.map(({ need, open, demand, answer }) => ({
    need,
    open,
    answer,
    place: open.stock.hold(demand, units),
  }))
}

function checkNeed(line: CoverLine, { materialId, quantity }: MaterialNeed, index: number): void {
  assert(Number.isSafeInteger(quantity) && quantity > 0, `${materialId}: a whole need above 0`)
  const first = line.needs.findIndex((need) => need.materialId === materialId)
  assert(first === index, `${line.lineId}: one need for each material, not two for ${materialId}`)
}

function makeableUnits(line: CoverLine, asked: readonly Readonly<{ answer: Answer }>[]): number {
  if (line.unassigned?.length) return 0
  return asked.reduce((least, { answer }) => Math.min(least, answer.units), line.units)
}

function materialCover(
  { need, open, answer, place }: Holding,
  draws: ReadonlyMap<MaterialStock, readonly (readonly LotDraw[])[]>,
  offers: Offers,
): MaterialCover {
  const cover = {
    materialId: need.materialId,
    perUnit: need.quantity,
    units: answer.units,
    upperBound: answer.upperBound,
    proof: answer.proof,
    onHand: open.onHand,
    heldByOthers: Math.max(0, open.onHand - answer.open),
    draws: draws.get(open.stock)?.[place] ?? [],
    short: answer.short,
  }
  const purchase = purchaseFor(answer.short, offers.get(need.materialId))
  return purchase ? { ...cover, purchase } : cover
}

function lineCover(line: CoverLine, materials: readonly MaterialCover[]): LineCover {
  const { lineId, units: ordered, unassigned = [] } = line
  const most = unassigned.length > 0 ? 0 : ordered
  const units = materials.reduce((least, material) => Math.min(least, material.units), most)
  const upperBound = materials.reduce((least, m) => Math.min(least, m.upperBound), most)
  const limits = materials
    .filter((material) => material.units < ordered)
    .sort((a, b) => a.units - b.units)
  const proof = units === upperBound ? 'exact' : 'bounded'
  return { lineId, ordered, units, upperBound, proof, unassigned, materials, limits }
}

function shortagesOf(lines: readonly LineCover[], offers: Offers): readonly Shortage[] {
  const shorts = new Map<string, number>()
  for (const { limits } of lines) {
    for (const { materialId, short } of limits) {
      shorts.set(materialId, (shorts.get(materialId) ?? 0) + short)
    }
  }
  return [...shorts].map(([materialId, short]) => {
    const purchase = purchaseFor(short, offers.get(materialId))
    return purchase ? { materialId, short, purchase } : { materialId, short }
  })
}

function purchaseFor(short: number, offers: readonly PackOffer[] = []): Purchase | undefined {
  return short > 0 ? cheapestPurchase(short, offers) : undefined
}
