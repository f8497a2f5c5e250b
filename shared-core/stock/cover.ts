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

/** A material that does not allow all of a line's units; quantities in the material's unit. */
export type Limit = Readonly<{
  materialId: string
  perUnit: number
  /** Units this material alone allows, beside what earlier promises and reservations hold. */
  units: number
  upperBound: number
  proof: Proof
  onHand: number
  /** Of what is on hand, held by earlier promises, other lines' reservations and other purposes. */
  heldByOthers: number
  /** What is missing to finish all units. */
  short: number
  /** The cheapest single offer that fills `short`; absent when nobody offers it. */
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
  /** Materials that do not allow all units, most binding first. */
  limits: readonly Limit[]
}>

/** What is missing of a material over all lines, in its unit, and the cheapest single offer for it. */
export type Shortage = Readonly<{ materialId: string; short: number; purchase?: Purchase }>

/** What a line holds of one material, lot by lot. */
export type MaterialDraws = Readonly<{ materialId: string; draws: readonly LotDraw[] }>

/** Lines in order of promise, and the shortages of all of them together, in order of first need. */
export type Cover = Readonly<{
  lines: readonly LineCover[]
  shortages: readonly Shortage[]
  /** The lots of what a line holds, by material in order of its needs; worked out when asked, as few lines are. */
  drawsOf(lineId: string): readonly MaterialDraws[]
  /** What all lines together hold of each lot that any of them may draw from, in its material's unit. */
  heldByLot(): ReadonlyMap<string, number>
}>

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
  const lines = inOrderOfPromise(request.lines)
  const stocks = openStocks(request, lines)
  const offers = Map.groupBy(request.offers ?? [], (offer) => offer.materialId)
  const book = { hold: request.hold ?? 'promise', offers }
  const covers = lines.map((line) => holdLine(line, stocks.of(line.needs), book))
  let placeOf: ReadonlyMap<string, number> | undefined
  let shortages: readonly Shortage[] | undefined
  return {
    lines: covers,
    get shortages() {
      shortages ??= shortagesOf(covers, offers)
      return shortages
    },
    drawsOf(lineId) {
      placeOf ??= new Map(lines.map((line, place) => [line.lineId, place]))
      const at = placeOf.get(lineId) ?? -1
      return (lines[at]?.needs ?? []).map(({ materialId }, i) => {
        const draws = stocks.of(lines[at]?.needs ?? [])[i]?.stock.draws()
        return { materialId, draws: draws?.get(lineId) ?? [] }
      })
    },
    heldByLot: () =>
      new Map(
        [...stocks.all()].flatMap(({ stock, lots }) => {
          const held = stock.held()
          return lots.map(({ lotId }, at) => [lotId, held[at] ?? 0] as const)
        }),
      ),
  }
}

/** By day first: thousands of promises fall on few days, and days sort as texts. */
function inOrderOfPromise(lines: readonly CoverLine[]): readonly CoverLine[] {
  const byDay = [...Map.groupBy(lines, (line) => line.dueOn).values()]
  for (const sameDay of byDay) sameDay.sort((a, b) => a.entry - b.entry)
  return byDay.sort(([a], [b]) => (a && b ? byPromise(a, b) : 0)).flat()
}

/** Order of promise: due date, then entry. */
export function byPromise(a: CoverLine, b: CoverLine): number {
  return a.dueOn < b.dueOn ? -1 : a.dueOn > b.dueOn ? 1 : a.entry - b.entry
}

type OpenStock = Readonly<{
  stock: MaterialStock
  lots: readonly Lot[]
  onHand: number
  lotsMatter: boolean
}>
type Offers = ReadonlyMap<string, readonly PackOffer[]>
/** The opened stock of each need of a list, in the list's order. */
type Stocks = Readonly<{
  of: (needs: readonly MaterialNeed[]) => readonly OpenStock[]
  all: () => Iterable<OpenStock>
}>

function openStocks(request: CoverRequest, lines: readonly CoverLine[]): Stocks {
  const lotsOf = lotsByMaterial(request.lots)
  const reservedOf = Map.groupBy(request.reservations ?? [], ({ materialId }) => materialId)
  const byId = reservedOf.size === 0 ? noLines : new Map(lines.map((line) => [line.lineId, line]))
  const stocks = new Map<string, OpenStock>()
  const open = (needs: readonly MaterialNeed[], index: number): OpenStock => {
    const { materialId, lotsMatter } = checkNeed(needs, index)
    const opened = stocks.get(materialId)
    const isAlike = opened === undefined || opened.lotsMatter === lotsMatter
    assert(isAlike, `${materialId}: its lots matter in all needs or in none`)
    if (opened) return opened
    const lots = lotsOf.get(materialId) ?? []
    const reservations = reservedOf.get(materialId) ?? []
    const reserving = reservingDemands(materialId, reservations, byId)
    const { nodeBudget } = request
    const stock = openStock({ lotsMatter, lots, reservations, reserving, nodeBudget })
    const onHand = lots.reduce((sum, lot) => sum + lot.onHand, 0)
    const fresh = { stock, lots, onHand, lotsMatter }
    stocks.set(materialId, fresh)
    return fresh
  }
  // Lines of one design share one list of needs, so each list is opened once.
  const known = new Map<readonly MaterialNeed[], readonly OpenStock[]>()
  for (const { needs } of lines) {
    if (!known.has(needs))
      known.set(
        needs,
        needs.map((_, index) => open(needs, index)),
      )
  }
  return { of: (needs) => known.get(needs) ?? [], all: () => stocks.values() }
}

const noLines: ReadonlyMap<string, CoverLine> = new Map()

function checkNeed(needs: readonly MaterialNeed[], index: number): MaterialNeed {
  const need = needs[index] as MaterialNeed
  const { materialId, quantity } = need
  assert(Number.isSafeInteger(quantity) && quantity > 0, `${materialId}: a whole need above 0`)
  const first = needs.findIndex((other) => other.materialId === materialId)
  assert(first === index, `${materialId}: one need for a material in a list of needs, not two`)
  return need
}

/** Demands on a material of the lines it is reserved for, in order of promise. */
function reservingDemands(
  materialId: string,
  reservations: readonly Reservation[],
  byId: ReadonlyMap<string, CoverLine>,
): readonly Demand[] {
  const ids = new Set(reservations.map(({ lineId }) => lineId))
  const lines = [...ids].flatMap((lineId) => byId.get(lineId ?? '') ?? [])
  return lines.sort(byPromise).flatMap((line) => {
    const need = line.needs.find((entry) => entry.materialId === materialId)
    const { lineId, units } = line
    return need ? [{ lineId, units, perUnit: need.quantity }] : []
  })
}

type Book = Readonly<{ hold: 'promise' | 'makeable'; offers: Offers }>

/** Asks each need's stock what it allows, then holds it. The innermost loop: it allocates little. */
function holdLine(line: CoverLine, stocks: readonly OpenStock[], book: Book): LineCover {
  const { lineId, units: ordered, needs, unassigned = noKeys } = line
  assert(Number.isSafeInteger(ordered) && ordered >= 0, `${lineId}: whole units`)
  let units = unassigned.length > 0 ? 0 : ordered
  let upperBound = units
  let limits: Limit[] | undefined
  for (let at = 0; at < needs.length; at++) {
    const need = needs[at] as MaterialNeed
    const open = stocks[at] as OpenStock
    const answer = open.stock.ask(line, need.quantity)
    if (answer.units < units) units = answer.units
    if (answer.upperBound < upperBound) upperBound = answer.upperBound
    if (answer.units >= ordered) continue
    limits ??= []
    insertLimit(limits, limitOf(need, open, answer, book.offers))
  }
  const held = book.hold === 'promise' ? 'all' : units
  for (let at = 0; at < needs.length; at++) {
    ;(stocks[at] as OpenStock).stock.hold(line, (needs[at] as MaterialNeed).quantity, held)
  }
  const proof = units === upperBound ? 'exact' : 'bounded'
  return { lineId, ordered, units, upperBound, proof, unassigned, limits: limits ?? noLimits }
}

/** Keeps the most binding first, and the order of needs among equals. */
function insertLimit(limits: Limit[], limit: Limit): void {
  let at = limits.length
  limits.push(limit)
  for (; at > 0 && (limits[at - 1] as Limit).units > limit.units; at--) {
    limits[at] = limits[at - 1] as Limit
  }
  limits[at] = limit
}

const noKeys: readonly string[] = []
const noLimits: readonly Limit[] = []

function limitOf(need: MaterialNeed, open: OpenStock, answer: Answer, offers: Offers): Limit {
  const { units, upperBound, proof, short } = answer
  const { materialId, quantity: perUnit } = need
  const { onHand } = open
  const heldByOthers = Math.max(0, onHand - answer.open)
  const purchase = purchaseFor(short, offers.get(materialId))
  return purchase
    ? { materialId, perUnit, units, upperBound, proof, onHand, heldByOthers, short, purchase }
    : { materialId, perUnit, units, upperBound, proof, onHand, heldByOthers, short }
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
