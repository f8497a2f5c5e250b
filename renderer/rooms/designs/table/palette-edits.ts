import { slotLabel } from '../../../../shared-core/chart/chart.ts'
import { countSlots } from '../../../../shared-core/chart/count-slots.ts'
import { sharedChart } from '../../../../shared-core/chart/shared-rows.ts'
import type { DesignBody, PaletteSlot } from '../../../../shared-core/design/design.ts'
import { firstPalette } from '../draft/first-palette.ts'

/** Slots the contract lets a palette hold. */
export const MOST_SLOTS = 2_000

/** The body with one more slot at the end of its palette, in the form of the panel that is drawn on. */
export function withNewSlot(body: DesignBody, formId: string): DesignBody {
  const label = slotLabel(body.palette.length)
  const fresh = firstPalette([`1${label}`], formId).at(-1)
  return fresh === undefined ? body : { ...body, palette: [...body.palette, fresh] }
}

/** The body with a slot named or coloured differently. */
export function withSlot(body: DesignBody, slot: PaletteSlot): DesignBody {
  return {
    ...body,
    palette: body.palette.map((one) => (one.label === slot.label ? slot : one)),
  }
}

/** The body without its last slot. Only the last can go: the letters of the others must not change. */
export function withoutLastSlot(body: DesignBody): DesignBody {
  return { ...body, palette: body.palette.slice(0, -1) }
}

/** Whether any bead of any part is of a slot. */
export function isSlotUsed({ parts }: DesignBody, slot: number): boolean {
  const label = new RegExp(`\\d${slotLabel(slot)}(?![A-Z])`)
  return parts.some((part) =>
    part.kind === 'strand'
      ? label.test(part.beads)
      : (countSlots(sharedChart(part.chart))[slot] ?? 0) > 0,
  )
}
