import type { BeadForm } from '../../../../shared-core/beads/bead-form.ts'
import type { BeadLook } from '../../../drawing/bead-look.ts'
import type { BeadScene } from '../../../drawing/bead-scene.ts'

/** A strand laid across, from the panel outwards at the left: the way it is strung. */
export function strandScene(
  slots: readonly number[],
  palette: readonly BeadLook[],
  formOf: (slot: number) => BeadForm | undefined,
): BeadScene {
  const sizes = palette.map((_, slot) => ({
    widthMm: formOf(slot)?.diameterMm.value ?? 1.6,
    heightMm: formOf(slot)?.lengthMm.value ?? 1.3,
  }))
  const highest = Math.max(...slots.map((slot) => sizes[slot]?.widthMm ?? 1))
  let end = 0
  const xMm = Float32Array.from(slots, (slot) => {
    const lengthMm = sizes[slot]?.heightMm ?? 1
    end += lengthMm
    return end - lengthMm / 2
  })
  return {
    xMm,
    yMm: new Float32Array(slots.length).fill(highest / 2),
    slotOf: Uint16Array.from(slots),
    palette,
    widthMm: end,
    heightMm: highest,
    beadWidthMm: sizes[slots[0] ?? 0]?.widthMm ?? 1,
    beadHeightMm: sizes[slots[0] ?? 0]?.heightMm ?? 1,
    boxOfSlot: sizes,
    axis: 'vertical',
    turnedOf: new Uint8Array(slots.length).fill(1),
  }
}
