import { type KeyboardEvent, useCallback, useMemo, useRef, useState } from 'react'
import { isTyping } from '../../../app/is-typing.ts'
import { hrefTo } from '../../../app/place.ts'
import { Room } from '../../../app/room.tsx'
import { Button } from '../../../ui/button.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import type { DesignDetail, Fillings, MaterialRow } from '../page/open-design.ts'
import { slotBeads } from '../page/slot-beads.ts'
import { BehindNotice } from './behind-notice.tsx'
import { FoldedRefusal } from './folded-refusal.tsx'
import { SlotRail } from './slot-rail.tsx'
import { TableBar } from './table-bar.tsx'
import { answerTableKey } from './table-keys.ts'
import { TableSheets } from './table-sheets.tsx'
import { TableSide } from './table-side.tsx'
import { TableStage } from './table-stage.tsx'
import { ToolRail } from './tool-rail.tsx'
import type { Draft } from './use-draft.ts'
import { useTableModel } from './use-table-model.ts'
import { useWideTable } from './use-wide-table.ts'

type TableDeskProps = Readonly<{
  draft: Draft
  design: DesignDetail
  materials: readonly MaterialRow[]
}>

const NO_FILLINGS: Fillings = {}

/** A design being drawn: tools at the left, the beads in the middle, palette and figures at the right or folded away. */
export function TableDesk({ draft, design, materials }: TableDeskProps) {
  const [sheet, setSheet] = useState<'keys' | 'save'>()
  const [editedSlot, setEditedSlot] = useState<number>()
  const { isWide, turn, unfold, foldButton } = useWideTable()
  const model = useTableModel(draft)
  const fillings = design.colourways[0]?.materials ?? NO_FILLINGS
  const { palette } = draft.body
  const beads = useMemo(
    () => slotBeads(palette, fillings, materials),
    [palette, fillings, materials],
  )
  const saveButton = useRef<HTMLButtonElement>(null)
  const onKeyDown = useCallback(
    (event: KeyboardEvent<HTMLElement>) => {
      if (event.defaultPrevented || isTyping(event.target)) return
      const acts = {
        // By its button, which leads to what is refused instead.
        onSave: () => saveButton.current?.click(),
        onKeys: () => setSheet('keys'),
        onWide: () => turn(event.currentTarget),
      }
      if (answerTableKey(model, event, acts)) event.preventDefault()
    },
    [model, turn],
  )
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
          <Button ref={saveButton} kind="primary" icon="check" onClick={() => setSheet('save')}>
            Save a version
          </Button>
        </>
      }
      aside={
        isWide ? undefined : (
          <TableSide
            {...{ model, draft, design, fillings, beads, onKeyDown }}
            onEditSlot={setEditedSlot}
          />
        )
      }
      asideLabel="Palette and figures"
    >
      {draft.isBehind && <BehindNotice draft={draft} design={design} />}
      {draft.refusal !== undefined && <RefusalNotice refusal={draft.refusal} />}
      {draft.refusal !== undefined && (
        <Button onClick={draft.tryAgain}>Try to keep them again</Button>
      )}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: keys of the tools work wherever the focus is on the table */}
      <div className="table-desk" onKeyDown={onKeyDown}>
        <div className="table-left">
          <ToolRail model={model} />
          {isWide && <SlotRail model={model} beads={beads} />}
        </div>
        <div className="table-middle">
          <TableBar
            model={model}
            draft={draft}
            isWide={isWide}
            onWide={turn}
            foldButton={foldButton}
          />
          {isWide && (
            <FoldedRefusal body={draft.body} design={design} fillings={fillings} onShow={unfold} />
          )}
          <TableStage model={model} name={design.name} body={draft.body} beads={beads} />
        </div>
      </div>
      <TableSheets
        {...{ draft, beads, sheet, editedSlot }}
        onSheetClose={() => setSheet(undefined)}
        onSlotClose={() => setEditedSlot(undefined)}
      />
    </Room>
  )
}
