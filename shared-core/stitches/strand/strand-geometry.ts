import type { BeadForm } from '../../beads/bead-form.ts'
import type { PartGeometry } from '../../route/part-geometry.ts'

/**
 * The geometry of beads on a thread, hole to hole, hanging down from 0; each bead by its own form.
 *
 * @param forms - Form of each bead, from the panel outwards.
 * @param joinLengthMm - Length along the hole of the beads the strand hangs from; 0 when it hangs from nothing.
 */
export function strandGeometry(
  forms: readonly BeadForm[],
  threadMm: number,
  joinLengthMm: number,
): PartGeometry {
  const lengthMm = Float32Array.from(forms, (form) => form.lengthMm.value)
  const yMm = new Float32Array(forms.length)
  let end = 0
  lengthMm.forEach((length, bead) => {
    yMm[bead] = end + length / 2
    end += length
  })
  return {
    count: forms.length,
    xMm: new Float32Array(forms.length),
    yMm,
    upright: new Uint8Array(forms.length).fill(1),
    lengthMm,
    diameterMm: Float32Array.from(forms, (form) => form.diameterMm.value),
    threadMm,
    strung: true,
    playMm: 0,
    joinLengthMm,
  }
}
