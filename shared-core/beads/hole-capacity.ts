import type { Fill } from '../design/reading.ts'
import { type Spread, weakerBasis } from '../units/spread.ts'
import { circlesThatFit } from './circle-packing.ts'

/** A bead's hole and what goes through it, diameters in mm; a doubled thread lays two strands a pass. */
export type HoleUse = Readonly<{
  holeMm: Spread
  threadMm: Spread
  needleMm: Spread
  doubled: boolean
}>

/**
 * Share of a hole's width that threads can really use: holes are not round, strands cross.
 *
 * @source Chosen by us: with it the packing table gives 3 passes of nylon D through a tight 11/0, the
 *   number the trade states, and agrees with the usual estimate 0.55 (h^2 - w^2) / t^2 + 1.
 */
export const CLEARANCE = 0.9

/** The most passes a capacity is given for; wider holes are as good as endless. */
const ENDLESS = 9999

/**
 * How many passes of the thread a hole takes, needle and all.
 *
 * On its last pass the needle shares the hole with the strands that are there already: they must
 * lie in the width that the needle's section leaves, sqrt(h^2 - w^2), and after it all strands in
 * the whole hole. Equal strands in a round hole are counted by the packing table, both widths times
 * `CLEARANCE`. A needle as wide as the hole does not go through at all: 0.
 *
 * @returns whole passes; `low` from the narrowest hole with the thickest thread and needle, `high`
 *   the other way round; the basis is the weakest of the three.
 */
export function holeCapacity({ holeMm, threadMm, needleMm, doubled }: HoleUse): Spread {
  const strands = doubled ? 2 : 1
  const low = passesThatFit(holeMm.low, threadMm.high, needleMm.high, strands).low
  const value = passesThatFit(holeMm.value, threadMm.value, needleMm.value, strands).low
  const high = passesThatFit(holeMm.high, threadMm.low, needleMm.low, strands).high
  const basis = weakerBasis(holeMm.basis, weakerBasis(threadMm.basis, needleMm.basis))
  return { value, low, high, basis }
}

function passesThatFit(hole: number, thread: number, needle: number, strands: number) {
  if (needle >= hole) return { low: 0, high: 0 }
  const beside = circlesThatFit(CLEARANCE * Math.sqrt(hole * hole - needle * needle), thread)
  const whole = circlesThatFit(CLEARANCE * hole, thread)
  const passes = (besideNeedle: number, inAll: number) =>
    Math.min(ENDLESS, Math.floor(besideNeedle / strands) + 1, Math.floor(inAll / strands))
  return {
    low: passes(beside.atLeast, whole.atLeast),
    high: passes(beside.atMost, whole.atMost),
  }
}

/**
 * How full a hole is after this many passes.
 *
 * `free`: at least two more passes go through; `tight`: it holds its last pass or the one before;
 * `full`: more passes are asked for than go through, and pass `holds + 1` is where it sticks.
 *
 * @param holds - Passes the hole takes: the value of `holeCapacity`.
 */
export function fillOf(passes: number, holds: number): Fill {
  if (passes > holds) return 'full'
  return passes >= holds - 1 ? 'tight' : 'free'
}
