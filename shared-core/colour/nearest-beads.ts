import type { BeadFinish } from '../beads/bead-form.ts'
import { ciede2000 } from './ciede2000.ts'
import type { Lab } from './lab.ts'

/** A bead as the eye compares it; `formId` is its form and size. */
export type ColouredBead = Readonly<{ id: string; formId: string; lab: Lab; finish: BeadFinish }>

/** A bead that could stand in: `score` is the colour difference plus the finish's penalty. */
export type NearBead<B> = Readonly<{
  bead: B
  deltaE: number
  finishPenalty: number
  score: number
}>

type Look = Readonly<{ clear: number; shine: number; metal: number; rainbow: number }>

/** How a finish takes the light: see-through, shiny, metallic, iridescent; each 0 to 1. */
const LOOKS: Readonly<Record<BeadFinish, Look>> = {
  opaque: { clear: 0, shine: 0.6, metal: 0, rainbow: 0 },
  gloss: { clear: 0, shine: 1, metal: 0, rainbow: 0 },
  matte: { clear: 0, shine: 0, metal: 0, rainbow: 0 },
  transparent: { clear: 1, shine: 1, metal: 0, rainbow: 0 },
  lined: { clear: 0.6, shine: 1, metal: 0.3, rainbow: 0 },
  metallic: { clear: 0, shine: 1, metal: 1, rainbow: 0 },
  iridescent: { clear: 0.3, shine: 1, metal: 0.3, rainbow: 1 },
}

/** What a full change of each costs, in units of CIEDE2000. */
const COST: Look = { clear: 5, shine: 4, metal: 6, rainbow: 4 }

/**
 * What a change of finish costs when one bead stands in for another, in units of CIEDE2000: 0 for
 * the same finish, 10 and more between unlike ones.
 *
 * @source Chosen by us: a colour difference of 5 is seen at a glance, and so is a change of finish.
 */
export function finishPenalty(x: BeadFinish, y: BeadFinish): number {
  const one = LOOKS[x]
  const other = LOOKS[y]
  return (Object.keys(COST) as (keyof Look)[]).reduce(
    (sum, key) => sum + COST[key] * Math.abs(one[key] - other[key]),
    0,
  )
}

/**
 * The beads that could stand in for one, nearest first.
 *
 * Only beads of the same form and size; the bead itself is left out; by CIEDE2000 plus
 * `finishPenalty`, ties by id.
 *
 * @param limit - Most beads to give, 5 if not told.
 */
export function nearestBeads<B extends ColouredBead>(
  wanted: ColouredBead,
  candidates: readonly B[],
  limit = 5,
): readonly NearBead<B>[] {
  return candidates
    .filter(({ id, formId }) => formId === wanted.formId && id !== wanted.id)
    .map((bead) => {
      const deltaE = ciede2000(wanted.lab, bead.lab)
      const penalty = finishPenalty(wanted.finish, bead.finish)
      return { bead, deltaE, finishPenalty: penalty, score: deltaE + penalty }
    })
    .toSorted((x, y) => x.score - y.score || (x.bead.id < y.bead.id ? -1 : 1))
    .slice(0, limit)
}
