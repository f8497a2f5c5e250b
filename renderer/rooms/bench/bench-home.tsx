import { useState } from 'react'
import { go } from '../../app/place.ts'
import { Room } from '../../app/room.tsx'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { Button, ButtonLink } from '../../ui/button.tsx'
import { EmptyState } from '../../ui/empty-state.tsx'
import { PACE_PAGE } from './bench-places.ts'
import { FinishedTable } from './finished-table.tsx'
import { MakeSheet } from './make-sheet.tsx'
import type { MakeStart } from './make-start.ts'
import { StartSheet } from './start-sheet.tsx'
import { useStart } from './use-start.ts'
import { WaitingTable } from './waiting-table.tsx'
import { WorkCards } from './work-cards.tsx'

type Open = Readonly<{ sheet: 'start' | 'log'; from: MakeStart }>

/** What is under way, what is promised and not begun, and what was finished lately. */
export function BenchHome({ startId }: Readonly<{ startId: string | undefined }>) {
  const format = useFormat()
  const underWay = useCall('bench.list', { state: 'under-way' })
  const finished = useCall('bench.list', { state: 'finished' })
  const designs = useCall('designs.list', {})
  const [open, setOpen] = useState<Open>()
  const hasDesigns = (designs.value?.designs.length ?? 0) > 0
  const asked = useStart(startId, underWay.value?.works)
  const close = () => {
    setOpen(undefined)
    if (startId !== undefined) go({ room: 'bench' }, { replace: true })
  }
  if (designs.value !== undefined && !hasDesigns) return <NoDesigns />
  return (
    <Room
      title="Bench"
      actions={
        hasDesigns && (
          <>
            <ButtonLink kind="quiet" href={`#/bench/${PACE_PAGE}`}>
              What the bench has taught
            </ButtonLink>
            <Button icon="check" onClick={() => setOpen({ sheet: 'log', from: {} })}>
              Log a make
            </Button>
            <Button
              kind="primary"
              icon="thread"
              onClick={() => setOpen({ sheet: 'start', from: {} })}
            >
              Start a piece
            </Button>
          </>
        )
      }
    >
      {underWay.value !== undefined && <WorkCards works={underWay.value.works} format={format} />}
      <WaitingTable
        works={underWay.value?.works ?? []}
        format={format}
        onStart={(from) => setOpen({ sheet: 'start', from })}
        onLog={(from) => setOpen({ sheet: 'log', from })}
      />
      {(finished.value?.works.length ?? 0) > 0 && (
        <FinishedTable works={finished.value?.works ?? []} format={format} />
      )}
      <p className="quiet bench-care">
        Look up now and then, rest your hands, and mind needles and blades.
      </p>
      {open?.sheet === 'log' && <MakeSheet start={open.from} onClose={close} />}
      {open?.sheet === 'start' && <StartSheet start={open.from} onClose={close} />}
      {open === undefined && asked !== undefined && (
        <StartSheet key={startId} start={asked} onClose={close} />
      )}
    </Room>
  )
}

function NoDesigns() {
  return (
    <Room title="Bench">
      <EmptyState
        picture="needle"
        action={
          <ButtonLink kind="primary" href="#/designs">
            Go to Designs
          </ButtonLink>
        }
      >
        Once there is a design, you work it here row by row: beads leave the drawers, pieces reach
        the Shelf, and the studio learns your pace.
      </EmptyState>
    </Room>
  )
}
