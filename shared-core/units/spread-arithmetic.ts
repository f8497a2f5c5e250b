import { exactly, type Spread, weakerBasis } from './spread.ts'

/** Sum of figures in one unit; their ranges add, as errors of one table or one scale go the same way. */
export function addSpreads(parts: readonly Spread[]): Spread {
  return parts.reduce(
    (sum, part) => ({
      value: sum.value + part.value,
      low: sum.low + part.low,
      high: sum.high + part.high,
      basis: weakerBasis(sum.basis, part.basis),
    }),
    exactly(0),
  )
}

/** A figure times a known factor, 0 or more. */
export function scaleSpread(part: Spread, factor: number): Spread {
  const { value, low, high, basis } = part
  return { value: value * factor, low: low * factor, high: high * factor, basis }
}

/** A figure in whole units: the value to the nearest, the range outwards. */
export function wholeSpread({ value, low, high, basis }: Spread): Spread {
  return { value: Math.round(value), low: Math.floor(low), high: Math.ceil(high), basis }
}
