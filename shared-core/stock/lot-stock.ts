import type { Answer, Demand, LotDraw, MaterialStock } from './claim.ts'
import type { Lot } from './lot.ts'
import { emptyPacking, type Packing, takeBack, total } from './packing.ts'
import { defaultNodeBudget, type Placement, placeMost } from './place-most.ts'
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
  const held: Held[] = []
  let packing = emptyPacking(capacity)
  let found: Placement = placeMost(packing, 1, 0)
  let nodesLeft = nodeBudget
  // The smallest share proved not to fit any more: what is held is never given back, so it stays so.
  let closedFrom = Number.POSITIVE_INFINITY
  let dealt: readonly (readonly LotDraw[])[] | undefined

  return {
    ask({ lineId, units, perUnit }): Answer {
      const pins = total(pinned.get(lineId) ?? nothing)
      const wanted = perUnit < closedFrom ? units - pins : 0
      // Half of what is left, so that one hard question does not starve the later ones.
      found = placeMost(packing, perUnit, wanted, Math.ceil(nodesLeft / 2))
      nodesLeft -= found.nodes
      const allowed = pins + found.units
      return {
        units: allowed,
        upperBound: pins + found.upperBound,
        proof: found.proof,
        short: (units - allowed) * perUnit,
        open: total(packing.free) + pins * perUnit,
      }
    },
    hold({ lineId, units, perUnit }, wanted) {
      const pins = pinned.get(lineId) ?? nothing
      const kept = wanted === 'all' ? found.units : Math.max(0, wanted - total(pins))
      const isFull = kept === found.upperBound && kept < units - total(pins)
      if (isFull) closedFrom = Math.min(closedFrom, perUnit)
      packing = takeBack(found.packing, perUnit, found.units - kept)
      return held.push({ perUnit, units: kept, pins }) - 1
    },
    draws() {
      dealt ??= dealLots(lots, packing, held)
      return dealt
    },
    held() {
      return lots.map((_, at) =>
        held.reduce(
          (sum, { perUnit, pins }) => sum + perUnit * (pins[at] ?? 0),
          (packing.capacity[at] ?? 0) - (packing.free[at] ?? 0),
        ),
      )
    },
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
    const shares = dealt + (pins[at] ?? 0)
    if (shares > 0) draws.push({ lotId: lot.lotId, quantity: shares * perUnit, units: shares })
  }
  return draws
}
