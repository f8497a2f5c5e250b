/** What a figure rests on: counted, taken from this workshop's own scale or clock, or from reference tables. */
export type Basis = 'exact' | 'measured' | 'estimated'

/** A figure with the range it may lie in and what it rests on. `low <= value <= high`; unit by name of the field. */
export type Spread = Readonly<{ value: number; low: number; high: number; basis: Basis }>

/** A counted figure: no range. */
export function exactly(value: number): Spread {
  return { value, low: value, high: value, basis: 'exact' }
}

/** A figure from reference tables with its range. @throws RangeError unless `low <= value <= high`. */
export function estimated(low: number, value: number, high: number): Spread {
  return ranged(low, value, high, 'estimated')
}

/** A figure from the workshop's own scale or clock with its range. @throws RangeError unless `low <= value <= high`. */
export function measured(low: number, value: number, high: number): Spread {
  return ranged(low, value, high, 'measured')
}

function ranged(low: number, value: number, high: number, basis: Basis): Spread {
  if (!(low <= value && value <= high)) {
    throw new RangeError(`Spread: expected low <= value <= high, got ${low}, ${value}, ${high}`)
  }
  return { value, low, high, basis }
}

const TRUST: Readonly<Record<Basis, number>> = { exact: 2, measured: 1, estimated: 0 }

/** The weaker of two bases: a sum is only as well known as its least known part. */
export function weakerBasis(a: Basis, b: Basis): Basis {
  return TRUST[a] <= TRUST[b] ? a : b
}
