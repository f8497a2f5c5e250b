import { useState } from 'react'
import type { Refusal } from '../../../../shared-core/refusal.ts'
import { pickFile, saveFile } from '../../../app/files.ts'
import { useAct } from '../../../app/use-act.ts'
import { ask, useCall } from '../../../app/use-call.ts'
import { useFormat } from '../../../app/use-format.ts'
import { Button } from '../../../ui/button.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { SegmentedChoice } from '../../../ui/segmented-choice.tsx'
import { FormSheet } from './form-sheet.tsx'
import { FormTable } from './form-table.tsx'
import { PX_A_MM } from './scale-bead.tsx'
import { readTableFile, tableFile } from './table-file.ts'
import type { FormEntry, ThreadEntry } from './table-words.ts'
import { ThreadSheet } from './thread-sheet.tsx'
import { ThreadTable } from './thread-table.tsx'
import './beads.css'

type Shown = 'forms' | 'threads'
type Open =
  | Readonly<{ kind: 'form'; entry: FormEntry | undefined }>
  | Readonly<{ kind: 'thread'; entry: ThreadEntry | undefined }>

const FILES = [{ name: 'Table of beads and threads', extensions: ['json'] }]

/** The bead forms and threads the studio reckons with: the reference tables, and the workshop’s own. */
export function BeadsSettings() {
  const [shown, setShown] = useState<Shown>('forms')
  const [open, setOpen] = useState<Open>()
  const { value, refusal } = useCall('tables.list', {})
  const forms = ownFirst(value?.forms ?? [])
  const threads = ownFirst(value?.threads ?? [])
  const hasOwn = [...forms, ...threads].some(({ origin }) => origin !== 'reference')
  const close = () => setOpen(undefined)
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
        <Button
          icon="add"
          onClick={() =>
            setOpen(
              shown === 'forms'
                ? { kind: 'form', entry: undefined }
                : { kind: 'thread', entry: undefined },
            )
          }
        >
          {shown === 'forms' ? 'Add a bead form' : 'Add a thread'}
        </Button>
        {shown === 'forms' && <ScaleBar />}
        <TableFiles hasOwn={hasOwn} />
      </div>
      {shown === 'forms' ? (
        <FormTable
          forms={forms}
          openId={open?.kind === 'form' ? open.entry?.id : undefined}
          onOpen={(entry) => setOpen({ kind: 'form', entry })}
        />
      ) : (
        <ThreadTable
          threads={threads}
          openId={open?.kind === 'thread' ? open.entry?.id : undefined}
          onOpen={(entry) => setOpen({ kind: 'thread', entry })}
        />
      )}
      {open?.kind === 'form' && (
        <FormSheet key={open.entry?.id ?? 'new'} form={open.entry} onClose={close} />
      )}
      {open?.kind === 'thread' && (
        <ThreadSheet key={open.entry?.id ?? 'new'} thread={open.entry} onClose={close} />
      )}
    </div>
  )
}

/** What is hers is what she looks for. */
function ownFirst<T extends Pick<FormEntry, 'origin'>>(entries: readonly T[]): readonly T[] {
  return entries.toSorted(
    (a, b) => Number(a.origin === 'reference') - Number(b.origin === 'reference'),
  )
}

const BAR_MM = 5

function ScaleBar() {
  return (
    <span className="tables-scale">
      <svg width={BAR_MM * PX_A_MM} height="8" aria-hidden="true">
        <path d={`M.5 0v8M.5 4H${BAR_MM * PX_A_MM - 0.5}M${BAR_MM * PX_A_MM - 0.5} 0v8`} />
      </svg>
      {`${BAR_MM} mm, one scale for all`}
    </span>
  )
}

/** The workshop’s own entries as a file, to keep or to hand on. */
function TableFiles({ hasOwn }: Readonly<{ hasOwn: boolean }>) {
  const format = useFormat()
  const [unread, setUnread] = useState<Refusal>()
  const take = useAct('tables.take', {
    said: ({ added, replaced }) =>
      `Took in ${format.counted(added + replaced, 'entry', 'entries')}`,
  })
  async function bringIn() {
    setUnread(undefined)
    const picked = await pickFile('Choose a table of beads and threads', FILES)
    if (!picked.ok) return setUnread(picked.error)
    if (picked.value === undefined) return
    const read = readTableFile(picked.value)
    if (!read.ok) return setUnread(read.error)
    await take.act(read.value)
  }
  async function save() {
    await saveFile('Save your beads and threads', tableFile(await ask('tables.own', {})))
  }
  const refusal = unread ?? take.refusal
  return (
    <div className="tables-files">
      <Button kind="quiet" icon="file" busy={take.isBusy} onClick={() => void bringIn()}>
        Bring in a table
      </Button>
      <Button kind="quiet" disabled={!hasOwn} onClick={() => void save()}>
        Save yours as a file
      </Button>
      {refusal !== undefined && <RefusalNotice refusal={refusal} />}
    </div>
  )
}
