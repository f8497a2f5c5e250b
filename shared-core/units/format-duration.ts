import type { DurationS } from './duration.ts'
import { MINUS } from './format-number.ts'

/**
 * Working time in hours and whole minutes, ties to the longer: 1 h 25 min, 45 min, 2 h.
 *
 * Under a minute in seconds.
 * @example formatDuration(durationS(5100)) // 1 h 25 min
 */
export function formatDuration(duration: DurationS): string {
  const sign = duration < 0 ? MINUS : ''
  const seconds = Math.abs(duration)
  if (seconds > 0 && seconds < 60) return `${sign}${seconds} s`
  const minutes = Math.floor((seconds + 30) / 60)
  return sign + joined([part(Math.floor(minutes / 60), 'h'), part(minutes % 60, 'min')], 'min')
}

/** Working time with its seconds, for restating what was typed. @example 1 h 25 min 30 s */
export function formatDurationExactly(duration: DurationS): string {
  const seconds = Math.abs(duration)
  const parts = [
    part(Math.floor(seconds / 3600), 'h'),
    part(Math.floor(seconds / 60) % 60, 'min'),
    part(seconds % 60, 's'),
  ]
  return (duration < 0 ? MINUS : '') + joined(parts, 'min')
}

function part(value: number, unit: string): string {
  return value === 0 ? '' : `${value} ${unit}`
}

function joined(parts: readonly string[], zeroUnit: string): string {
  return parts.filter((text) => text !== '').join(' ') || `0 ${zeroUnit}`
}
