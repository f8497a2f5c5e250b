import { ok } from '../result.ts'
import { type DurationS, durationS } from './duration.ts'
import { formatDurationExactly } from './format-duration.ts'
import { type Fraction, fraction } from './fraction.ts'
import { type MeasureKind, parseWholeMeasure } from './parse-measure.ts'
import type { ParseOptions, ParseResult } from './parse-options.ts'
import { tidyText } from './tidy-text.ts'

/** A unit a bare number of time may be read in. */
export type DurationUnit = 's' | 'min' | 'h'

const S = fraction(1)
const MIN = fraction(60)
const H = fraction(3600)

const FACTORS: Readonly<Record<string, Fraction>> = {
  s: S,
  sec: S,
  secs: S,
  second: S,
  seconds: S,
  m: MIN,
  min: MIN,
  mins: MIN,
  minute: MIN,
  minutes: MIN,
  h: H,
  hr: H,
  hrs: H,
  hour: H,
  hours: H,
  std: H,
}

const TIME: MeasureKind = {
  noun: 'a time',
  examples: '1 h 25 min, 1:25 or 85 min',
  factors: FACTORS,
}

/**
 * Working time in whole seconds from `1 h 25 min`, `1:25`, `1h25`, `85 min`, `1,5 h`.
 *
 * With colons the parts are hours, minutes and, if there are three, seconds. A bare number is
 * refused unless `options.unit` is given. Refusals: `empty`, `not-a-number`, `ambiguous-number`,
 * `negative`, `unknown-unit`, `missing-unit`, `not-a-measure`, `too-large`.
 */
export function parseDuration(
  text: string,
  options: ParseOptions & Readonly<{ unit?: DurationUnit | undefined }> = {},
): ParseResult<DurationS> {
  const whole = parseWholeMeasure(spellOutClock(text), TIME, {
    ...options,
    bareUnit: options.unit,
    ...(text.includes(':') && { typed: text }),
  })
  if (!whole.ok) return whole
  const value = durationS(whole.value)
  return ok({ value, understood: formatDurationExactly(value) })
}

function spellOutClock(text: string): string {
  const tidy = tidyText(text)
  const clock = /^(-?)(\d{1,4}):([0-5]\d)(?::([0-5]\d))?$/.exec(tidy)
  if (clock) return `${clock[1]}${clock[2]} h ${clock[3]} min${clock[4] ? ` ${clock[4]} s` : ''}`
  return tidy.replace(/(\d) ?h ?([0-5]?\d)$/i, '$1 h $2 min')
}
