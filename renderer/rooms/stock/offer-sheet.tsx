import { useState } from 'react'
import { parseMoney } from '../../../shared-core/units/parse-money.ts'
import { placeRefusal } from '../../app/place-refusal.ts'
import { useAct } from '../../app/use-act.ts'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { Button } from '../../ui/button.tsx'
import { FormSheet } from '../../ui/form-sheet.tsx'
import { Notice } from '../../ui/notice.tsx'
import { QuantityInput } from '../../ui/quantity-input.tsx'
import { Select } from '../../ui/select.tsx'
import { SupplierForm } from '../settings/supplier-form.tsx'
import type { MaterialDetail } from './material-page.tsx'
import { someParser, unitWords } from './quantity-parser.ts'

/** Says in which pack and at what price a supplier sells a material. */
export function OfferSheet({
  detail,
  onClose,
}: Readonly<{ detail: MaterialDetail; onClose: () => void }>) {
  const format = useFormat()
  const { material } = detail
  const suppliers = useCall('workshop.read', {}).value?.suppliers ?? []
  const [supplierId, setSupplier] = useState<string>()
  const [pack, setPack] = useState<readonly [string, number | undefined]>(['', undefined])
  const [price, setPrice] = useState<readonly [string, number | undefined]>(['', undefined])
  const [isAdding, setAdding] = useState(false)
  const save = useAct('offers.save', {
    said: () => `Added a pack of ${material.name}`,
    of: [supplierId, pack, price],
  })
  const { at, above } = placeRefusal(save.refusal, [
    'offer.supplierId',
    'offer.packQuantity',
    'offer.priceMinor',
  ])
  async function submit() {
    if (supplierId === undefined || pack[1] === undefined || price[1] === undefined) return
    const offer = {
      materialId: material.id,
      supplierId,
      packQuantity: pack[1],
      priceMinor: price[1],
    }
    if ((await save.act({ offer })).ok) onClose()
  }
  return (
    <FormSheet
      title={`A pack of ${material.name}`}
      above={above}
      isBusy={save.isBusy}
      onSave={() => void submit()}
      onClose={onClose}
    >
      {suppliers.length === 0 && (
        <Notice
          title="No supplier yet"
          actions={
            <Button icon="add" onClick={() => setAdding(true)}>
              Add a supplier
            </Button>
          }
        >
          Say who sells it; what you typed here stays.
        </Notice>
      )}
      {isAdding && (
        <SupplierForm supplier={undefined} onClose={() => setAdding(false)} onSaved={setSupplier} />
      )}
      <Select
        label="Supplier"
        error={at('offer.supplierId')}
        missing="Choose who sells it."
        value={supplierId ?? null}
        options={suppliers.map(({ id, name }) => ({ value: id, label: name }))}
        onChange={setSupplier}
      />
      <QuantityInput
        label="In one pack"
        error={at('offer.packQuantity')}
        missing="Say how much is in a pack."
        unit={unitWords[material.unit]}
        text={pack[0]}
        parse={someParser(material.unit, format)}
        onText={(text, value) => setPack([text, value])}
      />
      <QuantityInput
        label="Price of a pack"
        error={at('offer.priceMinor')}
        missing="Say what a pack costs; 0 where it is free."
        unit={format.currency}
        text={price[0]}
        parse={(text) => parseMoney(text, { currency: format.currency, decimal: format.decimal })}
        onText={(text, value) => setPrice([text, value?.amountMinor])}
      />
    </FormSheet>
  )
}
