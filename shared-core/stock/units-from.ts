/**
 * Units that rooms of stock allow at `perUnit` each.
 *
 * Where lots matter no unit mixes lots: the sum of floor(lot / need); elsewhere floor(total / need).
 *
 * @param rooms available by lot, in the material's unit; below 0 counts as 0
 * @param perUnit whole, above 0
 * @example unitsFrom([29, 29, 2], 15, true) -> 2; unitsFrom([29, 29, 2], 15, false) -> 4
 */
export function unitsFrom(rooms: readonly number[], perUnit: number, lotsMatter: boolean): number {
  const usable = rooms.map((room) => Math.max(0, room))
  const parts = lotsMatter ? usable : [usable.reduce((sum, room) => sum + room, 0)]
  return parts.reduce((sum, part) => sum + Math.floor(part / perUnit), 0)
}
