import type { PlacedLine } from '../../../../shared-core/bench/reader-place.ts'
import type { HoleNote } from '../../../../shared-core/bench/reader-script.ts'
import { lineName } from './tell-line.ts'

/** What happens to holes in a line, a sentence for each kind: the last pass that fits, the first that sticks. */
export function tellHoles(placed: PlacedLine): readonly string[] {
  const { holes } = placed.line
  const sticks = holes.filter(({ kind }) => kind === 'sticks')
  const fills = holes.filter(({ kind }) => kind === 'fills')
  const told: string[] = []
  if (sticks.length > 0) {
    told.push(
      `The needle may stick: ${holesOf(sticks)} ${passes(sticks)}, and this is one more. Take a finer needle or thinner thread, and do not force it.`,
    )
  }
  if (fills.length > 0) {
    told.push(
      `Last pass through ${holesOf(fills)}: full after ${lineName(placed).toLowerCase()}. Pull gently.`,
    )
  }
  return told
}

function holesOf(notes: readonly HoleNote[]): string {
  return notes.length === 1 ? 'one hole' : `${notes.length} holes`
}

function passes(notes: readonly HoleNote[]): string {
  const most = Math.max(...notes.map(({ holds }) => holds))
  return `${notes.length === 1 ? 'holds' : 'hold'} ${most} passes`
}
