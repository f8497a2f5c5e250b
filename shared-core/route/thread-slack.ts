import type { ThreadConstruction } from '../beads/thread.ts'
import type { StitchKind } from '../chart/chart.ts'
import { estimated, type Spread } from '../units/spread.ts'

/** What a slack is known for: a stitch, or a strand. */
export type SlackKind = StitchKind | 'strand'

/**
 * Thread used over thread measured by geometry: thread wanders in the hole, is never drawn quite
 * straight, and the hand leaves it a little ease. The workshop's own left-over lengths replace these.
 *
 * @source Chosen by us from mechanics: stitches drawn tight bead by bead 3 %, a loom weft drawn flat
 *   2 %, strands that must hang 4 %; the range is that of hands, 8 % either way.
 */
const STITCH_SLACK: Readonly<Record<SlackKind, number>> = {
  brick: 1.03,
  peyote: 1.03,
  square: 1.03,
  loom: 1.02,
  ladder: 1.03,
  herringbone: 1.03,
  'right-angle-weave': 1.03,
  strand: 1.04,
}

/**
 * How much of a hole's free play (hole less thread) the thread takes up on each run from hole to
 * hole, because it is drawn against the wall between them: 0 runs from middle to middle, 1 hugs the walls.
 *
 * @source Chosen by us from mechanics: in ladder and square stitch every run is part of a loop drawn
 *   round the wall between two holes (1); in peyote it lies in a zigzag that each next row half undoes
 *   (1/2), as does a weft; in brick the next row pulls the bridge back out, in herringbone pairs lean
 *   apart, in right-angle weave the run cuts its corner already (0).
 */
const WALL_HUG: Readonly<Record<SlackKind, number>> = {
  brick: 0,
  peyote: 0.5,
  square: 1,
  loom: 0.5,
  ladder: 1,
  herringbone: 0,
  'right-angle-weave': 0,
  strand: 0,
}

/** What a run from hole to hole is shortened by, mm. */
export function takenPlayMm(kind: SlackKind, holeMm: number, threadMm: number): number {
  return WALL_HUG[kind] * Math.max(0, holeMm - threadMm)
}

/** Twisted and flat nylon stretches under the hand and draws back; braid and bonded cord hardly do. */
const THREAD_SLACK: Readonly<Record<ThreadConstruction, number>> = {
  braided: 1,
  bonded: 1,
  twisted: 0.99,
  flat: 0.99,
}

/** Of two strands drawn together one always lies a little longer. Chosen by us: 1 %. */
const DOUBLED_SLACK = 1.01

const HANDS = 0.08

/**
 * The slack of a stitch in a thread, with the range hands differ by.
 *
 * @param strands - Strands of thread in each pass; the slack is that of one strand.
 */
export function threadSlack(
  kind: SlackKind,
  construction: ThreadConstruction,
  strands: 1 | 2 = 1,
): Spread {
  const doubled = strands === 2 ? DOUBLED_SLACK : 1
  const slack = STITCH_SLACK[kind] * THREAD_SLACK[construction] * doubled
  return estimated(slack * (1 - HANDS), slack, slack * (1 + HANDS))
}
