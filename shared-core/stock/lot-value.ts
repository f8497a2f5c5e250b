import { fraction } from '../units/fraction.ts'
import { roundFraction } from '../units/rounding.ts'

/** What a lot cost: `costMinor` minor units for `costQuantity` in the material's unit, above 0. */
export type LotCost = Readonly<{ costMinor: number; costQuantity: number }>

/**
 * Value at cost of part of a lot, in whole minor units: quantity x cost / quantity bought.
 *
 * Exact fractions, rounded once, a tie to the even neighbour. A quantity below 0 has a value below 0.
 *
 * @example 7,300 mg of a lot of 10,000 mg for 4.20 -> 307 (306.6 minor units)
 */
export function valueAtCost({ costMinor, costQuantity }: LotCost, quantity: number): number {
  const exact = fraction(BigInt(quantity) * BigInt(costMinor), BigInt(costQuantity))
  return roundFraction(exact, 'half-even')
}

/**
 * What a draw from a lot costs, so that all draws of a lot add up to its cost and nothing is lost to rounding.
 *
 * The value of everything drawn up to and including this draw, less the value of everything drawn before.
 *
 * @param drawnBefore all earlier draws of the lot together, 0 or more, in the material's unit
 * @param quantity of this draw, 0 or more
 * @returns minor units; at most one away from `valueAtCost` of the draw alone
 * @example a lot of 3 pieces for 1.00, one drawn at a time -> 33, 34, 33
 */
export function drawCost(cost: LotCost, drawnBefore: number, quantity: number): number {
  return valueAtCost(cost, drawnBefore + quantity) - valueAtCost(cost, drawnBefore)
}
