import { useFormat } from '../../app/use-format.ts'
import { Picker } from '../../ui/picker.tsx'
import { QuantityInput } from '../../ui/quantity-input.tsx'
import { Select } from '../../ui/select.tsx'
import { parseUnits } from '../parse-units.ts'
import type { MakeChoice } from './use-make-choice.ts'

type FieldProps = Readonly<{ choice: MakeChoice; onOther?: () => void }>

/** The design that is made: chosen here, or only named where the sheet was opened for it. */
export function DesignField({ choice, onOther }: FieldProps) {
  const { start, designs, designId, chooseDesign, design } = choice
  if (start.designId !== undefined) return <p className="bench-design">{design?.name}</p>
  return (
    <Picker
      label="Design"
      missing="Choose what is made."
      value={designId}
      options={designs.map(({ id, name }) => ({ value: id, label: name }))}
      onChange={(id) => {
        chooseDesign(id)
        onOther?.()
      }}
    />
  )
}

/** Its colourway; an order's line has settled it. */
export function ColourwayField({ choice, onOther }: FieldProps) {
  const { start, design, colourwayId, setColourway } = choice
  if (design === undefined) return null
  return (
    <Select
      label="Colourway"
      missing="This design has no colourway yet. Choose its beads first, on its page."
      value={colourwayId ?? null}
      disabled={start.orderLineId !== undefined}
      options={design.colourways.map(({ id, name }) => ({ value: id, label: name }))}
      onChange={(id) => {
        setColourway(id)
        onOther?.()
      }}
    />
  )
}

/** How many are made. */
export function UnitsField({ choice: { units, setUnits } }: FieldProps) {
  const format = useFormat()
  return (
    <QuantityInput
      label="How many"
      missing="Say how many."
      text={units[0]}
      parse={(text) => parseUnits(text, format)}
      onText={(text, value) => setUnits([text, value])}
    />
  )
}
