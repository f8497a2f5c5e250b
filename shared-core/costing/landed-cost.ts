import { assert } from '../assert.ts'
import type { Refusal } from '../refusal.ts'
import { err, ok, type Result } from '../result.ts'
import { allocate } from '../units/allocate.ts'

/** One line of a purchase: what it cost before charges, and its mass for carriage by weight. */
export type PurchaseLine = Readonly<{ costMinor: number; massMg: number }>

/**
 * A charge on the whole purchase in minor units, below 0 for a rebate: duty and insurance go by
 * value, carriage by weight. Tax that is got back is no cost and no charge.
 */
export type Charge = Readonly<{ amountMinor: number; by: 'value' | 'weight' }>

/** What a line cost with its share of each charge, in the order of the charges. */
export type LandedLine = Readonly<{ sharesMinor: readonly number[]; landedMinor: number }>

/**
 * The landed cost of each line of a purchase; the lines sum exactly to purchase and charges.
 *
 * Each charge is shared by largest remainder. Refusals: `nothing-to-share-by` when no line has a
 * value or a mass to share a charge by, `rebate-too-large` when a line would cost less than nothing.
 *
 * @source IAS 2, paragraphs 10 and 11
 * @example lines of 300.00 and 700.00, freight 60.00 by value -> 318.00 and 742.00
 */
export function landedCosts(
  lines: readonly PurchaseLine[],
  charges: readonly Charge[],
): Result<readonly LandedLine[], Refusal> {
  assertLines(lines)
  const unshared = charges.find(
    ({ amountMinor, by }) =>
      amountMinor !== 0 && weightsOf(lines, by).every((weight) => weight === 0),
  )
  if (unshared) return err(nothingToShareBy(unshared))
  const shares = charges.map(({ amountMinor, by }) => allocate(amountMinor, weightsOf(lines, by)))
  const landed = lines.map((line, at) => {
    const sharesMinor = shares.map((share) => share[at] ?? 0)
    return { sharesMinor, landedMinor: sharesMinor.reduce((a, b) => a + b, line.costMinor) }
  })
  return landed.some((line) => line.landedMinor < 0) ? err(REBATE_TOO_LARGE) : ok(landed)
}

function weightsOf(lines: readonly PurchaseLine[], by: Charge['by']): readonly number[] {
  return lines.map((line) => (by === 'value' ? line.costMinor : line.massMg))
}

function assertLines(lines: readonly PurchaseLine[]): void {
  for (const { costMinor, massMg } of lines) {
    assert(Number.isSafeInteger(costMinor) && costMinor >= 0, `a whole cost, got ${costMinor}`)
    assert(Number.isSafeInteger(massMg) && massMg >= 0, `a whole mass, got ${massMg}`)
  }
}

function nothingToShareBy({ by }: Charge): Refusal {
  return {
    code: 'nothing-to-share-by',
    message: `No line of the purchase has a ${by} to share the charge by.`,
    next: by === 'weight' ? 'Give the lines their masses, or share by value.' : 'Share by weight.',
  }
}

const REBATE_TOO_LARGE: Refusal = {
  code: 'rebate-too-large',
  message: 'With its share of the rebate a line would cost less than nothing.',
  next: 'Check the rebate against the purchase.',
}
