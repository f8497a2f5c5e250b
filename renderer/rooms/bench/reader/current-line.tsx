import { useMemo } from 'react'
import type { PlacedLine, ReaderMap } from '../../../../shared-core/bench/reader-place.ts'
import { slotRuns } from '../../../../shared-core/bench/reader-script.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { BeadLook } from '../../../drawing/bead-look.ts'
import { Swatch } from '../../../ui/swatch.tsx'
import type { Assembly } from '../../designs/assembly/assemble.ts'
import type { SlotBead } from '../../designs/page/slot-beads.ts'
import { LinePicture } from './line-picture.tsx'
import { lineName, lineSide, lineSlots, type Telling, tellBare, tellWork } from './tell-line.ts'
import './reader-line.css'

type CurrentLineProps = Readonly<{
  placed: PlacedLine
  /** The step in hand, where it goes on by bead. */
  step: number | undefined
  map: ReaderMap
  at: number
  body: DesignBody
  assembly: Assembly | undefined
  looks: readonly BeadLook[]
  beads: readonly SlotBead[]
  tell: Telling
  /** Thread and needle, where a length is begun. */
  tools: string
  onNext: () => void
}>

/** The row in hand: drawn, in large words, and how it is worked. A click anywhere on it goes on. */
export function CurrentLine(props: CurrentLineProps) {
  const { placed, step, tell, beads, onNext } = props
  const { line } = placed
  const slots = useMemo(
    () => (step === undefined ? lineSlots(line) : (line.steps[step]?.slots ?? [])),
    [line, step],
  )
  const side = lineSide(line)
  const bare = slots.length === 0 ? tellBare(placed, tell) : ''
  return (
    // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are the reader's own, heard everywhere
    // biome-ignore lint/a11y/noStaticElementInteractions: a larger place to click, beside the button below
    <div className={`reader-line${slots.length === 0 ? ' reader-line-bare' : ''}`} onClick={onNext}>
      <h2 className="reader-line-name">
        <span>{lineName(placed)}</span>
        {side !== '' && <span className="reader-line-side">{side}</span>}
        <span className="reader-line-of tabular">
          {[
            whichOf(placed),
            step !== undefined &&
              line.steps.length > 1 &&
              `step ${step + 1} of ${line.steps.length}`,
          ]
            .filter((part) => part !== false)
            .join(' · ')}
        </span>
      </h2>
      <LinePicture {...props} />
      {slots.length > 0 ? (
        <ol className={`reader-words${sizeClass(slots)}`}>
          {slotRuns(slots).map(({ slot, count }, at) => {
            const bead = beads[slot]
            return (
              // biome-ignore lint/suspicious/noArrayIndexKey: runs stand in the order of work
              <li key={at}>
                {bead !== undefined && (
                  <Swatch look={props.looks[slot] ?? null} size={SWATCH_PX} inText />
                )}
                <span>
                  {count} {tell.beadName(slot)}
                </span>
              </li>
            )
          })}
        </ol>
      ) : (
        <p className={`reader-bare${bare.length > BARE_SHORT ? ' reader-bare-long' : ''}`}>
          {bare}
        </p>
      )}
      {line.kind === 'thread' && <p className="reader-work">{props.tools}</p>}
      <p className="reader-work">{workWords(props)}</p>
    </div>
  )
}

/** Up to so many letters stand in one line at their largest. */
const BARE_SHORT = 18
/** Sharp at the largest letters. */
const SWATCH_PX = 96

/** Which row of how many, or which strand of those that hang here; nothing where there is but one. */
function whichOf({ rowAt, rows, piece, stretch }: PlacedLine): string | false {
  if (rowAt > 0) return `${rowAt} of ${rows} ${rows === 1 ? 'row' : 'rows'}`
  const strands = piece.stretches.filter(({ kind }) => kind === 'strand')
  if (stretch.kind !== 'strand' || strands.length < 2) return false
  return `${strands.indexOf(stretch) + 1} of ${strands.length} strands`
}

/** Many runs are written smaller, never under 40 px. */
function sizeClass(slots: readonly number[]): string {
  const runs = slotRuns(slots).length
  if (runs <= 3) return ' reader-words-few'
  return runs > 6 ? ' reader-words-many' : ''
}

function workWords({ placed, step, tell }: CurrentLineProps): string {
  const one = step === undefined ? undefined : placed.line.steps[step]
  if (one === undefined) return tellWork(placed, tell)
  return one.way === '' ? '' : `${one.way}.`
}
