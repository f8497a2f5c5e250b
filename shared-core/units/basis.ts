/**
 * What a figure rests on: counted (`exact`), this workshop's own scale or clock (`measured`), or
 * the reference tables (`estimated`).
 */
export type Basis = 'exact' | 'measured' | 'estimated'

const WEAKEST_FIRST: readonly Basis[] = ['estimated', 'measured', 'exact']

/** What a sum of figures rests on: the weakest of theirs; `exact` for none. */
export function weakestBasis(bases: readonly Basis[]): Basis {
  return WEAKEST_FIRST.find((basis) => bases.includes(basis)) ?? 'exact'
}
