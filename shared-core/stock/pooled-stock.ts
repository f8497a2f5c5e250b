import type { Answer, LotDraw, MaterialStock } from './claim.ts'
import type { Lot } from './lot.ts'
import { total } from './packing.ts'
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
  const keptTotals = new Map([...kept].map(([lineId, row]) => [lineId, total(row)]))
  const lines: string[] = []
  const quantities: number[] = []
  let freeTotal = total(free)
  let dealt: readonly (readonly LotDraw[])[] | undefined
  const openTo = (lineId: string) => freeTotal + (keptTotals.get(lineId) ?? 0)

  return {
    ask({ lineId, units: wanted, perUnit }): Answer {
      const open = openTo(lineId)
      const held = Math.min(wanted * perUnit, open)
      const units = Math.floor(held / perUnit)
      return { units, upperBound: units, proof: 'exact', short: wanted * perUnit - held, open }
    },
    hold({ lineId, units: wanted, perUnit }, units) {
      const held = units === 'all' ? Math.min(wanted * perUnit, openTo(lineId)) : units * perUnit
      const own = Math.min(held, keptTotals.get(lineId) ?? 0)
      if (own > 0) keptTotals.set(lineId, (keptTotals.get(lineId) ?? 0) - own)
      freeTotal -= held - own
      lines.push(lineId)
      return quantities.push(held) - 1
    },
    draws() {
      dealt ??= quantities.map((held, i) => drawFrom(lots, free, kept.get(lines[i] ?? ''), held))
      return dealt
    },
    held() {
      if (kept.size === 0 && dealt === undefined) return take([...free], total(quantities))
      dealt ??= quantities.map((held, i) => drawFrom(lots, free, kept.get(lines[i] ?? ''), held))
      const byLot = new Map<string, number>()
      for (const { lotId, quantity } of dealt.flat()) {
        byLot.set(lotId, (byLot.get(lotId) ?? 0) + quantity)
      }
      return lots.map(({ lotId }) => byLot.get(lotId) ?? 0)
    },
  }
}

/** Draws from what is kept for the line, then from what is free, oldest lot first; takes it out of both. */
function drawFrom(
  lots: readonly Lot[],
  free: number[],
  own: number[] | undefined,
  held: number,
): readonly LotDraw[] {
  const kept = own ? take(own, held) : []
  const rest = take(free, held - total(kept))
  return lots
    .map(({ lotId }, at) => ({ lotId, quantity: (kept[at] ?? 0) + (rest[at] ?? 0) }))
    .filter((draw) => draw.quantity > 0)
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

/** Takes `wanted` from the lots in order, out of `from`; returns what came from each. */
function take(from: number[], wanted: number): readonly number[] {
  let left = wanted
  return from.map((quantity, at) => {
    const taken = Math.min(left, quantity)
    from[at] = quantity - taken
    left -= taken
    return taken
  })
}
