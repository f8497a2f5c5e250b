import type { PlacedLine } from '../../../../shared-core/bench/reader-place.ts'
import type { HoleNote, ReaderLine } from '../../../../shared-core/bench/reader-script.ts'
import { lineName } from './tell-line.ts'

/** The holes that fill or stick in a line, or in one step of it. */
export function holesAt({ holes, firstStep }: ReaderLine, step: number | undefined) {
  return step === undefined ? holes : holes.filter((hole) => hole.step === firstStep + step)
}

/**
 * What happens to holes in a line, or in one step of it, a sentence for each kind: the last pass that
 * fits, the first that sticks.
 */
export function tellHoles(placed: PlacedLine, step: number | undefined): readonly string[] {
  const holes = holesAt(placed.line, step)
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
      `Last pass through ${holesOf(fills)}: full after ${step === undefined ? lineName(placed).toLowerCase() : 'this'}. Pull gently.`,
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
