import { formatSpread } from '../../../../shared-core/units/format-spread.ts'
import type { DecimalMark } from '../../../../shared-core/units/parse-options.ts'
import type { Spread } from '../../../../shared-core/units/spread.ts'

/** What a figure rests on, as the maker chooses it. */
export type TypedBasis = 'measured' | 'estimated'

/** A figure with its range as it stands in its field; `spread` is missing while it cannot be read. */
export type TypedSpread = Readonly<{
  text: string
  spread: Spread | undefined
  /** Not touched since it was shown: what it rests on stays too. */
  isKept: boolean
}>

/** A figure as its field shows it first. */
export function shownSpread(spread: Spread | undefined, decimal: DecimalMark): TypedSpread {
  return spread === undefined
    ? { text: '', spread, isKept: false }
    : { text: formatSpread(spread, { decimal }), spread, isKept: true }
}

/** The figure to keep, resting on what the maker chose. */
export function keptSpread(
  { spread, isKept }: TypedSpread,
  basis: TypedBasis | undefined,
): Spread | undefined {
  if (spread === undefined || (isKept && basis === undefined)) return spread
  return { ...spread, basis: basis ?? 'measured' }
}

/** The figure times a factor, `percent` to a share and back; to a millionth. */
export function timesSpread(spread: Spread, factor: number): Spread {
  const times = (value: number) => Math.round(value * factor * 1e6) / 1e6
  const { value, low, high, basis } = spread
  return { value: times(value), low: times(low), high: times(high), basis }
}
