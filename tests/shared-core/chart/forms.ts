import type { BeadForm } from '../../../shared-core/beads/bead-form.ts'
import { estimated } from '../../../shared-core/units/spread.ts'

/** The everyday bead of the workshop: an 11/0 cylinder, 1.6 mm across, 1.3 mm long. */
export const CYLINDER: BeadForm = {
  id: 'cylinder-11',
  name: 'Cylinder bead',
  family: 'cylinder',
  sizeLabel: '11/0',
  diameterMm: estimated(1.55, 1.6, 1.65),
  lengthMm: estimated(1.25, 1.3, 1.35),
  holeMm: estimated(0.75, 0.8, 0.85),
  beadsPerGram: estimated(190, 200, 210),
  cullRate: estimated(0.01, 0.02, 0.03),
}

/** A bead of given diameter and length, for the tables of other sizes. */
export function beadOf(diameterMm: number, lengthMm: number): BeadForm {
  return {
    ...CYLINDER,
    diameterMm: estimated(diameterMm, diameterMm, diameterMm),
    lengthMm: estimated(lengthMm, lengthMm, lengthMm),
  }
}
