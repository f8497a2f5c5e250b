import { type ReactNode, useMemo, useState } from 'react'
import type { ChartJson } from '../../../../shared-core/chart/chart-json.ts'
import type { PaletteSlot, Strand } from '../../../../shared-core/design/design.ts'
import type { Format } from '../../../app/format.ts'
import { go } from '../../../app/place.ts'
import { placeRefusal } from '../../../app/place-refusal.ts'
import { useAct } from '../../../app/use-act.ts'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import { useFormat } from '../../../app/use-format.ts'
import { BeadPicture } from '../../../drawing/bead-picture.tsx'
import { Button } from '../../../ui/button.tsx'
import { FigureList } from '../../../ui/figure-list.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { assemble } from '../assembly/assemble.ts'
import { findingLayer } from '../assembly/finding.ts'
import { firstFigures } from '../figures/first-figures.ts'
import { SlotCounts } from '../figures/slot-counts.tsx'
import type { MaterialRow } from '../page/open-design.ts'
import { useReading } from '../reading/use-reading.ts'
import { useWorkshopQuestion } from '../reading/use-workshop-question.ts'
import { type Draft, readTags } from './draft.ts'
import { DraftFields, draftFieldNames } from './draft-fields.tsx'
import { useDraftBody } from './use-draft-body.ts'
import { type SlotNaming, useSlotNames } from './use-slot-names.ts'
import './draft.css'

type DraftDeskProps = Readonly<{
  draft: Draft
  onDraft: (draft: Draft) => void
  chart: ChartJson
  /** Colours of its slots where the way in knows them. Keep it stable. */
  palette?: readonly PaletteSlot[] | undefined
  /** Strands that hang from the chart. Keep the list stable. */
  strands?: readonly Strand[] | undefined
  /** Materials that fill slots from the first day: `slot:A` to a material's id. */
  materials?: Readonly<Record<string, string>> | undefined
  /** Beads of stock by the letter of the slot they fill, to compare with what is needed. */
  inStock?: ReadonlyMap<string, MaterialRow> | undefined
  /** The view of the design that is opened once it is added; its page when left out. */
  opens?: string | undefined
  /** Kept with the first version: where the chart came from. */
  note: string
  /** Why it cannot be added now; the chart shown is then the last good one. */
  blocked?: string | undefined
  /** That is still being worked out, and will be over by itself. */
  isWaiting?: boolean
  /** What was understood, over the picture. */
  source: ReactNode
  /** Something to look at beside the picture of the beads. */
  beside?: ReactNode
  /** Told under the picture, before what every chart tells. */
  told?: ReactNode
  /** Fields that shape the chart itself, before the others. */
  children?: ReactNode
}>

const NO_LOOKS = [] as const

/** A chart on its way to a design: drawn as beads with what follows from it, and what must still be said. */
export function DraftDesk(props: DraftDeskProps) {
  const { draft, chart, palette, strands } = props
  const tables = useBeadTables()
  const format = useFormat()
  const body = useDraftBody(draft, chart, { palette, strands })
  const answer = useReading(useWorkshopQuestion(body))
  const reading = answer?.ok === true ? answer.value : undefined
  const naming = useSlotNames()
  const assembly = useMemo(() => assemble({ body, tables, looks: NO_LOOKS }), [body, tables])
  const layers = useMemo(() => [findingLayer(assembly?.findings ?? [])], [assembly])
  return (
    <div className="draft">
      <div className="draft-seen">
        {props.source}
        <div className={props.beside === undefined ? undefined : 'draft-side-by-side'}>
          {props.beside}
          {assembly !== undefined && (
            <BeadPicture
              scene={assembly.scene}
              layers={layers}
              label="The chart, drawn as beads"
              description={`${format.counted(assembly.scene.xMm.length, 'bead')} in ${format.counted(chart.rows.length, 'row')}.`}
            />
          )}
        </div>
        {props.told}
        <FigureList row figures={firstFigures(reading, body, format)} />
        <SlotCounts
          reading={reading}
          palette={body.palette}
          format={format}
          inStock={props.inStock}
          naming={naming}
        />
        {answer?.ok === false && <RefusalNotice refusal={answer.error} />}
      </div>
      <DraftSaid {...props} body={body} naming={naming} format={format} />
    </div>
  )
}

type Body = ReturnType<typeof useDraftBody>

function DraftSaid({
  draft,
  onDraft,
  materials,
  note,
  opens,
  blocked,
  isWaiting = false,
  children,
  body,
  naming,
  format,
}: DraftDeskProps & Readonly<{ body: Body; naming: SlotNaming; format: Format }>) {
  const [isTold, setTold] = useState(false)
  const save = useAct('designs.save', { said: (_, { name }) => `Added ${name}`, of: [draft, body] })
  const { at, above } = placeRefusal(save.refusal, draftFieldNames)
  async function confirm() {
    const name = draft.name.trim()
    setTold(blocked !== undefined)
    if (blocked !== undefined) return
    const fillings = materials === undefined ? {} : { materials }
    const saved = await save.act({
      ...{ name, note, tags: readTags(draft.tags) },
      // Names are typed after all else: they shape nothing that is computed.
      body: mutable({ ...body, palette: naming.named(body.palette) }),
      ...fillings,
    })
    if (saved.ok) go({ room: 'designs', id: saved.value.id, sub: opens })
  }
  const filled = Object.keys(materials ?? {}).length
  return (
    <div className="draft-said">
      {children}
      <DraftFields draft={draft} onChange={onDraft} decimal={format.decimal} errorAt={at} />
      {above !== undefined && <RefusalNotice refusal={above} />}
      <div className="draft-confirm">
        <Button
          kind="primary"
          icon="check"
          busy={save.isBusy}
          disabled={isWaiting}
          onClick={() => void confirm()}
        >
          Add this design
        </Button>
        {isTold && blocked !== undefined ? (
          <p className="field-error" role="alert">
            {blocked}
          </p>
        ) : (
          <p className="designs-quiet">
            {blocked ??
              (filled === 0
                ? 'Beads from stock are chosen on its page.'
                : `${format.counted(filled, 'slot')} filled from stock already.`)}
          </p>
        )}
      </div>
    </div>
  )
}

type Saved = Parameters<ReturnType<typeof useAct<'designs.save'>>['act']>[0]['body']

/** The contract's type of the same shape. */
function mutable(body: Body): Saved {
  return body as Saved
}
