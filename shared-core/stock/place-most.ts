import { boundMore } from './bound-more.ts'
import { fillSmallest } from './fill-smallest.ts'
import { findPacking } from './find-packing.ts'
import { emptyPacking, type Packing, placedOf, total, withShares } from './packing.ts'

/** `exact`: proved best. `bounded`: the search was cut off, and the true figure is at most the bound beside it. */
export type Proof = 'exact' | 'bounded'

/** How many more shares fit: `units` are placed in `packing`, and no arrangement places more than `upperBound`. */
export type Placement = Readonly<{
  units: number
  upperBound: number
  proof: Proof
  packing: Packing
  /** Patterns the search tried; 0 where none was needed. */
  nodes: number
}>

/** Patterns a search may try before it is cut off: some thousandths of a second. */
export const defaultNodeBudget = 100_000

/**
 * The most further shares of one size that fit beside all shares placed so far, up to `wanted`.
 *
 * Shares already placed keep their number but may change lots. First the room left as it is, best fit
 * first; where that falls short of what could be hoped for, an exact search that packs everything anew,
 * one share more at a time, until there is proof that one more cannot fit.
 *
 * @param size of one share, a whole number above 0 in the material's unit
 * @param wanted shares at most, 0 or more
 * @example lots of 10, 9 and 7 with two shares of 6 placed: three shares of 4 fit, the tens' room kept for 6 + 4
 */
export function placeMost(
  packing: Packing,
  size: number,
  wanted: number,
  nodeBudget: number = defaultNodeBudget,
): Placement {
  let best = fillFree(packing, size, wanted)
  if (best.units === wanted) return settled(best, 0)
  let upperBound = Math.min(wanted, boundMore(packing, size))
  let nodes = 0
  while (best.units < upperBound) {
    const answer = packAnew(packing, size, best.units + 1, nodeBudget - nodes)
    nodes += answer.nodes
    if (answer.kind === 'cut off') return { ...best, upperBound, proof: 'bounded', nodes }
    if (answer.kind === 'none') upperBound = best.units
    else {
      const more = fillFree(answer.packing, size, wanted - best.units - 1)
      best = { units: best.units + 1 + more.units, packing: more.packing }
    }
  }
  return settled(best, nodes)
}

type Filled = Readonly<{ units: number; packing: Packing }>

function settled({ units, packing }: Filled, nodes: number): Placement {
  return { units, upperBound: units, proof: 'exact', packing, nodes }
}

function fillFree(packing: Packing, size: number, wanted: number): Filled {
  const counts = fillSmallest(packing.free, size, wanted)
  const units = total(counts)
  return { units, packing: units === 0 ? packing : withShares(packing, size, counts) }
}

type Anew =
  | Readonly<{ kind: 'found'; packing: Packing; nodes: number }>
  | Readonly<{ kind: 'none'; nodes: number }>
  | Readonly<{ kind: 'cut off'; nodes: number }>

function packAnew(packing: Packing, size: number, more: number, nodeBudget: number): Anew {
  const sizes = packing.sizes.includes(size) ? packing.sizes : [...packing.sizes, size]
  const counts = sizes.map((s) => placedOf(packing, s) + (s === size ? more : 0))
  const answer = findPacking({ capacity: packing.capacity, sizes, counts }, nodeBudget)
  if (answer.kind !== 'found') return answer
  const packed = sizes.reduce(
    (all, s, i) => withShares(all, s, answer.placed[i] ?? []),
    emptyPacking(packing.capacity),
  )
  return { kind: 'found', packing: packed, nodes: answer.nodes }
}
