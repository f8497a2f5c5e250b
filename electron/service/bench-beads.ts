import { findForm } from '../../shared-core/beads/bead-tables.ts'
import { type Calibration, tableCalibration } from '../../shared-core/beads/calibration.ts'
import { beadsToHave, massOfCount } from '../../shared-core/beads/grams-and-counts.ts'
import { slotKey } from '../../shared-core/design/bill.ts'
import { readLearning } from './learned.ts'
import type { MakePlan } from './make-plan.ts'
import { calibrationsOf } from './store/material-rows.ts'
import { workshopTables } from './store/table-rows.ts'
import type { View } from './store/view.ts'

/** A slot of a make with the bead that fills it; `count` is for one unit. */
export type WorkSlot = Readonly<{ label: string; name: string; formId: string; count: number }>

/** A bead material of a make and the slots it fills, with how beads become its unit. */
export type WorkBead = Readonly<{
  materialId: string
  unit: 'mg' | 'piece'
  slots: readonly WorkSlot[]
  /** Beads in the material's unit: mg by the best calibration, or pieces. */
  quantityOf: (beads: number) => number
  /** Beads to have at hand for some good ones, by the cull rate the workshop has. */
  withCulls: (beads: number) => number
}>

/** The bead materials of a plan, in order of the bill. */
export async function readWorkBeads(view: View, plan: MakePlan): Promise<readonly WorkBead[]> {
  const { facts, bill, materials } = plan
  const tables = await workshopTables(view.trx)
  const calibrations = await calibrationsOf(view.trx, materials, tables)
  const { learned } = await readLearning(view)
  const lines = bill.lines.filter((line) => line.kind === 'bead' && line.material !== undefined)
  const byMaterial = Map.groupBy(lines, (line) => line.material?.materialId ?? '')
  return [...byMaterial].flatMap(([materialId, own]) => {
    const slots = own.flatMap(({ key, count }) => {
      const entry = facts.palette.find(({ label }) => slotKey(label) === key)
      return entry === undefined || count === undefined ? [] : [{ ...entry, count }]
    })
    const form = findForm(tables, slots[0]?.formId ?? '')
    if (form === undefined) return []
    const unit = own[0]?.material?.unit === 'piece' ? 'piece' : 'mg'
    const rate = (learned.cullRates[form.id] ?? form.cullRate).value
    const calibration = calibrations.get(materialId) ?? tableCalibration(form)
    return [
      {
        ...{ materialId, unit },
        slots: slots.map(({ label, name, formId, count }) => ({ label, name, formId, count })),
        quantityOf: toQuantity(unit, calibration),
        withCulls: (beads: number) => beadsToHave(beads, rate),
      },
    ]
  })
}

function toQuantity(unit: 'mg' | 'piece', calibration: Calibration) {
  return (beads: number) => (unit === 'piece' ? beads : massOfCount(beads, calibration).value)
}
