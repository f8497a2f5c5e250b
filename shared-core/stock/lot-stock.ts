import { boundMore } from './bound-more.ts'
import type { Answer, Asking, Demand, LotDraw, MaterialStock } from './claim.ts'
import type { Lot } from './lot.ts'
import { OpenLots } from './open-lots.ts'
import { type Packing, takeBack, total } from './packing.ts'
import { defaultNodeBudget, type Placement, type Proof, placeMost } from './place-most.ts'
import type { Reservation } from './reservation.ts'

/**
 * Stock of a material whose lots are not mixed within a unit: each unit's share comes from one lot.
 *
 * Promises are packed together, earlier ones keeping their units while their lots may still change.
 * A reservation for a line pins as many whole units of that line to its lot as it covers; what it
 * covers beyond them is free. Reservations outside the orders take their quantity from the lot.
 *
 * @param lots of one material, oldest first
 * @param nodeBudget patterns the searches of this material may try, all together
 * @param reserving the demands of lines that have reservations, in order of promise
 */
export function lotStock(
  lots: readonly Lot[],
  reservations: readonly Reservation[],
  reserving: readonly Demand[],
  nodeBudget: number = defaultNodeBudget,
): MaterialStock {
  const { pinned, capacity } = pinReserved(lots, reservations, reserving)
  return new LotStock(lots, pinned, capacity, nodeBudget)
}

class LotStock implements MaterialStock {
  private readonly lots: readonly Lot[]
  private readonly pinned: ReadonlyMap<string, number[]>
  private readonly open: OpenLots
  private readonly holdings: Held = { lineIds: [], perUnit: [], units: [] }
  private readonly answer = { units: 0, upperBound: 0, proof: 'exact' as Proof, short: 0, open: 0 }
  private nodesLeft: number
  // What was asked last: how many units fit, and the packing if all had to be packed anew.
  private fitting = 0
  private bound = 0
  private searched: Placement | undefined
  // The smallest share proved not to fit any more: what is held is never given back, so it stays so.
  private closedFrom = Number.POSITIVE_INFINITY
  private dealt: ReadonlyMap<string, readonly LotDraw[]> | undefined

  constructor(
    lots: readonly Lot[],
    pinned: ReadonlyMap<string, number[]>,
    capacity: readonly number[],
    nodeBudget: number,
  ) {
    this.lots = lots
    this.pinned = pinned
    this.open = new OpenLots(capacity)
    this.nodesLeft = nodeBudget
  }

  ask(line: Asking, perUnit: number): Answer {
    const { answer } = this
    const pins = this.pinsOf(line)
    this.find(perUnit, perUnit < this.closedFrom ? line.units - pins : 0)
    answer.units = pins + this.fitting
    answer.upperBound = pins + this.bound
    answer.proof = this.searched === undefined ? 'exact' : this.searched.proof
    answer.short = (line.units - answer.units) * perUnit
    answer.open = this.open.freeTotal + pins * perUnit
    return answer
  }

  hold(line: Asking, perUnit: number, wanted: number | 'all'): void {
    const pins = this.pinsOf(line)
    const kept = wanted === 'all' ? this.fitting : Math.max(0, wanted - pins)
    const isFull = kept === this.bound && kept < line.units - pins
    if (isFull && perUnit < this.closedFrom) this.closedFrom = perUnit
    if (kept + pins === 0) return
    if (this.searched === undefined) this.open.place(perUnit, kept)
    else this.open.replace(takeBack(this.searched.packing, perUnit, this.fitting - kept))
    this.holdings.lineIds.push(line.lineId)
    this.holdings.perUnit.push(perUnit)
    this.holdings.units.push(kept)
  }

  draws(): ReadonlyMap<string, readonly LotDraw[]> {
    this.dealt ??= dealLots(this.lots, this.open.packing(), this.holdings, this.pinned)
    return this.dealt
  }

  held(): readonly number[] {
    const { lineIds, perUnit } = this.holdings
    const { capacity, free } = this.open.packing()
    const sums = capacity.map((room, at) => room - (free[at] ?? 0))
    if (this.pinned.size === 0) return sums
    for (const [i, lineId] of lineIds.entries()) {
      for (const [at, pins] of (this.pinned.get(lineId) ?? nothing).entries()) {
        sums[at] = (sums[at] ?? 0) + pins * (perUnit[i] ?? 0)
      }
    }
    return sums
  }

  private pinsOf({ lineId }: Asking): number {
    return this.pinned.size === 0 ? 0 : total(this.pinned.get(lineId) ?? nothing)
  }

  /** The plain case first: room for all of it, or proof by counting that no more fits. */
  private find(perUnit: number, wanted: number): void {
    this.searched = undefined
    this.fitting = wanted === 0 ? 0 : this.open.fit(perUnit, wanted)
    this.bound = this.fitting
    if (this.fitting === wanted) return
    const packing = this.open.packing()
    if (this.fitting === Math.min(wanted, boundMore(packing, perUnit))) return
    // Half of what is left, so that one hard question does not starve the later ones.
    const searched = placeMost(packing, perUnit, wanted, Math.ceil(this.nodesLeft / 2))
    this.nodesLeft -= searched.nodes
    this.fitting = searched.units
    this.bound = searched.upperBound
    this.searched = searched
  }
}

/** What lines hold beside their pins, in columns because there are tens of thousands of them. */
type Held = Readonly<{ lineIds: string[]; perUnit: number[]; units: number[] }>

const nothing: readonly number[] = []

type Pinned = Readonly<{ pinned: ReadonlyMap<string, number[]>; capacity: number[] }>

function pinReserved(
  lots: readonly Lot[],
  reservations: readonly Reservation[],
  reserving: readonly Demand[],
): Pinned {
  const capacity = lots.map((lot) => Math.max(0, lot.onHand))
  const pinned = new Map<string, number[]>()
  if (reservations.length === 0) return { pinned, capacity }
  for (const { lotId, quantity, lineId } of reservations) {
    const at = lots.findIndex((lot) => lot.lotId === lotId)
    if (at >= 0 && lineId === undefined) capacity[at] = Math.max(0, (capacity[at] ?? 0) - quantity)
  }
  for (const demand of reserving) {
    const own = reservations.filter(({ lineId }) => lineId === demand.lineId)
    if (own.length > 0) pinned.set(demand.lineId, pinLine(lots, own, demand, capacity))
  }
  return { pinned, capacity }
}

/** Pins one line's units to its reserved lots, taking them out of `capacity`. */
function pinLine(
  lots: readonly Lot[],
  own: readonly Reservation[],
  { units, perUnit }: Demand,
  capacity: number[],
): number[] {
  let left = units
  return lots.map((lot, at) => {
    const reserved = total(own.filter((r) => r.lotId === lot.lotId).map((r) => r.quantity))
    const whole = Math.floor(Math.min(reserved, capacity[at] ?? 0) / perUnit)
    const pins = Math.min(left, whole)
    capacity[at] = (capacity[at] ?? 0) - pins * perUnit
    left -= pins
    return pins
  })
}

/** Deals the packed shares to what is held: earliest promise first, oldest lot first, size by size. */
function dealLots(
  lots: readonly Lot[],
  packing: Packing,
  { lineIds, perUnit, units }: Held,
  pinned: ReadonlyMap<string, readonly number[]>,
): ReadonlyMap<string, readonly LotDraw[]> {
  const left = new Map(packing.sizes.map((size, s) => [size, [...(packing.placed[s] ?? nothing)]]))
  return new Map(
    lineIds.map((lineId, at) => {
      const size = perUnit[at] ?? 0
      const pins = pinned.get(lineId) ?? nothing
      return [lineId, dealOne(lots, left.get(size) ?? [], { size, units: units[at] ?? 0, pins })]
    }),
  )
}

type Dealing = Readonly<{ size: number; units: number; pins: readonly number[] }>

function dealOne(lots: readonly Lot[], row: number[], { size, units, pins }: Dealing): LotDraw[] {
  const draws: LotDraw[] = []
  let open = units
  for (const [at, lot] of lots.entries()) {
    const dealt = Math.min(open, row[at] ?? 0)
    row[at] = (row[at] ?? 0) - dealt
    open -= dealt
    const shares = dealt + (pins[at] ?? 0)
    if (shares > 0) draws.push({ lotId: lot.lotId, quantity: shares * size, units: shares })
  }
  return draws
}
