import { useMemo, useState } from 'react'
import type { StitchKind } from '../../../../shared-core/chart/chart.ts'
import { toChartJson } from '../../../../shared-core/chart/chart-json.ts'
import {
  type BlankEdge,
  blankChart,
  canStep,
} from '../../../../shared-core/chart/outlines/blank-chart.ts'
import type { OutlineSize } from '../../../../shared-core/chart/outlines/chart-from-outline.ts'
import { sizeInBeads } from '../../../../shared-core/chart/outlines/size-in-beads.ts'
import { stitchName } from '../../../../shared-core/chart/stitch-name.ts'
import { err } from '../../../../shared-core/result.ts'
import { withMark } from '../../../../shared-core/units/with-mark.ts'
import { Room } from '../../../app/room.tsx'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import { useFormat } from '../../../app/use-format.ts'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { SegmentedChoice } from '../../../ui/segmented-choice.tsx'
import { Select } from '../../../ui/select.tsx'
import { type Draft, firstDraft } from '../draft/draft.ts'
import { DraftDesk } from '../draft/draft-desk.tsx'
import { stitchOptions } from '../draft/trade-options.ts'
import { DRAW } from '../places.ts'
import { beadSizeOf } from './bead-size.ts'
import { tooManyBeads } from './drawable.ts'
import { ExtentInput } from './extent-input.tsx'
import { extentOf } from './extent-of.ts'
import { toWays } from './to-ways.ts'
import { useLastGood } from './use-last-good.ts'

type Wanted = Readonly<{ stitch: StitchKind; across: string; down: string; edge: BlankEdge }>

const first: Wanted = { stitch: 'brick', across: '40 mm', down: '30 mm', edge: 'straight' }

/** A blank chart of a stitch and a size, in whatever measure the maker thinks. */
export function BlankPage() {
  const [wanted, setWanted] = useState(first)
  const [draft, setDraft] = useState(firstDraft)
  const { size, made } = useBlank(wanted, draft)
  const chart = useLastGood(
    useMemo(() => (made?.ok === true ? toChartJson(made.value) : undefined), [made]),
  )
  const blocked = made?.ok === true ? undefined : 'Give a size that can be read first.'
  return (
    <Room title="Blank chart" back={toWays}>
      {chart !== undefined && (
        <DraftDesk
          {...{ draft, chart, blocked }}
          onDraft={setDraft}
          opens={DRAW}
          note={`Begun blank in ${stitchName(wanted.stitch)}`}
          source={<Understood stitch={wanted.stitch} size={size} />}
        >
          <BlankFields wanted={wanted} onChange={setWanted} />
          {made?.ok === false && <RefusalNotice refusal={made.error} />}
        </DraftDesk>
      )}
    </Room>
  )
}

function useBlank({ stitch, across, down, edge }: Wanted, { formId, threadId }: Draft) {
  const format = useFormat()
  const tables = useBeadTables()
  return useMemo(() => {
    const ends = { across: extentOf(across, format.decimal), down: extentOf(down, format.decimal) }
    if (ends.across === undefined || ends.down === undefined) return { size: undefined }
    const wantedSize = { across: ends.across, down: ends.down }
    const size = sizeInBeads(stitch, wantedSize, beadSizeOf({ formId, threadId }, tables).size)
    const fault = tooManyBeads(size, format.count)
    return { size, made: fault ? err(fault) : blankChart({ stitch, edge, ...size }) }
  }, [stitch, across, down, edge, formId, threadId, format, tables])
}

function Understood({
  stitch,
  size,
}: Readonly<{ stitch: StitchKind; size: OutlineSize | undefined }>) {
  const format = useFormat()
  const [across, down] = stitch === 'right-angle-weave' ? ['unit', 'unit'] : ['bead', 'row']
  return (
    <div className="draft-understood">
      <p>
        {size === undefined
          ? 'The last size that could be read.'
          : `${format.counted(size.columns, across)} across and ${format.counted(size.rows, down)} down in ${stitchName(stitch)}, all in slot A.`}
      </p>
      <p className="designs-quiet">Paint it on the drawing table. Nothing is written yet.</p>
    </div>
  )
}

function BlankFields({
  wanted,
  onChange,
}: Readonly<{ wanted: Wanted; onChange: (wanted: Wanted) => void }>) {
  const { decimal } = useFormat()
  const set = (part: Partial<Wanted>) => onChange({ ...wanted, ...part })
  return (
    <>
      <Select
        label="Stitch"
        value={wanted.stitch}
        options={stitchOptions}
        onChange={(stitch) => set({ stitch })}
      />
      <div className="designs-pair">
        <ExtentInput
          label="Width"
          hint={withMark('40 mm, 1.5 in or 24 beads', decimal)}
          text={wanted.across}
          onText={(across) => set({ across })}
        />
        <ExtentInput
          label="Height"
          hint="Also in rows: 30 rows"
          text={wanted.down}
          onText={(down) => set({ down })}
        />
      </div>
      {canStep(wanted.stitch) && (
        <SegmentedChoice
          label="Sides"
          value={wanted.edge}
          options={[
            { value: 'straight', label: 'Straight' },
            { value: 'stepped', label: 'Stepped to the right' },
          ]}
          onChange={(edge) => set({ edge })}
        />
      )}
    </>
  )
}
