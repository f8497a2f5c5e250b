import type { BeadFinish, BeadForm } from '../../../../shared-core/beads/bead-form.ts'
import { findForm } from '../../../../shared-core/beads/bead-tables.ts'
import { slotLabel } from '../../../../shared-core/chart/chart.ts'
import { slotKey } from '../../../../shared-core/design/bill.ts'
import type { SheetData } from './sheet-data.ts'

/** How a slot looks and is named on the sheet: by its bead, else by the palette. */
export type SlotLook = Readonly<{
  index: number
  letter: string
  name: string
  code: string
  drawer: string
  colourHex: string
  finish: BeadFinish
  form: BeadForm | undefined
}>

/** The look of any slot, also of one that the palette does not name. */
export function slotLooks({ body, fillings, tables }: SheetData): (slot: number) => SlotLook {
  const known = new Map<number, SlotLook>()
  const look = (index: number): SlotLook => {
    const entry = body.palette[index]
    const letter = entry?.label ?? slotLabel(index)
    const filling = fillings[slotKey(letter)]
    return {
      index,
      letter,
      name: capitalised(filling?.name ?? (entry?.name || 'no bead chosen')),
      code: filling?.code ?? '',
      drawer: filling?.drawer ?? '',
      colourHex: filling?.colourHex ?? entry?.colourHex ?? '#888888',
      finish: filling?.finish ?? entry?.finish ?? 'opaque',
      form: entry && findForm(tables, entry.formId),
    }
  }
  return (index) => {
    const found = known.get(index) ?? look(index)
    known.set(index, found)
    return found
  }
}

/** A name as it begins a line of a list. */
export function capitalised(name: string): string {
  const [first = '', ...rest] = name
  return `${first.toLocaleUpperCase('en')}${rest.join('')}`
}
