import Big from 'big.js'
import { formatNumber, withoutTrailingZeros } from './format-number.ts'
import type { ThreadMm } from './length.ts'
import type { DecimalMark } from './parse-options.ts'
import { roundHalfAway } from './rounding.ts'

/** Whether a screen shows metres or yards. */
export type LengthSystem = 'metric' | 'imperial'

/** How a length is shown. */
export type LengthStyle = Readonly<{ decimal: DecimalMark; system?: LengthSystem | undefined }>

/**
 * A length of thread with the digits a tape knows.
 *
 * Metric: mm under 10 cm, cm under 1 m, then m. Imperial: inches under a yard, then yards. Nothing is
 * 0 m or 0 yd, as a spool is read.
 * @example formatThread(threadMm(4123), { decimal: '.' }) // 4.12 m
 */
export function formatThread(length: ThreadMm, style: LengthStyle): string {
  const size = Math.abs(length)
  if (length === 0) return style.system === 'imperial' ? '0 yd' : '0 m'
  if (style.system === 'imperial') {
    return size < 914
      ? figure(length, { perUnit: '25.4', digits: 1, unit: 'in', mark: style.decimal })
      : figure(length, { perUnit: '914.4', digits: 2, unit: 'yd', mark: style.decimal })
  }
  if (size < 100)
    return figure(length, { perUnit: '1', digits: 0, unit: 'mm', mark: style.decimal })
  if (size < 1000) {
    return figure(length, { perUnit: '10', digits: 1, unit: 'cm', mark: style.decimal })
  }
  const digits = size < 10_000 ? 2 : size < 100_000 ? 1 : 0
  return figure(length, { perUnit: '1000', digits, unit: 'm', mark: style.decimal })
}

/**
 * A width or height of finished work: mm to a tenth under 10 cm, else cm to a tenth; inches to a
 * hundredth.
 * @example formatGeometry(18.43, { decimal: '.' }) // 18.4 mm
 */
export function formatGeometry(mm: number, style: LengthStyle): string {
  const mark = style.decimal
  if (style.system === 'imperial') {
    return figure(mm, { perUnit: '25.4', digits: 2, unit: 'in', mark })
  }
  return Math.abs(mm) < 100
    ? figure(mm, { perUnit: '1', digits: 1, unit: 'mm', mark })
    : figure(mm, { perUnit: '10', digits: 1, unit: 'cm', mark })
}

/** A length in mm with every digit it has, up to a millionth, for restating what was typed. */
export function formatMillimetresExactly(mm: number, mark: DecimalMark): string {
  return `${formatNumber(withoutTrailingZeros(roundHalfAway(String(mm), 6)), mark)} mm`
}

function figure(
  mm: number,
  how: Readonly<{ perUnit: string; digits: number; unit: string; mark: DecimalMark }>,
): string {
  const rounded = roundHalfAway(new Big(mm).div(how.perUnit), how.digits)
  return `${formatNumber(withoutTrailingZeros(rounded), how.mark)} ${how.unit}`
}
