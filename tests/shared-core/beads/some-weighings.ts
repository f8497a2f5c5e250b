import type { BeadForm } from '../../../shared-core/beads/bead-form.ts'
import { findForm, referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import type { Weighing } from '../../../shared-core/beads/weighing.ts'
import { massMg } from '../../../shared-core/units/mass.ts'

/** Cylinder 11/0 of the reference tables. */
export const cylinder = cylinderForm()

function cylinderForm(): BeadForm {
  const form = findForm(referenceTables, 'cylinder-11/0')
  if (form === undefined) throw new Error('the reference tables have lost their cylinder')
  return form
}

/** Beads weighed with their tube, all in mg. */
export const weighing = (beads: number, gross: number, tare = 0, digitMg = 10): Weighing => ({
  beads,
  grossMg: massMg(gross),
  tareMg: massMg(tare),
  digitMg,
})
