import { useState } from 'react'
import { slotKey } from '../../../../shared-core/design/bill.ts'
import type { PaletteSlot } from '../../../../shared-core/design/design.ts'
import { Button } from '../../../ui/button.tsx'
import { Select } from '../../../ui/select.tsx'
import type { Fillings } from '../page/open-design.ts'

/** Lets two slots change beads. */
export function SwapSlots({
  palette,
  fillings,
  onChange,
}: Readonly<{
  palette: readonly PaletteSlot[]
  fillings: Fillings
  onChange: (fillings: Fillings) => void
}>) {
  const [first, second] = palette
  const [one, setOne] = useState(first?.label ?? '')
  const [other, setOther] = useState(second?.label ?? '')
  if (second === undefined) return null
  const options = palette.map(({ label, name }) => ({ value: label, label: `${label}, ${name}` }))
  return (
    <div className="swap-slots">
      <Select label="Swap slot" value={one} options={options} onChange={setOne} />
      <Select label="with" value={other} options={options} onChange={setOther} />
      <Button
        disabled={one === other}
        onClick={() => onChange(swapped(fillings, slotKey(one), slotKey(other)))}
      >
        Swap
      </Button>
    </div>
  )
}

/** The fillings with what fills two keys exchanged; a key without a filling gives its emptiness on. */
export function swapped(fillings: Fillings, one: string, other: string): Fillings {
  const { [one]: first, [other]: second, ...rest } = fillings
  return {
    ...rest,
    ...(second === undefined ? {} : { [one]: second }),
    ...(first === undefined ? {} : { [other]: first }),
  }
}
