import { type ReactNode, useMemo, useState } from 'react'
import { referenceTables } from '../../../../shared-core/beads/bead-tables.ts'
import type { ChartJson } from '../../../../shared-core/chart/chart-json.ts'
import { go } from '../../../app/place.ts'
import { useAct } from '../../../app/use-act.ts'
import { useFormat } from '../../../app/use-format.ts'
import { BeadPicture } from '../../../drawing/bead-picture.tsx'
import { Button } from '../../../ui/button.tsx'
import { FigureList } from '../../../ui/figure-list.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { assemble } from '../assembly/assemble.ts'
import { firstFigures } from '../figures/first-figures.ts'
import { SlotCounts } from '../figures/slot-counts.tsx'
import { useReading } from '../reading/use-reading.ts'
import { type Draft, draftBody, firstDraft, readTags } from './draft.ts'
import { DraftFields } from './draft-fields.tsx'
import './draft.css'

const NO_WEIGHINGS = {}
const NO_LOOKS = [] as const

/** A chart on its way to a design: drawn as beads with what follows from it, and what must still be said. */
export function DraftDesk({
  chart,
  firstName,
  note,
  source,
  children,
}: Readonly<{
  chart: ChartJson
  firstName: string
  /** Kept with the first version: where the chart came from. */
  note: string
  /** What was understood, over the picture. */
  source: ReactNode
  /** Fields that shape the chart itself, before the others. */
  children?: ReactNode
}>) {
  const format = useFormat()
  const [draft, setDraft] = useState<Draft>({ ...firstDraft, name: firstName })
  const [isNameMissing, setNameMissing] = useState(false)
  const save = useAct('designs.save', { said: (_, { name }) => `Added ${name}` })
  const { shape, mirrored, formId, threadId, needleSize, extras, unitName } = draft
  const body = useMemo(
    () =>
      draftBody(chart, {
        ...firstDraft,
        ...{ shape, mirrored, formId, threadId, needleSize, extras, unitName },
      }),
    [chart, shape, mirrored, formId, threadId, needleSize, extras, unitName],
  )
  const question = useMemo(() => ({ body, calibrations: NO_WEIGHINGS }), [body])
  const answer = useReading(question)
  const reading = answer?.ok === true ? answer.value : undefined
  const assembly = useMemo(
    () => assemble({ body, tables: referenceTables, looks: NO_LOOKS }),
    [body],
  )
  async function confirm() {
    const name = draft.name.trim()
    setNameMissing(name === '')
    if (name === '') return
    const saved = await save.act({ name, tags: readTags(draft.tags), body: mutable(body), note })
    if (saved.ok) go({ room: 'designs', id: saved.value.id })
  }
  return (
    <div className="draft">
      <div className="draft-seen">
        {source}
        {assembly !== undefined && (
          <BeadPicture
            scene={assembly.scene}
            label="The chart, drawn as beads"
            description={`${format.counted(assembly.scene.xMm.length, 'bead')} in ${format.counted(chart.rows.length, 'row')}.`}
          />
        )}
        <FigureList row figures={firstFigures(reading, body, format)} />
        <SlotCounts reading={reading} palette={body.palette} format={format} />
        {answer?.ok === false && <RefusalNotice refusal={answer.error} />}
      </div>
      <div className="draft-said">
        {children}
        <DraftFields
          draft={draft}
          onChange={setDraft}
          decimal={format.decimal}
          nameError={
            isNameMissing && draft.name.trim() === ''
              ? 'The design has no name yet. Give it one you will know it by.'
              : undefined
          }
        />
        {save.refusal !== undefined && <RefusalNotice refusal={save.refusal} />}
        <div className="draft-confirm">
          <Button kind="primary" icon="check" busy={save.isBusy} onClick={() => void confirm()}>
            Add this design
          </Button>
          <p className="designs-quiet">Beads from stock are chosen on its page.</p>
        </div>
      </div>
    </div>
  )
}

type Saved = Parameters<ReturnType<typeof useAct<'designs.save'>>['act']>[0]['body']

/** The contract's type of the same shape. */
function mutable(body: ReturnType<typeof draftBody>): Saved {
  return body as Saved
}
