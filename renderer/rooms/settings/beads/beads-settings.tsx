import { useState } from 'react'
import { useCall } from '../../../app/use-call.ts'
import { Button } from '../../../ui/button.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { SegmentedChoice } from '../../../ui/segmented-choice.tsx'
import { FormSheet } from './form-sheet.tsx'
import { FormTable } from './form-table.tsx'
import { ScaleBar } from './scale-bar.tsx'
import { TableFiles } from './table-files.tsx'
import type { FormEntry, ThreadEntry } from './table-words.ts'
import { ThreadSheet } from './thread-sheet.tsx'
import { ThreadTable } from './thread-table.tsx'
import './beads.css'

/** What is opened in a sheet; without an entry a new one. */
type Open =
  | Readonly<{ kind: 'forms'; entry?: FormEntry }>
  | Readonly<{ kind: 'threads'; entry?: ThreadEntry }>

/** The bead forms and threads the studio reckons with: the reference tables, and the workshop’s own. */
export function BeadsSettings() {
  const [shown, setShown] = useState<Open['kind']>('forms')
  const [open, setOpen] = useState<Open>()
  const { value, refusal } = useCall('tables.list', {})
  const close = () => setOpen(undefined)
  const sheetKey = open?.entry?.id ?? 'new'
  return (
    <div className="settings-list">
      {refusal !== undefined && <RefusalNotice refusal={refusal} />}
      <div className="tables-bar">
        <SegmentedChoice
          label="Shown"
          labelHidden
          value={shown}
          options={[
            { value: 'forms', label: 'Bead forms' },
            { value: 'threads', label: 'Threads' },
          ]}
          onChange={(next) => {
            setShown(next)
            close()
          }}
        />
        <Button icon="add" onClick={() => setOpen({ kind: shown })}>
          {shown === 'forms' ? 'Add a bead form' : 'Add a thread'}
        </Button>
        {shown === 'forms' && <ScaleBar />}
        <TableFiles />
      </div>
      {shown === 'forms' ? (
        <FormTable
          forms={ownFirst(value?.forms)}
          openId={open?.entry?.id}
          onOpen={(entry) => setOpen({ kind: 'forms', entry })}
        />
      ) : (
        <ThreadTable
          threads={ownFirst(value?.threads)}
          openId={open?.entry?.id}
          onOpen={(entry) => setOpen({ kind: 'threads', entry })}
        />
      )}
      {open?.kind === 'forms' && <FormSheet key={sheetKey} form={open.entry} onClose={close} />}
      {open?.kind === 'threads' && (
        <ThreadSheet key={sheetKey} thread={open.entry} onClose={close} />
      )}
    </div>
  )
}

/** What is hers is what she looks for. */
function ownFirst<T extends Pick<FormEntry, 'origin'>>(entries: readonly T[] = []): readonly T[] {
  return entries.toSorted(
    (a, b) => Number(a.origin === 'reference') - Number(b.origin === 'reference'),
  )
}
