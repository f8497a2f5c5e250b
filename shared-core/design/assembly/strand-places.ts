import { DOWN, LEFT, RIGHT } from '../../route/event-codes.ts'
import type { HoleEnds } from '../../route/route-line.ts'
import { type Curve, leanOf, loopArc } from '../../stitches/strand/loop-arc.ts'
import type { PointMm } from '../../stitches/strand/point-mm.ts'

/** Where each bead of a strand lies, in mm, and how it leans from upright, radians clockwise. */
export type StrandPlaces = Readonly<{
  xMm: Float32Array
  yMm: Float32Array
  lean: Float32Array
  /** Ends of the holes: the end towards the panel, and the end away from it along the strand. */
  nearXMm: Float32Array
  nearYMm: Float32Array
  farXMm: Float32Array
  farYMm: Float32Array
}>

/** A hole end of the panel: its bead, and the side the thread is on (a direction code). */
export type PanelEnd = Readonly<{ bead: number; edge: number }>

/** Fringe hangs straight down from a point, bead under bead. */
export function fringePlaces(from: PointMm, lengthsMm: readonly number[]): StrandPlaces {
  return along(lengthsMm, (mm) => ({ at: { x: from.x, y: from.y + mm }, way: { x: 0, y: 1 } }))
}

/** A loop bulges away from the side of the panel that it leaves. */
export function loopPlaces(
  from: PointMm,
  to: PointMm,
  edge: number,
  lengthsMm: readonly number[],
): StrandPlaces {
  const lengthMm = lengthsMm.reduce((sum, mm) => sum + mm, 0)
  return along(lengthsMm, loopArc(from, to, lengthMm, outOf(edge)))
}

/** The middle of a loop, where it carries its finding, and the way from the panel there. */
export function loopMiddle(
  from: PointMm,
  to: PointMm,
  edge: number,
  lengthsMm: readonly number[],
): Readonly<{ at: PointMm; way: PointMm }> {
  const lengthMm = lengthsMm.reduce((sum, mm) => sum + mm, 0)
  const out = outOf(edge)
  return { at: loopArc(from, to, lengthMm, out)(lengthMm / 2).at, way: out }
}

/** A closed ring of beads that hangs from nothing, its ends at the top of the place given. */
export function ringPlaces(from: PointMm, lengthsMm: readonly number[]): StrandPlaces {
  return loopPlaces(from, from, DOWN, lengthsMm)
}

/**
 * The hole ends of a strand's beads for its thread: down is the end away from the panel, and the end
 * towards it past the fold of a loop.
 */
export function strandEnds(places: StrandPlaces, isFolded: (bead: number) => boolean): HoleEnds {
  const isFar = (bead: number, edge: number) => (edge === DOWN) !== isFolded(bead)
  return {
    xMm: (bead, edge) => (isFar(bead, edge) ? places.farXMm : places.nearXMm)[bead] ?? 0,
    yMm: (bead, edge) => (isFar(bead, edge) ? places.farYMm : places.nearYMm)[bead] ?? 0,
  }
}

function outOf(edge: number): PointMm {
  if (edge === LEFT) return { x: -1, y: 0 }
  if (edge === RIGHT) return { x: 1, y: 0 }
  return { x: 0, y: edge === DOWN ? 1 : -1 }
}

function along(lengthsMm: readonly number[], curve: Curve): StrandPlaces {
  const beads = lengthsMm.length
  const places = {
    xMm: new Float32Array(beads),
    yMm: new Float32Array(beads),
    lean: new Float32Array(beads),
    nearXMm: new Float32Array(beads),
    nearYMm: new Float32Array(beads),
    farXMm: new Float32Array(beads),
    farYMm: new Float32Array(beads),
  }
  let mm = 0
  lengthsMm.forEach((lengthMm, bead) => {
    const { at, way } = curve(mm + lengthMm / 2)
    mm += lengthMm
    places.xMm[bead] = at.x
    places.yMm[bead] = at.y
    places.lean[bead] = leanOf(way)
    places.nearXMm[bead] = at.x - (way.x * lengthMm) / 2
    places.nearYMm[bead] = at.y - (way.y * lengthMm) / 2
    places.farXMm[bead] = at.x + (way.x * lengthMm) / 2
    places.farYMm[bead] = at.y + (way.y * lengthMm) / 2
  })
  return places
}
