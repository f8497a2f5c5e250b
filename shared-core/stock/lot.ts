import type { CalendarDate } from '../units/calendar-date.ts'

/** A lot of a material: what came together and matches. `onHand` in the material's unit; may be below 0 after a miscount. */
export type Lot = Readonly<{
  lotId: string
  materialId: string
  onHand: number
  /** The day the lot was bought; absent when it is older than the records. */
  boughtOn?: CalendarDate
}>

/** Orders lots oldest first; undated lots are older than the records and come first; then by id. */
export function byAge(a: Lot, b: Lot): number {
  return compare(a.boughtOn ?? '', b.boughtOn ?? '') || compare(a.lotId, b.lotId)
}

/** Lots by material, each list oldest first. */
export function lotsByMaterial(lots: readonly Lot[]): ReadonlyMap<string, readonly Lot[]> {
  const grouped = Map.groupBy(lots, (lot) => lot.materialId)
  for (const group of grouped.values()) group.sort(byAge)
  return grouped
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}
