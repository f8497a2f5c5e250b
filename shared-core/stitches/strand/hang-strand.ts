import type { BeadIndex } from '../../chart/bead-index.ts'
import { findBead } from '../../chart/bead-index.ts'
import { DOWN, RIGHT, UP } from '../../route/event-codes.ts'
import { findWeave, type HoleEnd, type Hops, type Weaver } from '../../route/find-weave.ts'
import type { PartGeometry } from '../../route/part-geometry.ts'
import type { Hanging } from './lay-strand.ts'

/** A stitched panel that strands can hang from. */
export type PanelSite = Readonly<{
  panelId: string
  index: BeadIndex
  geometry: PartGeometry
  hops: Hops
  weaver: Weaver
  isWorked: (bead: number) => boolean
}>

/**
 * How a strand hangs from a bead of a panel: the way there from where the thread is, the way back in,
 * and the way round again. The thread leaves by the bead's free end and a loop comes back into the
 * bead beside it, if there is one; fringe comes back into its own bead.
 *
 * @returns `undefined` when the thread cannot get there.
 */
export function hangStrand(
  site: PanelSite,
  from: HoleEnd,
  bead: number,
  shape: 'fringe' | 'loop',
): Hanging | undefined {
  const { leaves: out, returns } = hangingEnds(site, bead, shape)
  const leaves = (at: number, leaving: number) => at === bead && leaving === out.edge
  const way = findWeave(site.weaver, from, site.hops, leaves)
  if (way === undefined) return undefined
  // The pass back in begins at the end it hangs from and comes out at the other.
  const back = { bead: returns.bead, edge: returns.edge ^ 1 }
  const again = findWeave(site.weaver, back, site.hops, leaves) ?? []
  return { panelId: site.panelId, way, back, again }
}

/** The panel's beads as far as a strand must know them to hang from one. */
export type HangingSite = Pick<PanelSite, 'index' | 'geometry' | 'isWorked'>

/**
 * The hole ends a strand hangs between: where its thread leaves the panel and where it comes back.
 *
 * It leaves by the bead's free end; a loop comes back into the bead beside it, if there is one, and
 * fringe into its own bead.
 */
export function hangingEnds(
  site: HangingSite,
  bead: number,
  shape: 'fringe' | 'loop',
): Readonly<{ leaves: HoleEnd; returns: HoleEnd }> {
  const edge = freeEdge(site, bead)
  const into = shape === 'loop' ? besideBead(site, bead) : bead
  return { leaves: { bead, edge }, returns: { bead: into, edge } }
}

/** The end of a bead's hole with nothing before it: below for the lower half of a panel, above for the upper. */
function freeEdge({ index, geometry }: HangingSite, bead: number): number {
  if (geometry.upright[bead] === 0) return RIGHT
  const row = index.rowOf[bead] ?? 0
  const at = index.atOf[bead] ?? 0
  const covers = (next: number) =>
    [-1, 0, 1].filter((half) => findBead(index, next, at + half) >= 0).length
  const above = covers(row - 1)
  const below = covers(row + 1)
  if (above !== below) return above < below ? UP : DOWN
  return 2 * row < index.rowStart.length - 2 ? UP : DOWN
}

/** The neighbour a loop comes back into: the next bead of the row, else the one before, else the bead itself. */
function besideBead({ index, isWorked }: HangingSite, bead: number): number {
  const row = index.rowOf[bead] ?? 0
  const at = index.atOf[bead] ?? 0
  for (const halves of [2, -2]) {
    const beside = findBead(index, row, at + halves)
    if (beside >= 0 && isWorked(beside)) return beside
  }
  return bead
}
