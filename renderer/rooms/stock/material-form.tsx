import { useState } from 'react'
import { go } from '../../app/place.ts'
import { placeRefusal } from '../../app/place-refusal.ts'
import { useAct } from '../../app/use-act.ts'
import { useFormat } from '../../app/use-format.ts'
import { Button } from '../../ui/button.tsx'
import { FormSheet } from '../../ui/form-sheet.tsx'
import { QuantityInput } from '../../ui/quantity-input.tsx'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import { TextArea, TextInput } from '../../ui/text-input.tsx'
import { NoteInput } from '../note-input.tsx'
import {
  fieldsOf,
  kindPatch,
  type MaterialFields,
  type MaterialPart,
  materialFieldNames,
} from './material-draft.ts'
import { BeadFields, ThreadField } from './material-kind-fields.tsx'
import { kindWords, type MaterialRow } from './material-words.ts'
import { quantityParser, unitWords } from './quantity-parser.ts'

const kinds = (['bead', 'thread', 'finding', 'packaging'] as const).map((value) => ({
  value,
  label: kindWords[value],
}))

const unitOf = { bead: 'mg', thread: 'mm', finding: 'piece', packaging: 'piece' } as const

/** Enters a material, or changes what is said of one. Its quantities change by lots only. */
export function MaterialForm({
  open,
  material,
  onClose,
}: Readonly<{ open: boolean; material?: MaterialRow; onClose: () => void }>) {
  return open ? <OpenForm material={material} onClose={onClose} /> : null
}

function OpenForm({
  material,
  onClose,
}: Readonly<{ material: MaterialRow | undefined; onClose: () => void }>) {
  const [fields, setFields] = useState<MaterialFields>(() => fieldsOf(material))
  const save = useAct('materials.save', {
    said: () => (material === undefined ? `Added ${fields.name}` : `Saved ${fields.name}`),
    of: fields,
  })
  const { at, above } = placeRefusal(save.refusal, materialFieldNames)
  const set = (patch: Partial<MaterialFields>) => setFields((now) => ({ ...now, ...patch }))
  async function submit() {
    const answer = await save.act({
      ...(material === undefined ? {} : { id: material.id }),
      material: fields,
    })
    if (!answer.ok) return
    onClose()
    if (material === undefined) go({ room: 'stock', id: answer.value.id })
  }
  return (
    <FormSheet
      title={material === undefined ? 'New material' : `Change ${material.name}`}
      above={above}
      isBusy={save.isBusy}
      onSave={() => void submit()}
      others={
        <Button kind="quiet" onClick={onClose}>
          Leave it
        </Button>
      }
      onClose={onClose}
    >
      {material === undefined && (
        <SegmentedChoice
          label="Kind"
          value={fields.kind}
          options={kinds}
          onChange={(kind) => set(kindPatch(kind))}
        />
      )}
      <TextInput
        label="Name"
        error={at('material.name')}
        missing="Give it a name you will know it by."
        longest={120}
        value={fields.name}
        onChange={(name) => set({ name })}
      />
      <TextInput
        label="Code"
        error={at('material.code')}
        longest={40}
        hint="As you write it on the tube."
        value={fields.code}
        onChange={(code) => set({ code })}
      />
      {fields.kind === 'bead' && <BeadFields {...{ fields, set, at }} />}
      {fields.kind === 'thread' && <ThreadField {...{ fields, set, at }} />}
      <TextInput
        label="Drawer"
        error={at('material.drawer')}
        longest={40}
        optional
        value={fields.drawer}
        onChange={(drawer) => set({ drawer })}
      />
      <Amounts key={fields.kind} {...{ fields, set, at }} />
      {fields.kind === 'finding' && (
        <TextArea
          label="What the supplier declares"
          error={at('material.declaration')}
          longest={2_000}
          hint="Nickel release, lead, cadmium. A supplier’s claim, not a test: local rules decide."
          optional
          rows={3}
          value={fields.declaration}
          onChange={(declaration) => set({ declaration })}
        />
      )}
      <NoteInput
        error={at('material.note')}
        value={fields.note}
        onChange={(note) => set({ note })}
      />
    </FormSheet>
  )
}

function Amounts({ fields, set, at }: MaterialPart) {
  const format = useFormat()
  const unit = unitOf[fields.kind]
  const write = (quantity: number | null) =>
    quantity === null ? '' : format.quantity(quantity, unit)
  const [low, setLow] = useState(() => write(fields.lowAt))
  const [tare, setTare] = useState(() => (fields.tareMg === null ? '' : format.mass(fields.tareMg)))
  return (
    <>
      <QuantityInput
        label="Tell me when free stock falls to"
        error={at('material.lowAt')}
        optional
        unit={unitWords[unit]}
        text={low}
        parse={quantityParser(unit, format.decimal)}
        onText={(text, lowAt) => {
          setLow(text)
          set({ lowAt: lowAt ?? null })
        }}
      />
      {fields.kind === 'bead' && (
        <QuantityInput
          label="Weight of its empty tube"
          error={at('material.tareMg')}
          hint="Then you weigh the tube as it stands."
          optional
          unit="g"
          text={tare}
          parse={quantityParser('mg', format.decimal)}
          onText={(text, tareMg) => {
            setTare(text)
            set({ tareMg: tareMg ?? null })
          }}
        />
      )}
    </>
  )
}
