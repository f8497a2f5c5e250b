import { useState } from 'react'
import { parseCount } from '../../../shared-core/units/parse-count.ts'
import { withinBounds } from '../../../shared-core/units/within-bounds.ts'
import { placeRefusal } from '../../app/place-refusal.ts'
import { useAct } from '../../app/use-act.ts'
import { useFormat } from '../../app/use-format.ts'
import { FormSheet } from '../../ui/form-sheet.tsx'
import { QuantityInput } from '../../ui/quantity-input.tsx'
import { TextInput } from '../../ui/text-input.tsx'
import { NoteInput } from '../note-input.tsx'
import type { Supplier } from './settings-types.ts'

/** A supplier: who, how long they take. */
export function SupplierForm({
  supplier,
  onClose,
  onSaved,
}: Readonly<{
  supplier: Supplier | undefined
  onClose: () => void
  /** Told its id, where something waits for it. */
  onSaved?: (id: string) => void
}>) {
  const { decimal, counted } = useFormat()
  const [name, setName] = useState(supplier?.name ?? '')
  const [note, setNote] = useState(supplier?.note ?? '')
  const [days, setDays] = useState<readonly [string, number | undefined]>([
    String(supplier?.leadDays ?? 7),
    supplier?.leadDays ?? 7,
  ])
  const save = useAct('supplier.save', { said: () => `Saved ${name}`, of: [name, note, days] })
  const { at, above } = placeRefusal(save.refusal, [
    'supplier.name',
    'supplier.leadDays',
    'supplier.note',
  ])
  async function submit(leadDays: number) {
    const id = supplier === undefined ? {} : { id: supplier.id }
    const saved = await save.act({ supplier: { ...id, name, note, leadDays } })
    if (!saved.ok) return
    onSaved?.(saved.value.id)
    onClose()
  }
  return (
    <FormSheet
      title={supplier === undefined ? 'New supplier' : `Change ${supplier.name}`}
      above={above}
      isBusy={save.isBusy}
      onSave={() => days[1] !== undefined && void submit(days[1])}
      onClose={onClose}
    >
      <TextInput
        label="Name"
        error={at('supplier.name')}
        longest={120}
        missing="Give the supplier’s name."
        value={name}
        onChange={setName}
      />
      <QuantityInput
        label="From order to your door"
        error={at('supplier.leadDays')}
        missing="Say how many days it takes; a guess will do."
        unit="days"
        text={days[0]}
        parse={(text) =>
          withinBounds(parseCount(text, { decimal }), text, {
            ...{ least: 0, most: 365, of: Number },
            write: (count) => counted(count, 'day'),
          })
        }
        onText={(text, value) => setDays([text, value])}
      />
      <NoteInput error={at('supplier.note')} value={note} onChange={setNote} />
    </FormSheet>
  )
}
