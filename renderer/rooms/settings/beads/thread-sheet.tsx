import { useState } from 'react'
import { placeRefusal } from '../../../app/place-refusal.ts'
import { useAct } from '../../../app/use-act.ts'
import { useFormat } from '../../../app/use-format.ts'
import { EntrySheet } from './entry-sheet.tsx'
import type { ThreadEntry } from './table-words.ts'
import { draftThread, threadDraft } from './thread-draft.ts'
import { ThreadFields, threadFieldNames } from './thread-fields.tsx'
import '../settings.css'
import './beads.css'

/** A thread of the workshop’s own: typed, kept or taken away. */
export function ThreadSheet({
  thread,
  onClose,
  onSaved,
}: Readonly<{
  thread: ThreadEntry | undefined
  onClose: () => void
  /** Told its id, where something waits for it. */
  onSaved?: (id: string) => void
}>) {
  const { decimal } = useFormat()
  const [draft, setDraft] = useState(() => threadDraft(thread, decimal))
  const save = useAct('tables.saveThread', {
    said: (_, input) => `Saved ${input.thread.name}`,
    of: draft,
  })
  const remove = useAct('tables.removeThread', { said: () => `Removed ${thread?.name ?? 'it'}` })
  const { at, above } = placeRefusal(save.refusal, threadFieldNames)
  async function keep() {
    const next = draftThread(draft)
    if (next === undefined) return
    const saved = await save.act({ thread: next })
    if (!saved.ok) return
    onSaved?.(saved.value.id)
    onClose()
  }
  async function takeAway() {
    if (thread !== undefined && (await remove.act({ id: thread.id })).ok) onClose()
  }
  return (
    <EntrySheet
      title={thread === undefined ? 'New thread' : thread.name}
      origin={thread?.origin}
      refusal={above ?? remove.refusal}
      save={{ isBusy: save.isBusy, run: keep }}
      remove={{ isBusy: remove.isBusy, run: takeAway }}
      onClose={onClose}
    >
      <ThreadFields draft={draft} decimal={decimal} errorAt={at} onDraft={setDraft} />
    </EntrySheet>
  )
}
