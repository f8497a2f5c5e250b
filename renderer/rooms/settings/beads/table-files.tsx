import { useState } from 'react'
import type { Refusal } from '../../../../shared-core/refusal.ts'
import { pickFile, saveFile } from '../../../app/files.ts'
import { useAct } from '../../../app/use-act.ts'
import { useCall } from '../../../app/use-call.ts'
import { useFormat } from '../../../app/use-format.ts'
import { Button } from '../../../ui/button.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { readTableFile, tableFile } from './table-file.ts'

const FILES = [{ name: 'Table of beads and threads', extensions: ['json'] }]

/** The workshop’s own entries as a file, to keep or to hand on. */
export function TableFiles() {
  const format = useFormat()
  const own = useCall('tables.own', {})
  const [unread, setUnread] = useState<Refusal>()
  const take = useAct('tables.take', {
    said: ({ added, replaced }) =>
      `Took in ${format.counted(added + replaced, 'entry', 'entries')}`,
  })
  const hasOwn = own.value !== undefined && own.value.forms.length + own.value.threads.length > 0
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
    if (own.value !== undefined) await saveFile('Save your beads and threads', tableFile(own.value))
  }
  const refusal = unread ?? take.refusal ?? own.refusal
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
