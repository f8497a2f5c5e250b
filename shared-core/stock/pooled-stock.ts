import type { Answer, Asking, LotDraw, MaterialStock } from './claim.ts'
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
  return new PooledStock(lots, reservations)
}

class PooledStock implements MaterialStock {
  private readonly lots: readonly Lot[]
  private readonly free: number[]
  private readonly kept: ReadonlyMap<string, number[]>
  private readonly keptTotals: Map<string, number>
  private readonly lineIds: string[] = []
  private readonly quantities: number[] = []
  private readonly answer = { units: 0, upperBound: 0, proof: 'exact' as const, short: 0, open: 0 }
  private freeTotal: number
  private dealt: ReadonlyMap<string, readonly LotDraw[]> | undefined

  constructor(lots: readonly Lot[], reservations: readonly Reservation[]) {
    this.lots = lots
    this.free = lots.map((lot) => Math.max(0, lot.onHand))
    this.kept = keepReserved(lots, reservations, this.free)
    this.keptTotals = new Map([...this.kept].map(([lineId, row]) => [lineId, total(row)]))
    this.freeTotal = total(this.free)
  }

  ask({ lineId, units: wanted }: Asking, perUnit: number): Answer {
    const { answer } = this
    const open = this.freeTotal + this.keptFor(lineId)
    const held = Math.min(wanted * perUnit, open)
    const units = Math.floor(held / perUnit)
    answer.units = units
    answer.upperBound = units
    answer.short = wanted * perUnit - held
    answer.open = open
    return answer
  }

  hold({ lineId, units: wanted }: Asking, perUnit: number, units: number | 'all'): void {
    const kept = this.keptFor(lineId)
    const most = Math.min(wanted * perUnit, this.freeTotal + kept)
    const held = units === 'all' ? most : units * perUnit
    const own = Math.min(held, kept)
    if (own > 0) this.keptTotals.set(lineId, kept - own)
    this.freeTotal -= held - own
    if (held === 0) return
    this.lineIds.push(lineId)
    this.quantities.push(held)
  }

  draws(): ReadonlyMap<string, readonly LotDraw[]> {
    const { lots, free, kept, lineIds, quantities } = this
    this.dealt ??= new Map(
      lineIds.map((id, i) => [id, drawFrom(lots, free, kept.get(id), quantities[i] ?? 0)]),
    )
    return this.dealt
  }

  held(): readonly number[] {
    if (this.kept.size === 0 && this.dealt === undefined)
      return take([...this.free], total(this.quantities))
    const byLot = new Map<string, number>()
    for (const { lotId, quantity } of [...this.draws().values()].flat()) {
      byLot.set(lotId, (byLot.get(lotId) ?? 0) + quantity)
    }
    return this.lots.map(({ lotId }) => byLot.get(lotId) ?? 0)
  }

  private keptFor(lineId: string): number {
    return this.keptTotals.size === 0 ? 0 : (this.keptTotals.get(lineId) ?? 0)
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
