import type { BeadForm } from '../beads/bead-form.ts'
import { type Calibration, tableCalibration } from '../beads/calibration.ts'
import { massOfCount, needMass } from '../beads/grams-and-counts.ts'
import type { Learned } from './learned.ts'
import type { SlotCount } from './reading.ts'

/** What a workshop knows of the beads of a slot: its own weighing of them, and what it puts aside by form. */
export type SlotKnown = Readonly<{
  calibration: Calibration | undefined
  cullRates: Learned['cullRates'] | undefined
}>

/** Mass of a slot's beads in mg, in the unit and at hand, by what the workshop knows; the form's own figures for the rest. */
export function weighSlot(
  { label, count }: Pick<SlotCount, 'label' | 'count'>,
  form: BeadForm,
  { calibration = tableCalibration(form), cullRates }: SlotKnown,
): SlotCount {
  const cullRate = cullRates?.[form.id] ?? form.cullRate
  return {
    label,
    count,
    massMg: massOfCount(count, calibration),
    needMg: needMass(count, calibration, cullRate),
  }
}
