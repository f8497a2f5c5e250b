import type { z } from 'zod'
import type { Calibration } from '../../../shared-core/beads/calibration.ts'
import { bestCalibration } from '../../../shared-core/beads/calibration.ts'
import { countOfMass } from '../../../shared-core/beads/grams-and-counts.ts'
import type { BeadTables } from '../../../shared-core/beads/user-forms.ts'
import type { materialRow } from '../../../shared-core/contract/stock-calls.ts'
import { restockState } from '../../../shared-core/stock/restock.ts'
import type { Spread } from '../../../shared-core/units/spread.ts'
import type { Row } from '../store/database.ts'
import { type LotRow, tableForm, toMaterialFields } from '../store/material-rows.ts'

export type MaterialView = z.output<typeof materialRow>

type Standing = Readonly<{
  lots: readonly LotRow[]
  /** What open orders still need of it, in its unit. */
  reserved: number
  calibration: Calibration | undefined
  tables: BeadTables
}>

/** A material as lists show it. */
export function viewMaterial(row: Row<'material'>, standing: Standing): MaterialView {
  const { lots, reserved, calibration, tables } = standing
  const onHand = sum(lots.map((lot) => lot.on_hand))
  return {
    ...toMaterialFields(row),
    id: row.id,
    unit: row.unit,
    onHand,
    reserved,
    available: onHand - reserved,
    lots: lots.length,
    valueMinor: sum(lots.map((lot) => lot.value_minor)),
    alert: alertOf(row, { lots, onHand, reserved }),
    beads: beadsOf(onHand, calibrationOf(row, calibration, tables)),
  }
}

function alertOf(
  row: Row<'material'>,
  {
    lots,
    onHand,
    reserved,
  }: Readonly<{ lots: readonly LotRow[]; onHand: number; reserved: number }>,
): MaterialView['alert'] {
  // First, because weighing it may cure all the others.
  if (lots.some((lot) => lot.weighed === 0)) return 'unweighed'
  const { kind } = restockState({ onHand, promised: reserved, reserved: 0, lowAt: row.low_at })
  return kind === 'enough' ? 'none' : kind
}

/** The calibration a material's grams are counted by: its own weighings, else its form's table. */
export function calibrationOf(
  row: Row<'material'>,
  own: Calibration | undefined,
  tables: BeadTables,
): Calibration | undefined {
  if (row.kind !== 'bead') return undefined
  const form = tableForm(row, tables)
  return own ?? (form && bestCalibration(form, []))
}

function beadsOf(onHand: number, calibration: Calibration | undefined): Spread | null {
  return calibration === undefined ? null : countOfMass(Math.max(0, onHand), calibration)
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0)
}
