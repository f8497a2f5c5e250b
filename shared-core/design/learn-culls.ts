import { measured, type Spread } from '../units/spread.ts'

/** Beads of one form that went through the maker's hands in a session, and how many of them she put aside. */
export type CullCount = Readonly<{ handled: number; culled: number }>

/** Half-width of a 95 % range in standard deviations. */
const Z95 = 1.959963984540054

/** No rate leaves nothing to make of: the highest a form may have. */
const HIGHEST = 0.95

/**
 * The share of a form's beads that this workshop puts aside, from its own counts.
 *
 * The table's rate and range are read as a Beta distribution worth k beads, k = m (1 - m) / sd^2 - 1;
 * every counted bead is one more, so the rate goes from the table's to the workshop's as beads are
 * counted and its range (95 %) narrows. Basis `measured`; the table's own figure without counts.
 *
 * @param table share of 1 with its 95 % range
 * @param counts whole beads, `culled` at most `handled`; others are left out
 * @source Beta-binomial conjugacy; Gelman et al., Bayesian Data Analysis, 2.4.
 * @example 2 % worth 700 beads, 40 of 700 put aside -> 3.9 %
 */
export function learnCullRate(table: Spread, counts: readonly CullCount[]): Spread {
  const good = counts.filter(
    ({ handled, culled }) => handled > 0 && culled >= 0 && culled <= handled,
  )
  const handled = good.reduce((sum, count) => sum + count.handled, 0)
  const culled = good.reduce((sum, count) => sum + count.culled, 0)
  const worth = worthBeads(table)
  if (handled === 0 || worth === undefined) return table
  const rate = (worth * table.value + culled) / (worth + handled)
  const reach = Z95 * Math.sqrt((rate * (1 - rate)) / (worth + handled + 1))
  const value = Math.min(HIGHEST, rate)
  return measured(Math.max(0, value - reach), value, Math.min(HIGHEST, value + reach))
}

/** How many counted beads a table's rate is worth; nothing where it is said without a range. */
function worthBeads({ value, low, high }: Spread): number | undefined {
  const sd = (high - low) / (2 * Z95)
  if (!(sd > 0)) return undefined
  return Math.max(1, (value * (1 - value)) / sd ** 2 - 1)
}
