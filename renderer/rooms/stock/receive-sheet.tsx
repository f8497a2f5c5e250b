import { useState } from 'react'
import { parseMoney } from '../../../shared-core/units/parse-money.ts'
import { placeRefusal } from '../../app/place-refusal.ts'
import { useAct } from '../../app/use-act.ts'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { DateInput } from '../../ui/date-input.tsx'
import { FormSheet } from '../../ui/form-sheet.tsx'
import { QuantityInput } from '../../ui/quantity-input.tsx'
import { Select } from '../../ui/select.tsx'
import { TextInput } from '../../ui/text-input.tsx'
import type { MaterialDetail } from './material-page.tsx'
import { someParser, unitWords } from './quantity-parser.ts'

const NO_SUPPLIER = 'none'

/** Takes a new lot into stock. */
export function ReceiveSheet({
  detail,
  onClose,
}: Readonly<{ detail: MaterialDetail; onClose: () => void }>) {
  const format = useFormat()
  const { material } = detail
  const shop = useCall('workshop.read', {})
  const [quantity, setQuantity] = useState<readonly [string, number | undefined]>(['', undefined])
  const [cost, setCost] = useState<readonly [string, number | undefined]>(['', undefined])
  const [dyeLot, setDyeLot] = useState('')
  const [supplier, setSupplier] = useState(NO_SUPPLIER)
  const [boughtOn, setBoughtOn] = useState(format.today)
  const receive = useAct('lots.receive', {
    said: () => `Took in ${material.name}`,
    of: [quantity, cost, dyeLot, supplier, boughtOn],
  })
  const { at, above } = placeRefusal(receive.refusal, [
    'quantity',
    'dyeLot',
    'costMinor',
    'supplierId',
    'boughtOn',
  ])
  async function submit() {
    if (quantity[1] === undefined) return
    const answer = await receive.act({
      materialId: material.id,
      quantity: quantity[1],
      dyeLot,
      supplierId: supplier === NO_SUPPLIER ? null : supplier,
      boughtOn: boughtOn === '' ? null : boughtOn,
      costMinor: cost[1] ?? null,
      note: '',
    })
    if (answer.ok) onClose()
  }
  const suppliers = (shop.value?.suppliers ?? []).map(({ id, name }) => ({
    value: id,
    label: name,
  }))
  return (
    <FormSheet
      title={`Take in ${material.name}`}
      above={above}
      label="Take it in"
      isBusy={receive.isBusy}
      onSave={() => void submit()}
      onClose={onClose}
    >
      <QuantityInput
        label="How much"
        error={at('quantity')}
        missing="Say how much came in."
        unit={unitWords[material.unit]}
        autoFocus
        text={quantity[0]}
        parse={someParser(material.unit, format)}
        onText={(text, value) => setQuantity([text, value])}
      />
      <TextInput
        label="Dye lot"
        error={at('dyeLot')}
        longest={60}
        hint="As on the label; it keeps lots apart within a piece."
        optional
        value={dyeLot}
        onChange={setDyeLot}
      />
      <QuantityInput
        label="What all of it cost"
        error={at('costMinor')}
        optional
        unit={format.currency}
        text={cost[0]}
        parse={(text) => parseMoney(text, { currency: format.currency, decimal: format.decimal })}
        onText={(text, value) => setCost([text, value?.amountMinor])}
      />
      <Select
        label="Supplier"
        error={at('supplierId')}
        value={supplier}
        options={[{ value: NO_SUPPLIER, label: 'not named' }, ...suppliers]}
        onChange={setSupplier}
      />
      <DateInput
        optional
        label="Bought on"
        error={at('boughtOn')}
        today={format.today}
        value={boughtOn}
        onChange={setBoughtOn}
      />
    </FormSheet>
  )
}
