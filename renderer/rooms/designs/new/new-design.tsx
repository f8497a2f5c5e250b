import { useMemo, useRef, useState } from 'react'
import { toChartJson } from '../../../../shared-core/chart/chart-json.ts'
import {
  chartFromOutline,
  OUTLINE_KINDS,
  type OutlineKind,
} from '../../../../shared-core/chart/outlines/chart-from-outline.ts'
import { parseCount } from '../../../../shared-core/units/parse-count.ts'
import { hrefTo } from '../../../app/place.ts'
import { Room } from '../../../app/room.tsx'
import { useFormat } from '../../../app/use-format.ts'
import { ButtonLink } from '../../../ui/button.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { QuantityInput } from '../../../ui/quantity-input.tsx'
import { Select } from '../../../ui/select.tsx'
import { DraftDesk } from '../draft/draft-desk.tsx'
import { capital, stitchOptions } from '../draft/trade-options.ts'
import { BRING_IN } from '../places.ts'

/** Stitches whose rows can follow an outline. */
const outlineStitches = stitchOptions.filter(({ value }) =>
  ['brick', 'peyote', 'square', 'loom'].includes(value),
)
const kindOptions = OUTLINE_KINDS.map((value) => ({ value, label: capital(value) }))

type Wanted = Readonly<{
  kind: OutlineKind
  stitch: (typeof stitchOptions)[number]['value']
  columns: number
  rows: number
}>

/** A new design from a shape: an outline worked in legal steps, all of one bead, to be painted later. */
export function NewDesign() {
  const [wanted, setWanted] = useState<Wanted>({
    kind: 'diamond',
    stitch: 'brick',
    columns: 13,
    rows: 25,
  })
  const drawn = useMemo(() => chartFromOutline(wanted), [wanted])
  const chart = useLastGood(
    useMemo(() => (drawn.ok ? toChartJson(drawn.value.chart) : undefined), [drawn]),
  )
  return (
    <Room
      title="New design"
      back={{ href: '#/designs', label: 'Designs' }}
      actions={
        <ButtonLink icon="file" href={hrefTo({ room: 'designs', id: BRING_IN })}>
          Bring in a chart instead
        </ButtonLink>
      }
    >
      {chart !== undefined && (
        <DraftDesk
          chart={chart}
          firstName=""
          note={`Drawn as a ${wanted.kind}`}
          source={
            <div className="draft-understood">
              <p>The outline in steps that can be stitched, all in slot A for now.</p>
              {drawn.ok && drawn.value.notes.map((sentence) => <p key={sentence}>{sentence}</p>)}
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

/** The latest value there was: the picture stays while a size that cannot be drawn is being typed. */
function useLastGood<T>(value: T | undefined): T | undefined {
  const good = useRef(value)
  if (value !== undefined) good.current = value
  return good.current
}

function OutlineFields({
  wanted,
  onChange,
}: Readonly<{ wanted: Wanted; onChange: (wanted: Wanted) => void }>) {
  const set = (part: Partial<Wanted>) => onChange({ ...wanted, ...part })
  return (
    <>
      <div className="designs-pair">
        <Select
          label="Shape"
          value={wanted.kind}
          options={kindOptions}
          onChange={(kind) => set({ kind })}
        />
        <Select
          label="Stitch"
          value={wanted.stitch}
          options={outlineStitches}
          onChange={(stitch) => set({ stitch })}
        />
      </div>
      <div className="designs-pair">
        <SizeInput
          label="Beads across"
          first={wanted.columns}
          onChange={(columns) => set({ columns })}
        />
        <SizeInput label="Rows" first={wanted.rows} onChange={(rows) => set({ rows })} />
      </div>
    </>
  )
}

function SizeInput({
  label,
  first,
  onChange,
}: Readonly<{ label: string; first: number; onChange: (count: number) => void }>) {
  const { decimal } = useFormat()
  const [text, setText] = useState(String(first))
  return (
    <QuantityInput
      label={label}
      text={text}
      parse={(typed) => parseCount(typed, { decimal })}
      onText={(typed, count) => {
        setText(typed)
        if (count !== undefined) onChange(count)
      }}
    />
  )
}
