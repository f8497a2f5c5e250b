import { useState } from 'react'
import { placeRefusal } from '../../app/place-refusal.ts'
import { useAct } from '../../app/use-act.ts'
import { useFormat } from '../../app/use-format.ts'
import { FigureList } from '../../ui/figure-list.tsx'
import { FormSheet } from '../../ui/form-sheet.tsx'
import { QuantityInput } from '../../ui/quantity-input.tsx'
import { TextInput } from '../../ui/text-input.tsx'
import type { MaterialDetail } from './material-page.tsx'
import { quantityParser, unitWords } from './quantity-parser.ts'

export type LotRow = MaterialDetail['lots'][number]

/** Sets a lot to what the scale or the count says; the difference becomes a movement. */
export function CountSheet({
  detail,
  lot,
  onClose,
}: Readonly<{ detail: MaterialDetail; lot: LotRow; onClose: () => void }>) {
  const format = useFormat()
  const { material, beadsPerGram } = detail
  const isWeighed = material.unit === 'mg'
  const tareMg = isWeighed ? (material.tareMg ?? 0) : 0
  const [text, setText] = useState('')
  const [typed, setTyped] = useState<number>()
  const [note, setNote] = useState('')
  const quantity = typed === undefined ? undefined : typed - tareMg
  const count = useAct('lots.count', {
    said: () => `${isWeighed ? 'Weighed' : 'Counted'} ${material.name}`,
    of: [text, note],
  })
  const { at, above } = placeRefusal(count.refusal, ['quantity', 'note'])
  async function submit(value: number) {
    const kind = isWeighed ? ('weighed' as const) : ('counted' as const)
    const answer = await count.act({ lotId: lot.id, quantity: value, kind, note })
    if (answer.ok) onClose()
  }
  const isUnderTare = quantity !== undefined && quantity < 0
  return (
    <FormSheet
      title={`${isWeighed ? 'Weigh' : 'Count'} ${material.name}`}
      above={above}
      label="Set what is on hand"
      isBusy={count.isBusy}
      onSave={() => quantity !== undefined && void submit(quantity)}
      onClose={onClose}
    >
      <QuantityInput
        label={isWeighed ? 'The scale shows' : 'Counted'}
        hint={tareMg > 0 ? `The empty tube, ${format.mass(tareMg)}, is taken off.` : undefined}
        missing={isWeighed ? 'Type what the scale shows.' : 'Say how many you counted.'}
        unit={unitWords[material.unit]}
        autoFocus
        text={text}
        error={
          isUnderTare
            ? `That is less than the empty tube (${format.mass(tareMg)}). Check the scale or the tube.`
            : at('quantity')
        }
        parse={quantityParser(material.unit, format.decimal)}
        onText={(next, value) => {
          setText(next)
          setTyped(value)
        }}
      />
      <FigureList
        figures={[
          {
            label: 'On hand then',
            value:
              quantity === undefined || isUnderTare
                ? '–'
                : format.quantity(quantity, material.unit),
          },
          { label: 'By the books', value: format.quantity(lot.onHand, material.unit) },
          {
            label: 'Difference',
            value:
              quantity === undefined || isUnderTare
                ? '–'
                : format.quantity(quantity - lot.onHand, material.unit),
          },
          ...(beadsPerGram === null || quantity === undefined || isUnderTare
            ? []
            : [
                {
                  label: 'Beads',
                  value: format.count(Math.round((quantity / 1000) * beadsPerGram.value)),
                  basis: beadsPerGram.basis,
                  range: format.range(beadsPerGram, (rate) =>
                    format.count(Math.round((quantity / 1000) * rate)),
                  ),
                },
              ]),
        ]}
      />
      <TextInput
        label="Why it differs"
        error={at('note')}
        longest={2_000}
        optional
        value={note}
        onChange={setNote}
      />
    </FormSheet>
  )
}
