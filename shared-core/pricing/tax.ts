import { addFractions, divideFractions, fraction, multiplyFractions } from '../units/fraction.ts'
import { type Ratio, ratioToFraction } from '../units/ratio.ts'
import { roundFraction } from '../units/rounding.ts'

/** A price taken apart as an invoice shows it; `netMinor + taxMinor = grossMinor` always. */
export type TaxSplit = Readonly<{ netMinor: number; taxMinor: number; grossMinor: number }>

/**
 * The tax inside a price that includes it: gross x rate / (1 + rate), rounded once to whole minor
 * units with ties away from zero; the net is the rest.
 *
 * @param grossMinor whole minor units
 * @param rate 0 or more: 0.2 for 20 %
 * @example taxInside(2400, ratio('0.175')) // tax 357, net 2043
 */
export function taxInside(grossMinor: number, rate: Ratio): TaxSplit {
  const exactRate = ratioToFraction(rate)
  const share = divideFractions(exactRate, addFractions(fraction(1), exactRate))
  const taxMinor = roundFraction(multiplyFractions(fraction(grossMinor), share), 'half-away')
  return { netMinor: grossMinor - taxMinor, taxMinor, grossMinor }
}

/**
 * The tax put on top of a price without it: net x rate, rounded once to whole minor units with
 * ties away from zero.
 *
 * @example taxOnTop(2000, ratio('0.2')) // tax 400, gross 2400
 */
export function taxOnTop(netMinor: number, rate: Ratio): TaxSplit {
  const exact = multiplyFractions(fraction(netMinor), ratioToFraction(rate))
  const taxMinor = roundFraction(exact, 'half-away')
  return { netMinor, taxMinor, grossMinor: netMinor + taxMinor }
}
