import type { ReaderStep } from '../../../../shared-core/bench/reader-script.ts'
import { capital } from '../../../app/capital.ts'

/** The bridges of a row in words: `First two together under bridge 2, lock. Then bridges 3 to 5`. */
export function tellBridges(steps: readonly ReaderStep[]): string {
  const [first, ...rest] = steps
  if (first === undefined) return ''
  const later = bridgeRuns(rest.flatMap(placesOf))
  if (first.beads.length < 2 || first.bridges.length === 0) {
    const all = bridgeRuns(steps.flatMap(placesOf))
    const lock = steps.some(({ hasLock }) => hasLock) ? ', lock' : ''
    return all === '' ? '' : `${capital(all)}${lock}`
  }
  const pair =
    first.beads.length === 2 ? 'First two together' : `First ${first.beads.length} together`
  const lock = first.hasLock ? ', lock' : ''
  const begin = `${pair} under bridge ${placesOf(first).join(' and ')}${lock}`
  return later === '' ? begin : `${begin}. Then ${later}`
}

/** A step goes under one bridge, however often. */
function placesOf({ bridges }: ReaderStep): readonly number[] {
  return [...new Set(bridges.map(({ place }) => place))]
}

/** Places in order as runs that count up: `bridges 2 to 5, then 5 again`. */
export function bridgeRuns(places: readonly number[]): string {
  const runs: { from: number; to: number }[] = []
  for (const place of places) {
    const last = runs.at(-1)
    if (last !== undefined && place === last.to + 1) last.to = place
    else runs.push({ from: place, to: place })
  }
  const told = runs.map(({ from, to }, at) => {
    if (from === runs[at - 1]?.to && from === to) return `${from} again`
    return from === to ? String(from) : `${from} to ${to}`
  })
  if (told.length === 0) return ''
  if (places.length === 2 && places[0] === places[1]) return `bridge ${places[0]} twice`
  return `${places.length > 1 ? 'bridges' : 'bridge'} ${told.join(', then ')}`
}
