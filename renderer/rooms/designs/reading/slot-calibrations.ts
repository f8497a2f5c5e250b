import { findForm } from '../../../../shared-core/beads/bead-tables.ts'
import { beadCv, type Calibration } from '../../../../shared-core/beads/calibration.ts'
import type { BeadTables } from '../../../../shared-core/beads/user-forms.ts'
import { slotKey } from '../../../../shared-core/design/bill.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { Spread } from '../../../../shared-core/units/spread.ts'

type Weighed = Readonly<{
  /** Material ids by key of the bill: the colourway. */
  materials: Readonly<Record<string, string>>
  /** This workshop's own weighings, by material. */
  beadsPerGram: Readonly<Record<string, Spread>>
}>

/** How the beads that fill each slot weigh, by slot letter, where this workshop has weighed them. */
export function slotCalibrations(
  palette: DesignBody['palette'],
  tables: BeadTables,
  { materials, beadsPerGram }: Weighed,
): Readonly<Record<string, Calibration>> {
  return Object.fromEntries(
    palette.flatMap(({ label, formId }) => {
      const weighed = beadsPerGram[materials[slotKey(label)] ?? '']
      const form = findForm(tables, formId)
      if (weighed === undefined || form === undefined) return []
      return [[label, { beadsPerGram: weighed, cv: beadCv(form) }] as const]
    }),
  )
}
