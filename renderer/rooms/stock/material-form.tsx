import { useState } from 'react'
import type { CallInput } from '../../../shared-core/contract/calls.ts'
import { go, hrefTo } from '../../app/place.ts'
import { useAct } from '../../app/use-act.ts'
import { useBeadTables } from '../../app/use-bead-tables.ts'
import { useFormat } from '../../app/use-format.ts'
import { Button } from '../../ui/button.tsx'
import { Checkbox } from '../../ui/checkbox.tsx'
import { Field } from '../../ui/field.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { Picker } from '../../ui/picker.tsx'
import { QuantityInput } from '../../ui/quantity-input.tsx'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import { Select } from '../../ui/select.tsx'
import { SideSheet } from '../../ui/side-sheet.tsx'
import { TextArea, TextInput } from '../../ui/text-input.tsx'
import { finishOptions } from '../finish-options.ts'
import { kindWords, type MaterialRow } from './material-words.ts'
import { quantityParser, unitWords } from './quantity-parser.ts'

type Fields = CallInput<'materials.save'>['material']

const blank: Fields = {
  code: '',
  name: '',
  kind: 'bead',
  formId: 'cylinder-11/0',
  colourHex: '#4b5a63',
  finish: 'opaque',
  lotsMatter: true,
  lowAt: null,
  tareMg: null,
  drawer: '',
  note: '',
  declaration: '',
}

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
  const [fields, setFields] = useState<Fields>(() => fieldsOf(material))
  const save = useAct('materials.save', {
    said: () => (material === undefined ? `Added ${fields.name}` : `Saved ${fields.name}`),
  })
  const set = (patch: Partial<Fields>) => setFields((now) => ({ ...now, ...patch }))
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
    <SideSheet
      open
      title={material === undefined ? 'New material' : `Change ${material.name}`}
      onClose={onClose}
      actions={
        <>
          <Button kind="primary" busy={save.isBusy} onClick={() => void submit()}>
            Save
          </Button>
          <Button kind="quiet" onClick={onClose}>
            Leave it
          </Button>
        </>
      }
    >
      {save.refusal !== undefined && <RefusalNotice refusal={save.refusal} />}
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
        longest={120}
        value={fields.name}
        onChange={(name) => set({ name })}
      />
      <TextInput
        label="Code"
        longest={40}
        hint="As you write it on the tube."
        value={fields.code}
        onChange={(code) => set({ code })}
      />
      {fields.kind === 'bead' && <BeadFields fields={fields} set={set} />}
      {fields.kind === 'thread' && <ThreadField fields={fields} set={set} />}
      <TextInput
        label="Drawer"
        longest={40}
        optional
        value={fields.drawer}
        onChange={(drawer) => set({ drawer })}
      />
      <Amounts fields={fields} set={set} />
      {fields.kind === 'finding' && (
        <TextArea
          label="What the supplier declares"
          longest={2_000}
          hint="Nickel release, lead, cadmium. A supplier’s claim, not a test: local rules decide."
          optional
          rows={3}
          value={fields.declaration}
          onChange={(declaration) => set({ declaration })}
        />
      )}
      <TextArea
        label="Note"
        longest={2_000}
        optional
        rows={3}
        value={fields.note}
        onChange={(note) => set({ note })}
      />
    </SideSheet>
  )
}

type Part = Readonly<{ fields: Fields; set: (patch: Partial<Fields>) => void }>

function BeadFields({ fields, set }: Part) {
  const { forms } = useBeadTables()
  return (
    <>
      <Picker
        label="Bead form"
        hint={<OwnEntry what="form" />}
        value={fields.formId}
        options={forms.map(({ id, name }) => ({ value: id, label: name }))}
        onChange={(formId) => set({ formId })}
      />
      <div className="stock-pair">
        <Field label="Colour">
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

/** The way to the tables, where one that is not listed is written down. */
function OwnEntry({ what }: Readonly<{ what: 'form' | 'thread' }>) {
  return (
    <>
      Not listed? <a href={hrefTo({ room: 'settings', id: 'beads' })}>Add a {what} of your own</a>.
    </>
  )
}

function ThreadField({ fields, set }: Part) {
  const { threads } = useBeadTables()
  return (
    <Picker
      label="Thread"
      hint={<OwnEntry what="thread" />}
      value={fields.formId}
      options={threads.map(({ id, name }) => ({ value: id, label: name }))}
      onChange={(formId) => set({ formId })}
    />
  )
}

function Amounts({ fields, set }: Part) {
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

function kindPatch(kind: Fields['kind']): Partial<Fields> {
  const isBead = kind === 'bead'
  return {
    kind,
    formId: isBead ? 'cylinder-11/0' : kind === 'thread' ? 'braided-6lb' : null,
    colourHex: isBead ? '#4b5a63' : null,
    finish: isBead ? 'opaque' : null,
    lotsMatter: isBead,
    lowAt: null,
    tareMg: null,
  }
}

function fieldsOf(material: MaterialRow | undefined): Fields {
  if (material === undefined) return blank
  const { code, name, kind, formId, colourHex, finish, lotsMatter } = material
  const { lowAt, tareMg, drawer, note, declaration } = material
  return {
    code,
    name,
    kind,
    formId,
    colourHex,
    finish,
    lotsMatter,
    lowAt,
    tareMg,
    drawer,
    note,
    declaration,
  }
}
