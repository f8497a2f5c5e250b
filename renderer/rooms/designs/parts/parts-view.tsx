import { useMemo, useState } from 'react'
import { indexBeads } from '../../../../shared-core/chart/bead-index.ts'
import { fromChartJson } from '../../../../shared-core/chart/chart-json.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { hrefTo } from '../../../app/place.ts'
import { Room } from '../../../app/room.tsx'
import { useUndoTarget } from '../../../app/undo-target.ts'
import { useCall } from '../../../app/use-call.ts'
import { useFormat } from '../../../app/use-format.ts'
import { Button, ButtonLink, IconButton } from '../../../ui/button.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import type { DesignDetail, MaterialRow } from '../page/open-design.ts'
import { slotBeads } from '../page/slot-beads.ts'
import { ViewTabs } from '../page/view-tabs.tsx'
import { DRAW } from '../places.ts'
import { useReading } from '../reading/use-reading.ts'
import { useWorkshopQuestion } from '../reading/use-workshop-question.ts'
import { BehindNotice } from '../table/behind-notice.tsx'
import { SaveSheet } from '../table/save-sheet.tsx'
import { type Draft, useDraft } from '../table/use-draft.ts'
import { withPart } from './part-edits.ts'
import { PartsPanel } from './parts-panel.tsx'
import { PartsStage } from './parts-stage.tsx'

const UP = { href: '#/designs', label: 'Designs' } as const
const NO_MATERIALS: readonly MaterialRow[] = []

/** The parts of a design on the table: every change a step of its drawing, until a version is saved. */
export function PartsView({ id }: Readonly<{ id: string }>) {
  const design = useCall('designs.read', { id })
  const materials = useCall('materials.list', {})
  const { draft, refusal } = useDraft(id)
  const refused = refusal ?? design.refusal
  if (draft === undefined || design.value === undefined) {
    return (
      <Room title={design.value?.name ?? 'Design'} back={UP}>
        <ViewTabs id={id} view="parts" />
        {refused === undefined ? (
          <p role="status">Laying the design on the table…</p>
        ) : (
          <RefusalNotice refusal={refused} />
        )}
      </Room>
    )
  }
  return (
    <PartsDesk
      design={design.value}
      draft={draft}
      materials={materials.value?.materials ?? NO_MATERIALS}
    />
  )
}

type PartsDeskProps = Readonly<{
  design: DesignDetail
  draft: Draft
  materials: readonly MaterialRow[]
}>

function PartsDesk({ design, draft, materials }: PartsDeskProps) {
  const format = useFormat()
  const [chosen, setChosen] = useState<string>()
  const [tried, setTried] = useState<DesignBody>()
  const [isSaving, setSaving] = useState(false)
  const partId = chosen ?? draft.body.parts[0]?.id
  const body = tried ?? draft.body
  const { undo, redo, change } = draft
  useUndoTarget(useMemo(() => ({ undo, redo }), [undo, redo]))
  const { beads, reading, refusal } = useShown(design, body, materials)

  function chooseBead(part: string, bead: number) {
    const strand = draft.body.parts.find(({ id }) => id === partId)
    const panel = draft.body.parts.find(({ id }) => id === part)
    if (strand?.kind !== 'strand' || panel?.kind !== 'panel') {
      setChosen(part)
      return
    }
    const { rowOf, rowStart } = indexBeads(fromChartJson(panel.chart))
    const row = rowOf[bead] ?? 0
    const anchor = { panelId: part, row, bead: bead - (rowStart[row] ?? 0) }
    change(`Hang ${strand.name} elsewhere`, withPart(draft.body, { ...strand, anchor }))
  }
  return (
    <Room
      fill
      title={design.name}
      back={UP}
      actions={<DraftActs id={design.id} draft={draft} onSave={() => setSaving(true)} />}
      aside={
        <PartsPanel
          body={draft.body}
          onChange={(label, next) => {
            setTried(undefined)
            change(label, next)
          }}
          partId={partId}
          onPart={setChosen}
          format={format}
          onTry={setTried}
        />
      }
    >
      <ViewTabs id={design.id} view="parts" />
      {draft.isBehind && <BehindNotice draft={draft} design={design} />}
      {draft.refusal !== undefined && <RefusalNotice refusal={draft.refusal} />}
      {refusal !== undefined && <RefusalNotice refusal={refusal} />}
      <PartsStage
        name={design.name}
        body={body}
        reading={reading}
        beads={beads}
        partId={partId}
        format={format}
        onBead={chooseBead}
      />
      {isSaving && <SaveSheet draft={draft} onClose={() => setSaving(false)} />}
    </Room>
  )
}

/** The body in the beads of the first colourway, and what is read of it. */
function useShown(design: DesignDetail, body: DesignBody, materials: readonly MaterialRow[]) {
  const { beadsPerGram, colourways } = design
  const fillings = colourways[0]?.materials
  const answer = useReading(useWorkshopQuestion(body, fillings, beadsPerGram))
  const beads = useMemo(
    () => slotBeads(body.palette, fillings ?? {}, materials),
    [body.palette, fillings, materials],
  )
  return {
    beads,
    reading: answer?.ok === true ? answer.value : undefined,
    refusal: answer?.ok === false ? answer.error : undefined,
  }
}

function DraftActs({
  id,
  draft,
  onSave,
}: Readonly<{ id: string; draft: Draft; onSave: () => void }>) {
  return (
    <>
      <IconButton
        icon="undo"
        label={draft.undoLabel === undefined ? 'Undo' : `Undo: ${draft.undoLabel}`}
        disabled={!draft.canUndo}
        onClick={draft.undo}
      />
      <IconButton
        icon="redo"
        label={draft.redoLabel === undefined ? 'Redo' : `Redo: ${draft.redoLabel}`}
        disabled={!draft.canRedo}
        onClick={draft.redo}
      />
      <ButtonLink icon="brush" href={hrefTo({ room: 'designs', id, sub: DRAW })}>
        Draw
      </ButtonLink>
      <Button kind="primary" icon="check" onClick={onSave}>
        Save a version
      </Button>
    </>
  )
}
