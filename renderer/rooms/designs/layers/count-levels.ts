/** Beads of one level. */
export type LevelCount = Readonly<{ level: number; beads: number }>

/** How many beads have each level, lowest first; levels without beads are left out. */
export function countLevels(levels: Uint16Array): readonly LevelCount[] {
  const counts = new Map<number, number>()
  for (const level of levels) counts.set(level, (counts.get(level) ?? 0) + 1)
  return [...counts]
    .map(([level, beads]) => ({ level, beads }))
    .toSorted((a, b) => a.level - b.level)
}
