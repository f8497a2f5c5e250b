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
  const { material } = detail
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
      <CountFigures detail={detail} lot={lot} quantity={isUnderTare ? undefined : quantity} />
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

type CountFiguresProps = Readonly<{
  detail: MaterialDetail
  lot: LotRow
  /** What was weighed or counted, in the material's unit; `undefined` while that is not known. */
  quantity: number | undefined
}>

/** What the lot becomes, beside what the books say. */
function CountFigures({ detail, lot, quantity }: CountFiguresProps) {
  const format = useFormat()
  const { unit } = detail.material
  const { beadsPerGram } = detail
  const write = (amount: number | undefined) =>
    amount === undefined ? '–' : format.quantity(amount, unit)
  const beads = (mg: number, perGram: number) => format.count(Math.round((mg / 1000) * perGram))
  return (
    <FigureList
      figures={[
        { label: 'On hand then', value: write(quantity) },
        { label: 'By the books', value: write(lot.onHand) },
        {
          label: 'Difference',
          value: write(quantity === undefined ? undefined : quantity - lot.onHand),
        },
        ...(beadsPerGram === null || quantity === undefined
          ? []
          : [
              {
                label: 'Beads',
                value: beads(quantity, beadsPerGram.value),
                basis: beadsPerGram.basis,
                range: format.range(beadsPerGram, (rate) => beads(quantity, rate)),
              },
            ]),
      ]}
    />
  )
}
