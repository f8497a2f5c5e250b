import type { SlotBead } from '../page/slot-beads.ts'
import { SaveSheet } from './save-sheet.tsx'
import { SlotSheet } from './slot-sheet.tsx'
import { TableKeysSheet } from './table-keys-sheet.tsx'
import type { Draft } from './use-draft.ts'

type TableSheetsProps = Readonly<{
  draft: Draft
  beads: readonly SlotBead[]
  sheet: 'keys' | 'save' | undefined
  onSheetClose: () => void
  /** The slot that is being named or coloured. */
  editedSlot: number | undefined
  onSlotClose: () => void
}>

/** The sheets over the table. They stand outside the palette, so that folding it away takes nothing typed with it. */
export function TableSheets({
  draft,
  beads,
  sheet,
  onSheetClose,
  editedSlot,
  onSlotClose,
}: TableSheetsProps) {
  return (
    <>
      {editedSlot !== undefined && draft.body.palette[editedSlot] !== undefined && (
        <SlotSheet
          key={editedSlot}
          draft={draft}
          at={editedSlot}
          bead={beads[editedSlot]}
          onClose={onSlotClose}
        />
      )}
      {sheet === 'keys' && <TableKeysSheet onClose={onSheetClose} />}
      {sheet === 'save' && <SaveSheet draft={draft} onClose={onSheetClose} />}
    </>
  )
}
