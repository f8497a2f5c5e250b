import type { PlacedLine } from '../../../../shared-core/bench/reader-place.ts'
import {
  lineName,
  lineSide,
  lineSlots,
  pieceName,
  type Telling,
  tellBare,
  tellBeads,
  tellStep,
} from './tell-line.ts'

type NextLineProps = Readonly<{
  next: PlacedLine | undefined
  placed: PlacedLine
  /** The step in hand, where it goes on by bead. */
  step: number | undefined
  tell: Telling
}>

/** What comes after, small: the next bead of the row, or the next row. */
export function NextLine({ next, placed, step, tell }: NextLineProps) {
  const one = step === undefined ? undefined : placed.line.steps[step + 1]
  if (one !== undefined) {
    return (
      <p className="reader-then">
        <span className="reader-then-name">Then</span> {tellStep(one, tell)}
      </p>
    )
  }
  if (next === undefined) return <p className="reader-then">Then it is done.</p>
  const slots = lineSlots(next.line)
  const side = lineSide(next.line)
  const isNewPiece = next.piece !== placed.piece || next.from < placed.from
  return (
    <p className="reader-then">
      <span className="reader-then-name">
        {`Then ${isNewPiece ? `${pieceName(next.piece)}: ` : ''}${lineName(next)}${side === '' ? '' : ` ${side}`}`}
      </span>{' '}
      {slots.length > 0 ? tellBeads(slots, tell) : tellBare(next, tell)}
    </p>
  )
}
