import { FULL_MM, type HoleEnd, type Hops } from './find-weave.ts'

/** Beads a thread end is woven through. @source Trade practice: at least 5; with half hitches on the way. */
export const FINISH_BEADS = 6

/** A half hitch follows each of these beads of a woven-in end, counted from 1. */
export const KNOT_AFTER: readonly number[] = [2, 4]

/** What it costs to go through a bead once more, mm for each pass it has: ends go where there is room. */
const CROWDED_MM = 1.5

/** What it costs to go through a bead the same end went through before, mm. */
const AGAIN_MM = 40

/** What is known of the work at the moment an end is woven in. */
export type EndTask = Readonly<{
  from: HoleEnd
  hops: Hops
  /** Passes each bead has so far. */
  passes: Uint16Array
  /** Passes each bead's hole holds; endless without. */
  holds?: Uint16Array | undefined
  /** Whether a bead is in the work by now. */
  isWorked: (bead: number) => boolean
  beads: number
}>

/**
 * The way an end is woven in: from bead to bead, each time into the nearest with the fewest passes,
 * never turning back into the bead it has just left, nor into a full hole where there is another. Shorter where there is nowhere to go.
 */
export function weaveEndIn({
  from,
  hops,
  passes,
  holds,
  isWorked,
  beads,
}: EndTask): readonly HoleEnd[] {
  const way: HoleEnd[] = []
  const seen = new Set<number>([from.bead])
  let here = from
  while (way.length < beads) {
    let best: HoleEnd | undefined
    let bestMm = Number.POSITIVE_INFINITY
    hops(here.bead, here.edge, (bead, edge, costMm) => {
      if (bead === here.bead || !isWorked(bead)) return
      const made = passes[bead] ?? 0
      const isFull = holds !== undefined && made >= (holds[bead] ?? 0)
      const cost =
        costMm + CROWDED_MM * made + (seen.has(bead) ? AGAIN_MM : 0) + (isFull ? FULL_MM : 0)
      if (cost < bestMm) {
        best = { bead, edge }
        bestMm = cost
      }
    })
    if (best === undefined) break
    way.push(best)
    seen.add(best.bead)
    here = best
  }
  return way
}

/**
 * The way a new thread is brought in so that it leaves the work at a hole end: the way out from the
 * other end of that bead, walked backwards, and through the bead itself last.
 */
export function weaveStartIn(task: EndTask): readonly HoleEnd[] {
  const { from } = task
  const out = weaveEndIn({
    ...task,
    from: { bead: from.bead, edge: from.edge ^ 1 },
    beads: task.beads - 1,
  })
  return [...out.map(({ bead, edge }) => ({ bead, edge: edge ^ 1 })).reverse(), from]
}
