import type { Answer, Demand, LotDraw, MaterialStock } from './claim.ts'
import type { Lot } from './lot.ts'
import { emptyPacking, type Packing, takeBack } from './packing.ts'
import { type Placement, placeMost } from './place-most.ts'
import type { Reservation } from './reservation.ts'

/**
 * Stock of a material whose lots are not mixed within a unit: each unit's share comes from one lot.
 *
 * Promises are packed together, earlier ones keeping their units while their lots may still change.
 * A reservation for a line pins as many whole units of that line to its lot as it covers; what it
 * covers beyond them is free. Reservations outside the orders take their quantity from the lot.
 *
 * @param lots of one material, oldest first
 * @param reserving the demands of lines that have reservations, in order of promise
 */
export function lotStock(
  lots: readonly Lot[],
  reservations: readonly Reservation[],
  reserving: readonly Demand[],
  nodeBudget?: number,
): MaterialStock {
  const { pinned, capacity } = pinReserved(lots, reservations, reserving)
  const held: Held[] = []
  let packing = emptyPacking(capacity)
  let last: Placement | undefined

  return {
    ask({ lineId, units, perUnit }): Answer {
      const pins = sum(pinned.get(lineId) ?? nothing)
      last = placeMost(packing, perUnit, units - pins, nodeBudget)
      const allowed = pins + last.units
      const short = (units - allowed) * perUnit
      const open = sum(packing.free) + pins * perUnit
      return { units: allowed, upperBound: pins + last.upperBound, proof: last.proof, short, open }
    },
    hold({ lineId, units, perUnit }, wanted) {
      const pins = pinned.get(lineId) ?? nothing
      const found = last ?? placeMost(packing, perUnit, units - sum(pins), nodeBudget)
      const kept = wanted === 'all' ? found.units : Math.max(0, wanted - sum(pins))
      packing = takeBack(found.packing, perUnit, found.units - kept)
      return held.push({ perUnit, units: kept, pins }) - 1
    },
    draws: () => dealLots(lots, packing, held),
  }
}

/** Units a demand holds: `pins` by lot from its reservations, `units` more from any lot. */
type Held = Readonly<{ perUnit: number; units: number; pins: readonly number[] }>

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
    const reserved = sum(own.filter((r) => r.lotId === lot.lotId).map((r) => r.quantity))
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
  held: readonly Held[],
): readonly (readonly LotDraw[])[] {
  const left = new Map(packing.sizes.map((size, s) => [size, [...(packing.placed[s] ?? nothing)]]))
  return held.map((holding) => dealOne(lots, left.get(holding.perUnit) ?? [], holding))
}

function dealOne(lots: readonly Lot[], row: number[], { perUnit, units, pins }: Held) {
  const draws: LotDraw[] = []
  let open = units
  for (const [at, lot] of lots.entries()) {
    const dealt = Math.min(open, row[at] ?? 0)
    row[at] = (row[at] ?? 0) - dealt
    open -= dealt
    const total = dealt + (pins[at] ?? 0)
    if (total > 0) draws.push({ lotId: lot.lotId, quantity: total * perUnit, units: total })
  }
  return draws
}

function sum(counts: readonly number[]): number {
  let total = 0
  for (const count of counts) total += count
  return total
}
