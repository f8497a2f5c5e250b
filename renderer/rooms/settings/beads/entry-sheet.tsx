import type { ReactNode } from 'react'
import type { Refusal } from '../../../../shared-core/refusal.ts'
import { Button } from '../../../ui/button.tsx'
import { FormSheet } from '../../../ui/form-sheet.tsx'
import type { FormEntry } from './table-words.ts'

type EntryAct = Readonly<{ isBusy: boolean; run: () => Promise<void> }>

type EntrySheetProps = Readonly<{
  title: string
  /** Where the entry stands; absent for a new one. */
  origin: FormEntry['origin'] | undefined
  /** What is refused and stands at no field. */
  refusal: Refusal | undefined
  save: EntryAct
  remove: EntryAct
  onClose: () => void
  children: ReactNode
}>

/** A sheet for one entry of a table: kept as typed, or taken away where it is the workshop’s own. */
export function EntrySheet(props: EntrySheetProps) {
  const { title, origin, refusal, save, remove, onClose, children } = props
  return (
    <FormSheet
      title={title}
      above={refusal}
      label={origin === 'reference' ? 'Use my figures' : 'Save'}
      icon="check"
      isBusy={save.isBusy}
      onSave={() => void save.run()}
      others={
        origin !== undefined &&
        origin !== 'reference' && (
          <Button
            kind="danger"
            icon="remove"
            busy={remove.isBusy}
            onClick={() => void remove.run()}
          >
            {origin === 'replaces' ? 'Back to the table’s' : 'Remove'}
          </Button>
        )
      }
      onClose={onClose}
    >
      {children}
    </FormSheet>
  )
}
