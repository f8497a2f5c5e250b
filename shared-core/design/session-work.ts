import type { LoggedSession } from './labour-learning.ts'
import type { Pace } from './labour-pace.ts'
import { type PartWork, stitchingS } from './part-work.ts'
import type { OwnSeconds } from './read-labour.ts'

/** Time kept over some finished units of a design: whole seconds, what each unit takes, the maker's own figures. */
export type TimedWork = Readonly<{
  work: readonly PartWork[]
  own: OwnSeconds
  units: number
  seconds: number
}>

/**
 * One stretch of kept time as sessions of each kind of work it went into.
 *
 * A clock at the bench does not say what the hand was doing, so the time is shared out as it was
 * reckoned: all kinds were faster or slower alike. Set-up and finishing that the maker has set
 * herself take their share but teach nothing. Nothing without time or units.
 */
export function sessionWork(timed: TimedWork, pace: Pace): readonly LoggedSession[] {
  const { own, units, seconds } = timed
  const parts = byKind(timed)
  const setUpS = units * (own.setUpS ?? pace.setUpS.value)
  const finishingS = units * (own.finishingS ?? pace.finishingS.value)
  const reckoned = parts.map((part) => stitchingS(part, pace).value)
  const total = reckoned.reduce((sum, one) => sum + one, setUpS + finishingS)
  if (!(seconds > 0 && units > 0 && total > 0)) return []
  const share = seconds / total
  const none = { beads: 0, rows: 0 }
  return [
    ...(own.setUpS === undefined
      ? [{ work: 'set-up' as const, ...none, units, seconds: share * setUpS }]
      : []),
    ...parts.map(({ kind, beads, rows }, at) => ({
      ...{ work: kind, beads, rows, units: 0 },
      seconds: share * (reckoned[at] ?? 0),
    })),
    ...(own.finishingS === undefined
      ? [{ work: 'finishing' as const, ...none, units, seconds: share * finishingS }]
      : []),
  ]
}

/** Beads and rows of all units together, a line for each kind of stitch. */
function byKind({ work, units }: TimedWork): readonly Omit<PartWork, 'copies'>[] {
  const kinds = Map.groupBy(work, (part) => part.kind)
  return [...kinds].map(([kind, parts]) => ({
    kind,
    beads: parts.reduce((sum, { beads, copies }) => sum + beads * copies * units, 0),
    rows: parts.reduce((sum, { rows, copies }) => sum + rows * copies * units, 0),
  }))
}
