import { boundMore } from './bound-more.ts'
import type { MaterialNeed } from './material-need.ts'
import type { Packing } from './packing.ts'

/** What the bound must know of a design. */
type Bounded = Readonly<{ needs: readonly MaterialNeed[]; worth: number; maxUnits: number }>

/**
 * Worth that no mix of these designs can exceed beside what is placed already.
 *
 * Each design alone makes at most what `boundMore` says of its materials. For each material, sharing its
 * free total out in fractions of units, the most worth per mg first, bounds them together; the
 * least of these bounds is the answer. Lots only make it less, so it holds where lots matter too.
 *
 * @returns whole; 0 for no designs
 */
export function boundMix(designs: readonly Bounded[], stock: ReadonlyMap<string, Packing>): number {
  const totals = new Map([...stock].map(([id, { free }]) => [id, free.reduce((a, b) => a + b, 0)]))
  const most = designs.map((design) => mostAlone(design, stock))
  const alone = designs.reduce((sum, { worth }, d) => sum + worth * (most[d] ?? 0), 0)
  const shared = [...totals].map(([id, total]) => Math.floor(shareOut(designs, most, id, total)))
  return Math.min(alone, ...shared)
}

function mostAlone({ needs, maxUnits }: Bounded, stock: ReadonlyMap<string, Packing>): number {
  const allowed = needs.map(({ materialId, quantity }) => {
    const packing = stock.get(materialId)
    return packing ? boundMore(packing, quantity) : 0
  })
  return Math.min(maxUnits, ...allowed)
}

/** Fractional knapsack of one material; designs that do not use it are free. */
function shareOut(
  designs: readonly Bounded[],
  most: readonly number[],
  materialId: string,
  total: number,
): number {
  const items = designs.map(({ needs, worth }, d) => ({
    size: needs.find((need) => need.materialId === materialId)?.quantity ?? 0,
    worth,
    units: most[d] ?? 0,
  }))
  const takers = items.filter(({ size }) => size > 0)
  takers.sort((a, b) => b.worth * a.size - a.worth * b.size)
  let left = total
  let sum = items.reduce((free, { size, worth, units }) => free + (size > 0 ? 0 : worth * units), 0)
  for (const { size, worth, units } of takers) {
    const taken = Math.min(units, left / size)
    left -= taken * size
    sum += taken * worth
  }
  // Keeps a sum such as 11.999999999 from being floored below what it stands for.
  return sum + 1e-6
}
