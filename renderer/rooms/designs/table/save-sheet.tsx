import { useId, useState } from 'react'
import { placeRefusal } from '../../../app/place-refusal.ts'
import { useHeldRefusal } from '../../../app/use-held-refusal.ts'
import { Button } from '../../../ui/button.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { SideSheet } from '../../../ui/side-sheet.tsx'
import { TextInput } from '../../../ui/text-input.tsx'
import { showToast } from '../../../ui/toast-store.ts'
import type { Draft } from './use-draft.ts'

/** Makes a version of what lies on the table, with a word on what is new. */
export function SaveSheet({ draft, onClose }: Readonly<{ draft: Draft; onClose: () => void }>) {
  const [note, setNote] = useState('')
  const [isBusy, setBusy] = useState(false)
  const { refusal, refuse } = useHeldRefusal([note, draft.body])
  const { at, above } = placeRefusal(refusal, ['note'])
  const form = useId()
  // While it is being saved the sheet stays as it was pressed.
  const isNothingNew = draft.isSaved && !isBusy
  async function save() {
    setBusy(true)
    const answer = await draft.save(note.trim())
    setBusy(false)
    if (answer.ok) {
      showToast({ text: `Saved version ${answer.value.version} of ${draft.name}` })
      onClose()
    } else refuse(answer.error)
  }
  return (
    <SideSheet
      open
      title="Save a version"
      onClose={onClose}
      actions={
        <>
          <Button
            type="submit"
            form={form}
            kind="primary"
            icon="check"
            busy={isBusy}
            disabled={isNothingNew}
            onClick={() => void save()}
          >
            {`Save as version ${draft.version + 1}`}
          </Button>
          <Button onClick={onClose}>Draw on</Button>
        </>
      }
    >
      {isNothingNew ? (
        <p>{`What lies on the table is version ${draft.version} as it stands.`}</p>
      ) : (
        <>
          <p className="designs-quiet">
            Orders and makes point at versions, so each stays as it was. You can undo past this one
            afterwards.
          </p>
          {/* Enter presses the button, which saves or leads; the form sends nothing of its own. */}
          <form id={form} onSubmit={(event) => event.preventDefault()}>
            <TextInput
              label="What is new in it"
              error={at('note')}
              optional
              value={note}
              longest={500}
              autoFocus
              onChange={setNote}
            />
          </form>
        </>
      )}
      {above !== undefined && <RefusalNotice refusal={above} />}
    </SideSheet>
  )
}
