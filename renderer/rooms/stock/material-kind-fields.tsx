import { useState } from 'react'
import { useBeadTables } from '../../app/use-bead-tables.ts'
import { Button } from '../../ui/button.tsx'
import { Checkbox } from '../../ui/checkbox.tsx'
import { Field } from '../../ui/field.tsx'
import { Picker } from '../../ui/picker.tsx'
import { Select } from '../../ui/select.tsx'
import { finishOptions } from '../finish-options.ts'
import { FormSheet } from '../settings/beads/form-sheet.tsx'
import { ThreadSheet } from '../settings/beads/thread-sheet.tsx'
import type { MaterialPart } from './material-draft.ts'

/** What is said of beads only. */
export function BeadFields({ fields, set, at }: MaterialPart) {
  const { forms } = useBeadTables()
  const [isAdding, setAdding] = useState(false)
  return (
    <>
      <Picker
        label="Bead form"
        missing="Choose the form of the bead."
        error={at('material.formId')}
        hint={<OwnEntry what="form" onAdd={() => setAdding(true)} />}
        value={fields.formId}
        options={forms.map(({ id, name }) => ({ value: id, label: name }))}
        onChange={(formId) => set({ formId })}
      />
      {isAdding && (
        <FormSheet
          form={undefined}
          onClose={() => setAdding(false)}
          onSaved={(formId) => set({ formId })}
        />
      )}
      <div className="stock-pair">
        <Field label="Colour" error={at('material.colourHex')}>
          {(control) => (
            <input
              {...control}
              type="color"
              className="stock-colour"
              value={fields.colourHex ?? '#888888'}
              onChange={(event) => set({ colourHex: event.target.value })}
            />
          )}
        </Field>
        <Select
          label="Finish"
          error={at('material.finish')}
          value={fields.finish ?? 'opaque'}
          options={finishOptions}
          onChange={(finish) => set({ finish })}
        />
      </div>
      <Checkbox
        label="Dye lots show: one lot within a piece"
        hint="Leave it on unless you cannot tell two lots apart."
        checked={fields.lotsMatter}
        onChange={(lotsMatter) => set({ lotsMatter })}
      />
    </>
  )
}

/** The way to write one down that is not listed, without leaving what is typed here. */
function OwnEntry({ what, onAdd }: Readonly<{ what: 'form' | 'thread'; onAdd: () => void }>) {
  return (
    <>
      Not listed?{' '}
      <Button small kind="quiet" onClick={onAdd}>
        {`Add a ${what} of your own`}
      </Button>
    </>
  )
}

/** What is said of thread only. */
export function ThreadField({ fields, set, at }: MaterialPart) {
  const { threads } = useBeadTables()
  const [isAdding, setAdding] = useState(false)
  return (
    <>
      <Picker
        label="Thread"
        missing="Choose the thread."
        error={at('material.formId')}
        hint={<OwnEntry what="thread" onAdd={() => setAdding(true)} />}
        value={fields.formId}
        options={threads.map(({ id, name }) => ({ value: id, label: name }))}
        onChange={(formId) => set({ formId })}
      />
      {isAdding && (
        <ThreadSheet
          thread={undefined}
          onClose={() => setAdding(false)}
          onSaved={(formId) => set({ formId })}
        />
      )}
    </>
  )
}
