import { useEffect } from 'react'
import type { CallOutput } from '../../../shared-core/contract/calls.ts'
import { parseMoney } from '../../../shared-core/units/parse-money.ts'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { IconButton } from '../../ui/button.tsx'
import { Picker } from '../../ui/picker.tsx'
import { QuantityInput } from '../../ui/quantity-input.tsx'
import { Select } from '../../ui/select.tsx'
import { parseUnits } from '../parse-units.ts'
import type { LineDraft } from './order-draft.ts'

type Designs = CallOutput<'designs.list'>['designs']

/** One line of an order while it is typed. The first colourway is taken until another is chosen. */
export function OrderLine({
  line,
  isNeeded,
  designs,
  onChange,
  onRemove,
}: Readonly<{
  line: LineDraft
  /** Whether the order would be empty without it; a line with no design is left out otherwise. */
  isNeeded: boolean
  designs: Designs
  onChange: (patch: Partial<LineDraft>) => void
  onRemove: (() => void) | undefined
}>) {
  const format = useFormat()
  const design = useCall(
    'designs.read',
    line.designId === null ? null : { id: line.designId },
  ).value
  const isRead = design !== undefined && design.id === line.designId
  const colourways = isRead ? design.colourways : []
  const isBare = isRead && colourways.length === 0
  const first = isRead && line.colourwayId === null ? colourways[0]?.id : undefined
  useEffect(() => {
    if (first !== undefined) onChange({ colourwayId: first })
  })
  return (
    <li className="order-line">
      <Picker
        label="Design"
        missing={isNeeded ? 'Choose what is ordered.' : undefined}
        error={isBare ? 'It has no colourway yet. Choose its beads first, on its page.' : undefined}
        value={line.designId}
        options={designs.map(({ id, name }) => ({ value: id, label: name }))}
        onChange={(designId) => onChange({ designId, colourwayId: null })}
      />
      <Select
        label="Colourway"
        missing={line.designId === null ? undefined : 'Choose its colourway.'}
        value={line.colourwayId}
        disabled={colourways.length === 0}
        options={colourways.map(({ id, name }) => ({ value: id, label: name }))}
        onChange={(colourwayId) => onChange({ colourwayId })}
      />
      <QuantityInput
        label={isRead ? `How many (${design.body.unitName})` : 'How many'}
        text={line.unitsText}
        parse={(text) => parseUnits(text, format)}
        onText={(unitsText, units) => onChange({ unitsText, units })}
      />
      <QuantityInput
        label="Price of one"
        optional
        unit={format.currency}
        text={line.priceText}
        parse={(text) => parseMoney(text, { currency: format.currency, decimal: format.decimal })}
        onText={(priceText, value) => onChange({ priceText, priceMinor: value?.amountMinor })}
      />
      {onRemove !== undefined && (
        <IconButton icon="close" label="Remove this line" onClick={onRemove} />
      )}
    </li>
  )
}
