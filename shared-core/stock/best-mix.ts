import { assert } from '../assert.ts'
import { type Lot, lotsByMaterial } from './lot.ts'
import type { MaterialNeed } from './material-need.ts'
import { boundMix } from './mix-bound.ts'
import { emptyPacking, type Packing, takeBack } from './packing.ts'
import { type Proof, placeMost } from './place-most.ts'

/** A design to make from shared stock: what a unit is worth (whole, 0 or more: points or minor units) and at most how many. */
export type MixDesign = Readonly<{
  designId: string
  needs: readonly MaterialNeed[]
  worth: number
  maxUnits: number
}>

/** The best mix found: units in the order of the designs, its worth, and what no mix can exceed. */
export type Mix = Readonly<{
  units: readonly Readonly<{ designId: string; units: number }>[]
  worth: number
  upperBound: number
  proof: Proof
}>

/** Mixes looked at before the search is cut off. */
export const defaultMixBudget = 50_000

/**
 * How many of each of several designs to make from the same lots for the most worth.
 *
 * Exact branch and bound over units by design: the design worth most of the scarcest material first,
 * many units before few; a branch ends when even its bound (`boundMix`) is no better than the best
 * mix found. Whether a mix fits is asked material by material, exactly, by packing all its units into
 * lots (`placeMost`); pooled materials are one lot. When a budget cuts the search or a packing off,
 * the mix is the best found and `upperBound` is the bound of the whole question.
 *
 * @param designs each with units of 0 or more; a design without needs is made to its maximum
 * @param lots with `onHand` as what is available
 * @example worth 3 for 6 g, worth 2 for 4 g, lots of 10, 9 and 7 g -> 2 and 3 units, worth 12
 */
export function bestMix(
  designs: readonly MixDesign[],
  lots: readonly Lot[],
  mixBudget: number = defaultMixBudget,
): Mix {
  for (const { designId, worth, maxUnits } of designs) {
    const whole = Number.isSafeInteger(worth) && Number.isSafeInteger(maxUnits)
    assert(whole && worth >= 0 && maxUnits >= 0, `${designId}: whole worth and units of 0 or more`)
  }
  const search = new MixSearch(designs, stockOf(designs, lots), mixBudget)
  search.run()
  return search.result()
}

type Stock = ReadonlyMap<string, Packing>

function stockOf(designs: readonly MixDesign[], lots: readonly Lot[]): Stock {
  const lotsOf = lotsByMaterial(lots)
  const needs = designs.flatMap((design) => design.needs)
  return new Map(
    needs.map(({ materialId, lotsMatter }) => {
      const rooms = (lotsOf.get(materialId) ?? []).map((lot) => Math.max(0, lot.onHand))
      const pooled = [rooms.reduce((sum, room) => sum + room, 0)]
      return [materialId, emptyPacking(lotsMatter ? rooms : pooled)]
    }),
  )
}

class MixSearch {
  private readonly designs: readonly MixDesign[]
  private readonly order: readonly number[]
  private readonly stock: Stock
  private readonly mixBudget: number
  private readonly ceiling: number
  private units: readonly number[]
  private best = -1
  private mixes = 0
  private isProved = true

  constructor(designs: readonly MixDesign[], stock: Stock, mixBudget: number) {
    this.designs = designs
    this.stock = stock
    this.mixBudget = mixBudget
    this.units = designs.map(() => 0)
    const densities = designs.map((design) => density(design, stock))
    this.order = byDensity(densities)
    this.ceiling = boundMix(designs, stock)
  }

  run(): void {
    this.branch(0, this.stock, 0, this.units)
  }

  result(): Mix {
    const isExact = this.isProved || this.best === this.ceiling
    return {
      units: this.designs.map(({ designId }, d) => ({ designId, units: this.units[d] ?? 0 })),
      worth: this.best,
      upperBound: isExact ? this.best : this.ceiling,
      proof: isExact ? 'exact' : 'bounded',
    }
  }

  private branch(depth: number, stock: Stock, worth: number, units: readonly number[]): void {
    if (worth > this.best) {
      this.best = worth
      this.units = units
    }
    const d = this.order[depth]
    const design = d === undefined ? undefined : this.designs[d]
    if (d === undefined || !design) return
    const rest = this.order.slice(depth + 1).flatMap((other) => this.designs[other] ?? [])
    const most = this.place(design, stock)
    for (let made = most.units; made >= 0; made--) {
      if (++this.mixes > this.mixBudget) this.isProved = false
      // Once cut off, each depth still tries its most, so that what is returned is a full mix.
      if (this.mixes > this.mixBudget && made < most.units) return
      const left = leave(most.stock, design, most.units - made)
      const reached = worth + made * design.worth
      if (reached + boundMix(rest, left) <= this.best) continue
      this.branch(depth + 1, left, reached, units.with(d, made))
    }
  }

  /** The most units of a design beside what is placed, and the stock with them in it. */
  private place(design: MixDesign, stock: Stock): Readonly<{ units: number; stock: Stock }> {
    let units = design.maxUnits
    const placed = design.needs.map(({ materialId, quantity }) => {
      const packing = stock.get(materialId) ?? emptyPacking([])
      const found = placeMost(packing, quantity, units)
      if (found.proof === 'bounded') this.isProved = false
      units = Math.min(units, found.units)
      return { materialId, quantity, found }
    })
    const next = new Map(stock)
    for (const { materialId, quantity, found } of placed) {
      next.set(materialId, takeBack(found.packing, quantity, found.units - units))
    }
    return { units, stock: next }
  }
}

/** Positions from the densest design to the least dense; NaN (worth 0 over no room) comes last. */
function byDensity(densities: readonly number[]): readonly number[] {
  const rank = (d: number) => densities[d] || 0
  return densities
    .map((_, d) => d)
    .sort((a, b) => (rank(b) > rank(a) ? 1 : rank(b) < rank(a) ? -1 : a - b))
}

/** Worth of a unit for its share of the material it takes the largest share of. */
function density({ needs, worth }: MixDesign, stock: Stock): number {
  const shares = needs.map(({ materialId, quantity }) => {
    const room = stock.get(materialId)?.free.reduce((sum, free) => sum + free, 0) ?? 0
    return quantity / room
  })
  return worth / Math.max(0, ...shares)
}

function leave(stock: Stock, design: MixDesign, units: number): Stock {
  if (units === 0) return stock
  const next = new Map(stock)
  for (const { materialId, quantity } of design.needs) {
    next.set(materialId, takeBack(next.get(materialId) ?? emptyPacking([]), quantity, units))
  }
  return next
}
