import { DOWN, JOIN, LEFT, PICK_UP, RIGHT } from '../../../../shared-core/route/event-codes.ts'
import type { EventList } from '../../../../shared-core/route/event-list.ts'
import type { HoleEnds } from '../../../../shared-core/route/route-line.ts'
import { type Curve, leanOf, loopArc } from '../../../../shared-core/stitches/strand/loop-arc.ts'
import type { PointMm } from '../../../../shared-core/stitches/strand/point-mm.ts'

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

/** Where a strand's thread leaves the panel and where it comes back, by its own events; nothing for a loose strand. */
export function hangsBetween({
  kind,
  a,
  code,
  count,
}: EventList): Readonly<{ leaves: PanelEnd; returns: PanelEnd }> | undefined {
  let leaves: PanelEnd | undefined
  let isOut = false
  for (let event = 0; event < count; event += 1) {
    if (kind[event] === PICK_UP) isOut = true
    if (kind[event] !== JOIN) continue
    const end = { bead: a[event] ?? 0, edge: (code[event] ?? 0) & 3 }
    // The thread comes back in at the side opposite to the one it goes out of.
    if (isOut) return leaves && { leaves, returns: { bead: end.bead, edge: end.edge ^ 1 } }
    leaves = end
  }
  return undefined
}

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

/** A closed ring of beads that hangs from nothing, its ends at the top of the place given. */
export function ringPlaces(from: PointMm, lengthsMm: readonly number[]): StrandPlaces {
  return loopPlaces(from, from, DOWN, lengthsMm)
}

/** The hole ends of a strand's beads for its thread: an even or odd direction code of a fringe is down or up. */
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
