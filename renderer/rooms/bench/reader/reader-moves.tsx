import type { RefObject } from 'react'
import type { ReaderStride } from '../../../../shared-core/bench/reader-place.ts'
import type { ReaderLine } from '../../../../shared-core/bench/reader-script.ts'
import type { KeyRole } from './key-roles.ts'
import './reader-moves.css'

type ReaderMovesProps = Readonly<{
  at: number
  line: ReaderLine
  /** The step of the line in hand. */
  step: number
  stride: ReaderStride
  isDone: boolean
  /** How long the bead timer runs for this step; absent while it is off. */
  drainMs: number | undefined
  first: RefObject<HTMLButtonElement | null>
  onRole: (role: KeyRole) => void
}>

/** The two large buttons: back, and on. */
export function ReaderMoves(props: ReaderMovesProps) {
  const { at, line, step, stride, isDone, drainMs, first, onRole } = props
  return (
    <div className="reader-moves">
      <button
        type="button"
        className="reader-back"
        data-reader-move
        disabled={at === 0}
        onClick={() => onRole('back')}
      >
        Back
      </button>
      <button
        ref={first}
        type="button"
        className="reader-next"
        data-reader-move
        onClick={() => onRole('next')}
      >
        {isDone ? 'Finish' : nextName(line, step, stride)}
        {drainMs !== undefined && (
          <span key={at} className="reader-drain" style={{ animationDuration: `${drainMs}ms` }} />
        )}
      </button>
    </div>
  )
}

function nextName({ kind, steps }: ReaderLine, step: number, stride: ReaderStride): string {
  if (kind !== 'row') return 'Next'
  return stride === 'step' && step + 1 < steps.length ? 'Next bead' : 'Next row'
}
