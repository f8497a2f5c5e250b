/** Beads whose slot differs, or `undefined` when there are more than `most` or the counts differ. */
export function changedBeads(
  before: Uint16Array,
  after: Uint16Array,
  most: number,
): readonly number[] | undefined {
  if (before.length !== after.length) return undefined
  const changed: number[] = []
  for (let bead = 0; bead < after.length; bead += 1) {
    if (before[bead] === after[bead]) continue
    if (changed.length === most) return undefined
    changed.push(bead)
  }
  return changed
}
