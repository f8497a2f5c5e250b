import { Dialog as Base } from '@base-ui/react/dialog'
import { useRef } from 'react'
import type { ReaderPlace } from '../../../../shared-core/bench/reader-place.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { Learned } from '../../../../shared-core/design/learned.ts'
import { Button } from '../../../ui/button.tsx'
import { EmptyState } from '../../../ui/empty-state.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import type { MaterialRow } from '../../designs/page/open-design.ts'
import { ReaderDesk } from './reader-desk.tsx'
import type { Kept } from './use-bench-work.ts'
import { useScript } from './use-script.ts'
import './reader.css'

export type { ReaderPlace } from '../../../../shared-core/bench/reader-place.ts'

/** A make as the reader takes it up, and what it tells while the work goes on. */
export type RowReaderProps = Readonly<{
  title: string
  body: DesignBody
  /** Which material fills each key of the bill. */
  fillings: Readonly<Record<string, string>>
  materials: readonly MaterialRow[]
  /** What this workshop has learnt of itself, as it stood when the work was taken up. */
  learned: Learned
  /** How many are made. */
  units: number
  /** Where the work stood, and the time counted up to then, s. */
  place: ReaderPlace
  workedS: number
  /** Told at every move, every 15 s, and when the reader goes. */
  onKeep: (kept: Kept) => void
  /** All is made, and the maker said so. */
  onFinish: () => void
  onLeave: () => void
}>

/** The row reader: fills the window, so that the row can be read from a metre, and takes keys, pedal and clicks. */
export function RowReader(props: RowReaderProps) {
  const { title, onLeave } = props
  const { map, refusal, beads, looks, assembly, tools } = useScript(props)
  const onEscape = useRef<() => boolean>(() => false)
  const first = useRef<HTMLButtonElement>(null)
  const isEmpty = map !== undefined && map.steps === 0
  return (
    <Base.Root
      open
      disablePointerDismissal
      onOpenChange={(next) => {
        if (!next && !onEscape.current()) onLeave()
      }}
    >
      <Base.Portal>
        <Base.Popup className="reader" initialFocus={first}>
          {map === undefined || isEmpty ? (
            <div className="reader-nothing">
              <Base.Title render={<h1>{title}</h1>} />
              {refusal === undefined ? (
                <EmptyState picture="strand">
                  This design has no beads to be stitched yet.
                </EmptyState>
              ) : (
                <RefusalNotice refusal={refusal} />
              )}
              <Button ref={first} kind="primary" onClick={onLeave}>
                Leave the reader
              </Button>
            </div>
          ) : (
            <ReaderDesk {...props} {...{ map, beads, looks, assembly, tools, onEscape, first }} />
          )}
        </Base.Popup>
      </Base.Portal>
    </Base.Root>
  )
}
