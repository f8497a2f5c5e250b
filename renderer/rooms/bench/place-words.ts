import type { Format } from '../../app/format.ts'
import { type BenchWork, isBegun } from './bench-places.ts'

/** Where the hand is in some work: `Diamond 2 of 2, row 9 of 23`. */
export function placeWords(work: BenchWork, format: Format): string {
  if (work.unitsDone >= work.units) return 'all stitched'
  if (!isBegun(work)) return 'not stitched yet'
  return handWords(work.hand, format) ?? `at step ${format.count(work.place.step + 1)}`
}

function handWords(hand: BenchWork['hand'], { count }: Format): string | undefined {
  if (hand === null) return undefined
  const { kind, name, number, of } = hand.at
  const which = `${count(number)} of ${count(of)}`
  const at = kind === 'row' ? `row ${which}` : of > 1 ? `${name}, ${which}` : name
  if (hand.pieces === 1) return at
  const copy = hand.copies > 1 ? ` ${count(hand.copy)} of ${count(hand.copies)}` : ''
  return `${hand.piece}${copy}${hand.isMirrored ? ', mirrored' : ''}, ${at}`
}
