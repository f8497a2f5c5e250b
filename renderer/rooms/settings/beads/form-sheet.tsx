import { useState } from 'react'
import { useAct } from '../../../app/use-act.ts'
import { useFormat } from '../../../app/use-format.ts'
import { Button } from '../../../ui/button.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { Select } from '../../../ui/select.tsx'
import { SideSheet } from '../../../ui/side-sheet.tsx'
import { TextInput } from '../../../ui/text-input.tsx'
import { BasisChoice } from './basis-choice.tsx'
import {
  draftForm,
  type FigureKey,
  type FormDraft,
  formDraft,
  missingFigure,
} from './form-draft.ts'
import { ScaleBead } from './scale-bead.tsx'
import { SpreadField } from './spread-field.tsx'
import { type FormEntry, familyWords } from './table-words.ts'

const families = (
  ['cylinder', 'rocaille', 'bugle', 'drop', 'two-hole', 'cube', 'faceted'] as const
).map((value) => ({ value, label: familyWords[value] }))

const FIELDS: readonly Readonly<{ key: FigureKey; label: string; unit: string; hint?: string }>[] =
  [
    {
      key: 'diameterMm',
      label: 'Across its hole',
      unit: 'mm',
      hint: '1,6 (1,55 to 1,65), 1,5–1,7, or 1,6 alone.',
    },
    { key: 'lengthMm', label: 'Along its hole', unit: 'mm' },
    { key: 'holeMm', label: 'The hole', unit: 'mm' },
    {
      key: 'beadsPerGram',
      label: 'Beads in a gram',
      unit: 'beads',
      hint: 'Weigh a hundred, and divide.',
    },
    { key: 'cullRate', label: 'Put aside as misshapen', unit: '%' },
  ]

/** A bead form of the workshop’s own: typed, tried against the others at one scale, kept or taken away. */
export function FormSheet({
  form,
  onClose,
}: Readonly<{ form: FormEntry | undefined; onClose: () => void }>) {
  const { decimal } = useFormat()
  const [draft, setDraft] = useState(() => formDraft(form, decimal))
  const [asked, setAsked] = useState(false)
  const save = useAct('tables.saveForm', { said: (_, input) => `Saved ${input.form.name}` })
  const remove = useAct('tables.removeForm', { said: () => `Removed ${form?.name ?? 'it'}` })
  function set(part: Partial<FormDraft>) {
    // What was refused is being mended: it is judged anew when it is saved.
    save.forgetRefusal()
    setDraft({ ...draft, ...part })
  }
  const refusal = save.refusal ?? remove.refusal
  const errorOf = (field: string) =>
    save.refusal?.field === `form.${field}`
      ? `${save.refusal.message} ${save.refusal.next}`
      : undefined
  const isOwn = form !== undefined && form.origin !== 'reference'
  const isPlaced = refusal?.field?.startsWith('form.') === true
  async function keep() {
    setAsked(true)
    const next = draftForm(draft)
    if (next === undefined || next.name === '') return
    // Nothing to save is no step, and so nothing to undo.
    if (isOwn && isSaid(form, next)) return onClose()
    if ((await save.act({ form: next })).ok) onClose()
  }
  async function takeAway() {
    if (form !== undefined && (await remove.act({ id: form.id })).ok) onClose()
  }
  const missing = asked ? missingFigure(draft) : undefined
  return (
    <SideSheet
      open
      title={form === undefined ? 'New bead form' : form.name}
      onClose={onClose}
      actions={
        <>
          <Button kind="primary" icon="check" busy={save.isBusy} onClick={() => void keep()}>
            {form?.origin === 'reference' ? 'Use my figures' : 'Save'}
          </Button>
          {isOwn && (
            <Button
              kind="danger"
              icon="remove"
              busy={remove.isBusy}
              onClick={() => void takeAway()}
            >
              {form.origin === 'replaces' ? 'Back to the table’s' : 'Remove'}
            </Button>
          )}
        </>
      }
    >
      {refusal !== undefined && !isPlaced && <RefusalNotice refusal={refusal} />}
      <p className="quiet">{about(form)}</p>
      <Preview draft={draft} />
      <TextInput
        label="Name"
        value={draft.name}
        longest={60}
        error={asked && draft.name.trim() === '' ? 'Give it a name of your own.' : errorOf('name')}
        onChange={(name) => set({ name })}
      />
      <div className="settings-pair">
        <Select
          label="Shape"
          value={draft.family}
          options={families}
          onChange={(family) => set({ family })}
        />
        <TextInput
          label="Size as written"
          optional
          value={draft.sizeLabel}
          longest={20}
          onChange={(sizeLabel) => set({ sizeLabel })}
        />
      </div>
      {FIELDS.map(({ key, label, unit, hint }) => (
        <SpreadField
          key={key}
          label={label}
          unit={unit}
          {...(hint === undefined ? {} : { hint: withMark(hint, decimal) })}
          decimal={decimal}
          typed={draft.figures[key]}
          error={
            missing === key && draft.figures[key].text.trim() === ''
              ? 'Give this figure.'
              : errorOf(key)
          }
          onTyped={(typed) => set({ figures: { ...draft.figures, [key]: typed } })}
        />
      ))}
      <BasisChoice value={draft.basis} onChange={(basis) => set({ basis })} />
    </SideSheet>
  )
}

/** Whether the form already says all that was typed. */
function isSaid(form: FormEntry, next: object): boolean {
  const known: Readonly<Record<string, unknown>> = form
  return Object.entries(next).every(
    ([field, value]) => JSON.stringify(known[field]) === JSON.stringify(value),
  )
}

function withMark(hint: string, decimal: ',' | '.'): string {
  return decimal === ',' ? hint : hint.replace(/(\d),(\d)/g, '$1.$2')
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

/** The bead as typed beside one everybody knows, both at the table’s scale. */
function Preview({ draft: { family, figures } }: Readonly<{ draft: FormDraft }>) {
  const [diameterMm, lengthMm] = [figures.diameterMm.spread?.value, figures.lengthMm.spread?.value]
  const isDrawn =
    diameterMm !== undefined && lengthMm !== undefined && diameterMm > 0 && lengthMm > 0
  return (
    <div className="tables-preview">
      {isDrawn && diameterMm <= 60 && lengthMm <= 60 ? (
        <ScaleBead family={family} diameterMm={diameterMm} lengthMm={lengthMm} />
      ) : (
        <span className="tables-preview-none" />
      )}
      <ScaleBead family="cylinder" diameterMm={1.6} lengthMm={1.3} />
      <span className="quiet">beside a cylinder bead 11/0</span>
    </div>
  )
}
