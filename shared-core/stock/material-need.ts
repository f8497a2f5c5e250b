import { assert } from '../assert.ts'
import type { BillLine } from '../design/bill.ts'
import type { MaterialUnit } from './material-unit.ts'

/**
 * What one unit takes of one material: a whole `quantity` above 0 in the material's `unit`.
 *
 * `lotsMatter`: each unit takes all of it from one lot, because mixed lots would show.
 */
export type MaterialNeed = Readonly<{
  materialId: string
  unit: MaterialUnit
  lotsMatter: boolean
  quantity: number
}>

/**
 * The needs of one unit by material, in order of the bill; keys without a material are left out.
 *
 * A material under several keys is summed, so that its lot is kept over the whole unit.
 *
 * @example slots A 1200 mg and C 300 mg of the same bead -> one need of 1500 mg
 */
export function needsPerUnit(bill: readonly BillLine[]): readonly MaterialNeed[] {
  const needs = new Map<string, MaterialNeed>()
  for (const { material, quantity } of bill) {
    if (!material || quantity === 0) continue
    const before = needs.get(material.materialId)
    assert(
      !before || before.unit === material.unit,
      `${material.materialId} is counted in one unit on every line of a bill`,
    )
    needs.set(material.materialId, { ...material, quantity: (before?.quantity ?? 0) + quantity })
  }
  return [...needs.values()]
}

/** Keys of the bill that have no material yet, in order of the bill. */
export function unassignedKeys(bill: readonly BillLine[]): readonly string[] {
  return bill.filter((line) => !line.material).map((line) => line.key)
}
