import { useState } from 'react'
import type { PaletteSlot } from '../../../../shared-core/design/design.ts'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import { useFormat } from '../../../app/use-format.ts'
import { Button } from '../../../ui/button.tsx'
import { Field } from '../../../ui/field.tsx'
import { Picker } from '../../../ui/picker.tsx'
import { Select } from '../../../ui/select.tsx'
import { SideSheet } from '../../../ui/side-sheet.tsx'
import { Swatch } from '../../../ui/swatch.tsx'
import { TextInput } from '../../../ui/text-input.tsx'
import { finishOptions } from '../../finish-options.ts'
import { formOptions } from '../draft/trade-options.ts'
import type { SlotBead } from '../page/slot-beads.ts'
import { isSlotUsed, withoutLastSlot, withSlot } from './palette-edits.ts'
import type { Draft } from './use-draft.ts'

/** One slot of the palette: its name, colour, finish and form, or its going. */
export function SlotSheet({
  draft,
  at,
  bead,
  onClose,
}: Readonly<{ draft: Draft; at: number; bead: SlotBead | undefined; onClose: () => void }>) {
  const { decimal } = useFormat()
  const { body } = draft
  const tables = useBeadTables()
  const [slot, setSlot] = useState<PaletteSlot | undefined>(body.palette[at])
  if (slot === undefined) return null
  const set = (part: Partial<PaletteSlot>) => setSlot({ ...slot, ...part })
  const reason = whyItStays(draft, at)
  function keep(): void {
    if (slot !== undefined) draft.change(`Change slot ${slot.label}`, withSlot(body, slot))
    onClose()
  }
  return (
    <SideSheet
      open
      title={`Slot ${slot.label}`}
      onClose={onClose}
      actions={
        <>
          <Button kind="primary" icon="check" onClick={keep}>
            Keep
          </Button>
          <Button
            kind="danger"
            icon="remove"
            disabled={reason !== undefined}
            onClick={() => {
              draft.change(`Remove slot ${slot.label}`, withoutLastSlot(body))
              onClose()
            }}
          >
            Remove
          </Button>
        </>
      }
    >
      <Swatch look={{ hex: slot.colourHex, finish: slot.finish }} name={slot.name} size={44} />
      {bead?.material !== undefined && (
        <p className="designs-quiet">
          {`Drawn as ${bead.material.name}, which fills it in the first colourway. The colour below is for where no bead is chosen.`}
        </p>
      )}
      <TextInput label="Name" value={slot.name} longest={120} onChange={(name) => set({ name })} />
      <Field label="Colour">
        {(control) => (
          <input
            {...control}
            type="color"
            className="input table-colour"
            value={slot.colourHex}
            onChange={(event) => set({ colourHex: event.target.value.toLowerCase() })}
          />
        )}
      </Field>
      <Select
        label="Finish"
        value={slot.finish}
        options={finishOptions}
        onChange={(finish) => set({ finish })}
      />
      <Picker
        label="Bead form"
        value={slot.formId}
        options={formOptions(tables, decimal)}
        onChange={(formId) => formId !== null && set({ formId })}
      />
      {reason !== undefined && <p className="designs-quiet">{reason}</p>}
    </SideSheet>
  )
}

/** Why a slot cannot be removed, or nothing when it can. */
function whyItStays({ body }: Draft, at: number): string | undefined {
  if (isSlotUsed(body, at)) return 'It cannot be removed while beads of it are in the design.'
  if (at < body.palette.length - 1) {
    return 'Only the last slot can be removed: the letters of the others stand in colourways.'
  }
  return body.palette.length === 1 ? 'The last slot of all stays, to draw with.' : undefined
}
