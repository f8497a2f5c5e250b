import type { BillLine } from '../design/bill.ts'
import { type Lot, lotsByMaterial } from './lot.ts'
import { type MaterialNeed, needsPerUnit, unassignedKeys } from './material-need.ts'
import { unitsFrom } from './units-from.ts'

/** Units one material allows of a single design; `available` is in the material's unit. */
export type MaterialMakeable = Readonly<{
  materialId: string
  perUnit: number
  available: number
  units: number
}>

/** Units of a design that can be made from what is available, and what limits them. */
export type Makeable = Readonly<{
  units: number
  /** Keys without a material: nothing can be made until they have one, so `units` is 0. */
  unassigned: readonly string[]
  materials: readonly MaterialMakeable[]
  /** Materials that allow no more than `units`. */
  limits: readonly MaterialMakeable[]
}>

/**
 * Units of one design that stock allows now.
 *
 * The least over materials of `unitsFrom`; exact.
 *
 * @param bill of one unit (`billOfMaterials`)
 * @param lots with `onHand` as what is available of them; below 0 counts as 0
 * @returns 0 units for a bill with an unassigned key or without any line
 * @example need 15 where lots matter, lots 29, 29 and 2 -> 2 units, though 60 / 15 is 4
 */
export function makeable(bill: readonly BillLine[], lots: readonly Lot[]): Makeable {
  const unassigned = unassignedKeys(bill)
  const lotsOf = lotsByMaterial(lots)
  const materials = needsPerUnit(bill).map((need) =>
    allowed(need, lotsOf.get(need.materialId) ?? []),
  )
  const least = Math.min(...materials.map((material) => material.units))
  const units = unassigned.length > 0 || materials.length === 0 ? 0 : least
  return { units, unassigned, materials, limits: materials.filter((m) => m.units <= units) }
}

function allowed(need: MaterialNeed, lots: readonly Lot[]): MaterialMakeable {
  const { materialId, lotsMatter, quantity: perUnit } = need
  const rooms = lots.map((lot) => Math.max(0, lot.onHand))
  const available = rooms.reduce((sum, room) => sum + room, 0)
  return { materialId, perUnit, available, units: unitsFrom(rooms, perUnit, lotsMatter) }
}
