import { useDeferredValue, useMemo, useState } from 'react'
import { stitchName } from '../../../../shared-core/chart/stitch-name.ts'
import { Room } from '../../../app/room.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { firstDraft } from '../draft/draft.ts'
import { DraftDesk } from '../draft/draft-desk.tsx'
import { DRAW } from '../places.ts'
import { drawShape, type ShapeWanted } from './outline-draft.ts'
import { OutlineFields, shapeName } from './outline-fields.tsx'
import { toWays } from './to-ways.ts'
import { useLastGood } from './use-last-good.ts'

const first: ShapeWanted = {
  kind: 'diamond',
  stitch: 'brick',
  columns: 13,
  rows: 25,
  top: 'triangle',
  grade: 'point',
  shortest: 6,
  longest: 18,
  tip: 1,
}

/** A new design from a shape: an outline worked in legal steps, with a fringe if she likes. */
export function OutlinePage() {
  const [wanted, setWanted] = useState(first)
  const [draft, setDraft] = useState(firstDraft)
  // The sliders stay under the hand while a large shape is being drawn.
  const asked = useDeferredValue(wanted)
  const drawn = useMemo(() => drawShape(asked), [asked])
  const shape = useLastGood(drawn.ok ? drawn.value : undefined)
  const name = shapeName(asked.kind)
  return (
    <Room title="From an outline" back={toWays}>
      {shape !== undefined && (
        <DraftDesk
          draft={draft}
          onDraft={setDraft}
          opens={DRAW}
          chart={shape.chart}
          strands={shape.strands}
          note={`Drawn as a ${name}`}
          blocked={drawn.ok ? undefined : 'Give a size that can be drawn first.'}
          source={
            <div className="draft-understood">
              <p>
                {`A ${name} in steps that can be stitched in ${stitchName(asked.stitch)}. `}
                {asked.kind === 'fringe'
                  ? 'Slot A with tips in slot B, to be painted.'
                  : 'All in slot A, to be painted.'}
              </p>
              {shape.notes.map((sentence) => (
                <p key={sentence}>{sentence}</p>
              ))}
            </div>
          }
        >
          <OutlineFields wanted={wanted} onChange={setWanted} />
          {!drawn.ok && <RefusalNotice refusal={drawn.error} />}
        </DraftDesk>
      )}
    </Room>
  )
}
