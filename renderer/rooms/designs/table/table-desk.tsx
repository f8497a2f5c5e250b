import { type KeyboardEvent, useCallback, useMemo, useState } from 'react'
import { isTyping } from '../../../app/is-typing.ts'
import { hrefTo } from '../../../app/place.ts'
import { Room } from '../../../app/room.tsx'
import { useFormat } from '../../../app/use-format.ts'
import { Button } from '../../../ui/button.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import type { DesignDetail, Fillings, MaterialRow } from '../page/open-design.ts'
import { slotBeads } from '../page/slot-beads.ts'
import { useWorkshopQuestion } from '../reading/use-workshop-question.ts'
import { BehindNotice } from './behind-notice.tsx'
import { liveBody } from './live-body.ts'
import { PalettePanel } from './palette-panel.tsx'
import { SaveSheet } from './save-sheet.tsx'
import { TableBar } from './table-bar.tsx'
import { TableFigures } from './table-figures.tsx'
import { answerTableKey } from './table-keys.ts'
import { TableKeysSheet } from './table-keys-sheet.tsx'
import { TableParts } from './table-parts.tsx'
import { TableStage } from './table-stage.tsx'
import { ToolRail } from './tool-rail.tsx'
import type { Draft } from './use-draft.ts'
import { useLiveReading } from './use-live-reading.ts'
import { useTableModel } from './use-table-model.ts'

type TableDeskProps = Readonly<{
  draft: Draft
  design: DesignDetail
  materials: readonly MaterialRow[]
}>

const NO_FILLINGS: Fillings = {}

/** A design being drawn: tools and palette at the left, the beads in the middle, what follows from them at the right. */
export function TableDesk({ draft, design, materials }: TableDeskProps) {
  const format = useFormat()
  const [sheet, setSheet] = useState<'keys' | 'save'>()
  const { model, view } = useTableModel(draft)
  const colourway = design.colourways[0]
  const fillings = colourway?.materials ?? NO_FILLINGS
  const { palette } = draft.body
  const beads = useMemo(
    () => slotBeads(palette, fillings, materials),
    [palette, fillings, materials],
  )
  const body = useMemo(() => liveBody(draft.body, view), [draft.body, view])
  const question = useWorkshopQuestion(body, fillings, design.beadsPerGram)
  const { answer, isLate } = useLiveReading(question)
  const reading = answer?.ok === true ? answer.value : undefined
  const save = useCallback(() => setSheet('save'), [])

  function onKeyDown(event: KeyboardEvent): void {
    if (event.defaultPrevented || isTyping(event.target)) return
    const acts = { onSave: save, onKeys: () => setSheet('keys') }
    if (answerTableKey(model, event, acts)) event.preventDefault()
  }
  return (
    <Room
      fill
      title={design.name}
      back={{ href: hrefTo({ room: 'designs', id: design.id }), label: 'Back to the design' }}
      note={draft.isSaved ? `As version ${draft.version}` : 'Kept here, in no version yet'}
      actions={
        <>
          <Button icon="keys" onClick={() => setSheet('keys')}>
            Keys
          </Button>
          <Button kind="primary" icon="check" disabled={draft.isSaved} onClick={save}>
            Save a version
          </Button>
        </>
      }
      aside={
        <>
          <TableFigures
            design={design}
            body={body}
            reading={reading}
            isLate={isLate}
            colourway={colourway}
            format={format}
          />
          <TableParts draft={draft} model={model} panelId={view.panel?.id} format={format} />
        </>
      }
    >
      {draft.isBehind && <BehindNotice draft={draft} design={design} />}
      {draft.refusal !== undefined && <RefusalNotice refusal={draft.refusal} />}
      {draft.refusal !== undefined && (
        <Button onClick={draft.tryAgain}>Try to keep them again</Button>
      )}
      {answer?.ok === false && <RefusalNotice refusal={answer.error} />}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: keys of the tools work wherever the focus is on the table */}
      <div className="table-desk" onKeyDown={onKeyDown}>
        <div className="table-left">
          <ToolRail model={model} tool={view.tool} />
          <PalettePanel
            model={model}
            chosen={view.slot}
            formId={view.panel?.formId}
            draft={draft}
            beads={beads}
            counts={reading?.counts}
            format={format}
          />
        </div>
        <div className="table-middle">
          <TableBar model={model} view={view} draft={draft} />
          <TableStage
            model={model}
            view={view}
            name={design.name}
            body={draft.body}
            beads={beads}
          />
        </div>
      </div>
      {sheet === 'keys' && <TableKeysSheet onClose={() => setSheet(undefined)} />}
      {sheet === 'save' && <SaveSheet draft={draft} onClose={() => setSheet(undefined)} />}
    </Room>
  )
}
