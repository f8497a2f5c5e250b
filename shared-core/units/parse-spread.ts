import type { Refusal } from '../refusal.ts'
import { ok, type Result } from '../result.ts'
import { formatSpread } from './format-spread.ts'
import { fractionToNumber } from './fraction.ts'
import { parseNumber } from './parse-number.ts'
import { type ParseOptions, type ParseResult, quoted, refuseFigure } from './parse-options.ts'
import type { Basis, Spread } from './spread.ts'
import { tidyText } from './tidy-text.ts'

/** What a parser of figures with a range is told: what the figure rests on, and the unit it may carry. */
export type SpreadOptions = ParseOptions & Readonly<{ basis: Basis; unit?: string | undefined }>

type Range = Readonly<{ low: number; value: number; high: number }>
type Read = Result<Range, Refusal>

const RANGE = /^(.+?)\s*(?:\bto\b|\bbis\b|–|—|…|\.\.\.?|-)\s*(.+)$/i
const GIVE = /^(.+?)\s*(?:±|\+\/-|\+-)\s*(.+)$/
const BRACKETS = /^(.+?)\s*\(\s*(.+?)\s*\)$/

/**
 * A figure with its range as people write one down: `1,6 (1,5 to 1,7)`, `1.5–1.7`, `1,6 ± 0,1`, `1.6`.
 *
 * A range alone has its figure in the middle; a figure alone is good to half a unit of its last
 * digit (1.6 lies between 1.55 and 1.65), a fraction exactly. Every figure may carry the unit.
 *
 * Refusals: those of `parseNumber`; `not-a-range` where the figure does not lie in its range.
 */
export function parseSpread(text: string, options: SpreadOptions): ParseResult<Spread> {
  const told = { typed: text, ...options }
  const read = readRange(withoutUnit(tidyText(text), options.unit), told)
  if (!read.ok) return read
  const { low, value, high } = read.value
  if (!(low <= value && value <= high)) return refuseFigure(options, notARange(text))
  const spread = { value, low, high, basis: options.basis }
  return ok({ value: spread, understood: formatSpread(spread, options) })
}

function readRange(text: string, options: SpreadOptions): Read {
  const [, figure, range] = BRACKETS.exec(text) ?? []
  if (figure !== undefined && range !== undefined) return figureInRange(figure, range, options)
  const [, middle, give] = GIVE.exec(text) ?? []
  if (middle !== undefined && give !== undefined) return figureWithGive(middle, give, options)
  const ends = endsOf(text, options)
  if (ends === undefined) return figureAlone(text, options)
  return ends.ok
    ? ok({ ...ends.value, value: tidyFigure((ends.value.low + ends.value.high) / 2) })
    : ends
}

function figureInRange(figure: string, range: string, options: SpreadOptions): Read {
  const value = readFigure(figure, options)
  const ends = endsOf(range, options)
  if (!value.ok) return value
  if (ends === undefined) return refuseFigure(options, notARange(options.typed ?? range))
  return ends.ok ? ok({ ...ends.value, value: value.value }) : ends
}

function figureWithGive(middle: string, give: string, options: SpreadOptions): Read {
  const value = readFigure(middle, options)
  const half = readFigure(give, options)
  if (!value.ok) return value
  if (!half.ok) return half
  return ok(around(value.value, half.value))
}

function figureAlone(text: string, options: SpreadOptions): Read {
  const value = readFigure(text, options)
  if (!value.ok) return value
  // The decimals as typed: 1.60 is surer than 1.6.
  const digits = /^\d+(?:[.,](\d+))?$/.exec(text)
  const half = digits === null ? 0 : 0.5 * 10 ** -(digits[1]?.length ?? 0)
  return ok(around(value.value, half))
}

function around(value: number, half: number): Range {
  return { low: tidyFigure(Math.max(0, value - half)), value, high: tidyFigure(value + half) }
}

function endsOf(text: string, options: SpreadOptions) {
  const [, from, to] = RANGE.exec(text) ?? []
  if (from === undefined || to === undefined) return undefined
  const low = readFigure(from, options)
  const high = readFigure(to, options)
  if (!low.ok) return low
  if (!high.ok) return high
  return ok({ low: low.value, high: high.value })
}

function readFigure(text: string, options: SpreadOptions): Result<number, Refusal> {
  const number = parseNumber(withoutUnit(text.trim(), options.unit), options)
  return number.ok ? ok(tidyFigure(fractionToNumber(number.value))) : number
}

function withoutUnit(text: string, unit: string | undefined): string {
  if (unit === undefined || !text.toLowerCase().endsWith(unit.toLowerCase())) return text
  return text.slice(0, -unit.length).trimEnd()
}

/** Sums and halves of decimals carry binary dust; nothing here is told finer than a millionth. */
function tidyFigure(value: number): number {
  return Math.round(value * 1e6) / 1e6
}

function notARange(text: string): Omit<Refusal, 'field' | 'line'> {
  return {
    code: 'not-a-range',
    message: `${quoted(text)} is not a figure within its range.`,
    next: 'Type a figure and its range, such as 1.6 (1.5 to 1.7), or the range alone.',
  }
}
