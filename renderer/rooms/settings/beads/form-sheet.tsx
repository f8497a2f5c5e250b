import { useState } from 'react'
import { placeRefusal } from '../../../app/place-refusal.ts'
import { useAct } from '../../../app/use-act.ts'
import { useFormat } from '../../../app/use-format.ts'
import { EntrySheet } from './entry-sheet.tsx'
import { draftForm, formDraft } from './form-draft.ts'
import { FormFields, formFieldNames } from './form-fields.tsx'
import { FormPreview } from './form-preview.tsx'
import type { FormEntry } from './table-words.ts'
import '../settings.css'
import './beads.css'

/** A bead form of the workshop’s own: typed, tried against the others at one scale, kept or taken away. */
export function FormSheet({
  form,
  onClose,
  onSaved,
}: Readonly<{
  form: FormEntry | undefined
  onClose: () => void
  /** Told its id, where something waits for it. */
  onSaved?: (id: string) => void
}>) {
  const { decimal } = useFormat()
  const [draft, setDraft] = useState(() => formDraft(form, decimal))
  const save = useAct('tables.saveForm', {
    said: (_, input) => `Saved ${input.form.name}`,
    of: draft,
  })
  const remove = useAct('tables.removeForm', { said: () => `Removed ${form?.name ?? 'it'}` })
  const { at, above } = placeRefusal(save.refusal, formFieldNames)
  async function keep() {
    const next = draftForm(draft)
    if (next === undefined) return
    const saved = await save.act({ form: next })
    if (!saved.ok) return
    onSaved?.(saved.value.id)
    onClose()
  }
  async function takeAway() {
    if (form !== undefined && (await remove.act({ id: form.id })).ok) onClose()
  }
  return (
    <EntrySheet
      title={form === undefined ? 'New bead form' : form.name}
      origin={form?.origin}
      refusal={above ?? remove.refusal}
      save={{ isBusy: save.isBusy, run: keep }}
      remove={{ isBusy: remove.isBusy, run: takeAway }}
      onClose={onClose}
    >
      <p className="quiet">{about(form)}</p>
      <FormPreview draft={draft} />
      <FormFields draft={draft} decimal={decimal} errorAt={at} onDraft={setDraft} />
    </EntrySheet>
  )
}

function about(form: FormEntry | undefined): string {
  if (form === undefined) {
    return 'Measured once, it serves everywhere: charts, grams, thread, stock, prices, the bench.'
  }
  if (form.origin === 'own')
    return 'A form of your own. What you change is reckoned anew everywhere.'
  return form.origin === 'replaces'
    ? 'Your figures stand in place of the table’s, everywhere. The table’s come back when you take yours away.'
    : 'From the reference tables. Measured otherwise? Your figures then stand in its place, everywhere, until you take them away.'
}
