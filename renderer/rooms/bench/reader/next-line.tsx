import type { PlacedLine } from '../../../../shared-core/bench/reader-place.ts'
import {
  lineName,
  lineSide,
  lineSlots,
  pieceName,
  type Telling,
  tellBare,
  tellBeads,
} from './tell-line.ts'

/** What comes after, small. */
export function NextLine({
  next,
  placed,
  tell,
}: Readonly<{ next: PlacedLine | undefined; placed: PlacedLine; tell: Telling }>) {
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
