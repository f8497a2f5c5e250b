import type { Format } from '../../app/format.ts'
import { type BenchWork, isBegun } from './bench-places.ts'

/** What of some work says where the hand is. */
export type PlacedWork = Pick<BenchWork, 'place' | 'hand' | 'workedS' | 'units' | 'unitsDone'>

/** Where the hand is in some work: `Diamond 2 of 2, row 9 of 23`. */
export function placeWords(work: PlacedWork, format: Format): string {
  if (work.unitsDone >= work.units) return 'all stitched'
  if (!isBegun(work)) return 'not stitched yet'
  return handWords(work.hand, format) ?? `at step ${format.count(work.place.step + 1)}`
}

function handWords(hand: BenchWork['hand'], { count }: Format): string | undefined {
  if (hand === null) return undefined
  const at = atWords(hand.at, count)
  if (hand.pieces === 1) return at
  const copy = hand.copies > 1 ? ` ${count(hand.copy)} of ${count(hand.copies)}` : ''
  return `${hand.piece}${copy}${hand.isMirrored ? ', mirrored' : ''}, ${at}`
}

type At = NonNullable<BenchWork['hand']>['at']

function atWords(at: At, count: Format['count']): string {
  const of = count(at.of)
  if (at.kind === 'row') {
    return `${at.rows.length > 1 ? 'rows' : 'row'} ${at.rows.map(count).join(' and ')} of ${of}`
  }
  return at.of > 1 ? `${at.name}, ${count(at.number)} of ${of}` : at.name
}
