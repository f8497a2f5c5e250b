import { useState } from 'react'
import { parseMoney } from '../../../shared-core/units/parse-money.ts'
import { go } from '../../app/place.ts'
import { useAct } from '../../app/use-act.ts'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { Button } from '../../ui/button.tsx'
import { Notice, RefusalNotice } from '../../ui/notice.tsx'
import { QuantityInput } from '../../ui/quantity-input.tsx'
import { Select } from '../../ui/select.tsx'
import { SideSheet } from '../../ui/side-sheet.tsx'
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
  const save = useAct('offers.save', { said: () => `Added a pack of ${material.name}` })
  const isReady =
    supplierId !== undefined && pack[1] !== undefined && pack[1] > 0 && price[1] !== undefined
  async function submit() {
    if (supplierId === undefined) return
    const offer = {
      materialId: material.id,
      supplierId,
      packQuantity: pack[1] ?? 0,
      priceMinor: price[1] ?? 0,
    }
    if ((await save.act({ offer })).ok) onClose()
  }
  return (
    <SideSheet
      open
      title={`A pack of ${material.name}`}
      onClose={onClose}
      actions={
        <Button kind="primary" busy={save.isBusy} disabled={!isReady} onClick={() => void submit()}>
          Save
        </Button>
      }
    >
      {save.refusal !== undefined && <RefusalNotice refusal={save.refusal} />}
      {suppliers.length === 0 && (
        <Notice
          title="No supplier yet"
          actions={<Button onClick={() => go({ room: 'settings' })}>Go to Settings</Button>}
        >
          Enter your suppliers in Settings first.
        </Notice>
      )}
      <Select
        label="Supplier"
        value={supplierId ?? null}
        options={suppliers.map(({ id, name }) => ({ value: id, label: name }))}
        onChange={setSupplier}
      />
      <QuantityInput
        label="In one pack"
        unit={unitWords[material.unit]}
        text={pack[0]}
        parse={someParser(material.unit, format)}
        onText={(text, value) => setPack([text, value])}
      />
      <QuantityInput
        label="Price of a pack"
        unit={format.currency}
        text={price[0]}
        parse={(text) => parseMoney(text, { currency: format.currency, decimal: format.decimal })}
        onText={(text, value) => setPrice([text, value?.amountMinor])}
      />
    </SideSheet>
  )
}
