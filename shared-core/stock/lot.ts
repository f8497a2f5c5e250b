import type { CalendarDate } from '../units/calendar-date.ts'

/** A lot of a material: what came together and matches. `onHand` in the material's unit; may be below 0 after a miscount. */
export type Lot = Readonly<{
  lotId: string
  materialId: string
  onHand: number
  /** The day the lot was bought; absent or null when it is older than the records. */
  boughtOn?: CalendarDate | null
}>

/** Orders lots oldest first; undated lots are older than the records and come first; then by id. */
export function byAge(a: Lot, b: Lot): number {
  return compare(a.boughtOn ?? '', b.boughtOn ?? '') || compare(a.lotId, b.lotId)
}

/** Lots by material, each list oldest first. */
export function lotsByMaterial(lots: readonly Lot[]): ReadonlyMap<string, readonly Lot[]> {
  const grouped = Map.groupBy(lots, (lot) => lot.materialId)
  for (const group of grouped.values()) sortByAge(group)
  return grouped
}

/** A few lots are put in place one by one: a thousand materials are sorted so, and `sort` allocates for each. */
function sortByAge(lots: Lot[]): void {
  if (lots.length > FEW) lots.sort(byAge)
  else {
    for (let at = 1; at < lots.length; at++) {
      const lot = lots[at] as Lot
      let to = at
      for (; to > 0 && byAge(lots[to - 1] as Lot, lot) > 0; to--) lots[to] = lots[to - 1] as Lot
      lots[to] = lot
    }
  }
}

const FEW = 16

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}
