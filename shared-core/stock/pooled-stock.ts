import type { Answer, LotDraw, MaterialStock } from './claim.ts'
import type { Lot } from './lot.ts'
import type { Reservation } from './reservation.ts'

/**
 * Stock of a material whose lots may be mixed: only totals count, and lots are emptied oldest first.
 *
 * What is reserved for a line is drawn by that line alone, before anything free. Reservations beyond
 * what a lot holds are worth what it holds; those outside the orders come first, then in the order given.
 *
 * @param lots of one material, oldest first
 */
export function pooledStock(
  lots: readonly Lot[],
  reservations: readonly Reservation[],
): MaterialStock {
  const free = lots.map((lot) => Math.max(0, lot.onHand))
  const kept = keepReserved(lots, reservations, free)
  const drawn: (readonly LotDraw[])[] = []
  let freeTotal = sum(free)
  const openTo = (lineId: string) => freeTotal + sum(kept.get(lineId) ?? nothing)

  return {
    ask({ lineId, units: wanted, perUnit }): Answer {
      const open = openTo(lineId)
      const held = Math.min(wanted * perUnit, open)
      const units = Math.floor(held / perUnit)
      return { units, upperBound: units, proof: 'exact', short: wanted * perUnit - held, open }
    },
    hold({ lineId, units: wanted, perUnit }, units) {
      const held = units === 'all' ? Math.min(wanted * perUnit, openTo(lineId)) : units * perUnit
      const draws: LotDraw[] = []
      const own = kept.get(lineId)
      const rest = own ? held - take(lots, own, held, draws) : held
      freeTotal -= take(lots, free, rest, draws)
      return drawn.push(draws) - 1
    },
    draws: () => drawn,
  }
}

/** Moves what is reserved out of `free`; returns, per line, what is kept for it in each lot. */
function keepReserved(
  lots: readonly Lot[],
  reservations: readonly Reservation[],
  free: number[],
): Map<string, number[]> {
  const kept = new Map<string, number[]>()
  const outsideFirst = [...reservations].sort((a, b) => rank(a) - rank(b))
  for (const { lotId, quantity, lineId } of outsideFirst) {
    const at = lots.findIndex((lot) => lot.lotId === lotId)
    const held = Math.min(quantity, free[at] ?? 0)
    if (at < 0) continue
    free[at] = (free[at] ?? 0) - held
    if (lineId === undefined) continue
    const row = kept.get(lineId) ?? lots.map(() => 0)
    row[at] = (row[at] ?? 0) + held
    kept.set(lineId, row)
  }
  return kept
}

function rank(reservation: Reservation): number {
  return reservation.lineId === undefined ? 0 : 1
}

/** Takes up to `wanted` from the lots in order, out of `from` and into `draws`; returns how much was taken. */
function take(lots: readonly Lot[], from: number[], wanted: number, draws: LotDraw[]): number {
  let left = wanted
  for (let at = 0; left > 0 && at < from.length; at++) {
    const quantity = Math.min(left, from[at] ?? 0)
    if (quantity === 0) continue
    from[at] = (from[at] ?? 0) - quantity
    left -= quantity
    addDraw(draws, lots[at]?.lotId ?? '', quantity)
  }
  return wanted - left
}

function addDraw(draws: LotDraw[], lotId: string, quantity: number): void {
  const at = draws.findIndex((draw) => draw.lotId === lotId)
  const before = draws[at]?.quantity ?? 0
  draws.splice(at < 0 ? draws.length : at, at < 0 ? 0 : 1, { lotId, quantity: before + quantity })
}

const nothing: readonly number[] = []

function sum(quantities: readonly number[]): number {
  let total = 0
  for (const quantity of quantities) total += quantity
  return total
}
