import { AROUND_WARP, LEFT, RIGHT } from '../../route/event-codes.ts'
import { beginRow, finishEvents, hangWarp, turn } from '../../route/event-writer.ts'
import type { PartGeometry } from '../../route/part-geometry.ts'
import { FINISH_BEADS } from '../../route/thread-ends.ts'
import { columnHops } from '../plain/column-hops.ts'
import { beginPlainWork, type PlainWork, passOn, pick } from '../plain/plain-work.ts'
import type { RouteDraft, Stitch, StitchTask } from '../stitch.ts'

/** Loom work: rows of beads between warps, the weft under them on the way out and over them on the way back. */
export const loom: Stitch = { kind: 'loom', layRoute: layLoom }

/** What a warp is cut longer than the work, both ends together, mm. @source Trade practice: 12 in. */
const WARP_ALLOWANCE_MM = 300

/** What of a warp's end stays in the work, mm: woven through as many beads as any end, a bead's step between each two. */
function wovenEndMm({ lengthMm, diameterMm }: PartGeometry): number {
  return FINISH_BEADS * ((lengthMm[0] ?? 0) + (diameterMm[0] ?? 0))
}

/**
 * Lays warps (one more than columns), then the weft row by row: all beads strung under the warps,
 * round the outer warp, and back through all of them over the warps. Rows begin at the same side.
 */
function layLoom(task: StitchTask): RouteDraft {
  const { index, geometry, settings } = task
  const work = beginPlainWork(task, 2)
  const { writer } = work
  const lengthMm = workLengthMm(geometry)
  const endMm = wovenEndMm(geometry)
  const columns = columnsOf(index.atOf, index.count)
  for (let warp = 0; columns > 0 && warp <= columns; warp += 1) {
    hangWarp(writer, Math.ceil(lengthMm + WARP_ALLOWANCE_MM), Math.ceil(lengthMm + 2 * endMm))
  }
  const rows = index.rowStart.length - 1
  const isFromLast = settings.startRow !== undefined && settings.startRow > 0
  const along = settings.startSide === 'right' ? -1 : 1
  for (let at = 0; at < rows; at += 1) layRow(work, isFromLast ? rows - 1 - at : at, along)
  return {
    events: finishEvents(writer),
    warnings: [],
    hops: columnHops(work, geometry, settings.startSide),
  }
}

function layRow(work: PlainWork, row: number, along: number): void {
  const { index, writer } = work
  const from = index.rowStart[row] ?? 0
  const to = index.rowStart[row + 1] ?? 0
  if (from === to) return
  const out = along > 0 ? RIGHT : LEFT
  const beadAt = (at: number) => (along > 0 ? from + at : to - 1 - at)
  const length = to - from
  if (writer.bead >= 0) turn(writer, AROUND_WARP, writer.bead)
  beginRow(writer, row, along > 0 ? LEFT : RIGHT)
  for (let at = 0; at < length; at += 1) pick(work, beadAt(at), out, at > 0)
  turn(writer, AROUND_WARP, beadAt(length - 1))
  for (let at = length - 1; at >= 0; at -= 1) passOn(work, beadAt(at), out ^ 1)
}

/** Length of the work along the warps, mm. */
function workLengthMm({ yMm, diameterMm, count }: PartGeometry): number {
  let top = Number.POSITIVE_INFINITY
  let bottom = Number.NEGATIVE_INFINITY
  for (let bead = 0; bead < count; bead += 1) {
    const y = yMm[bead] ?? 0
    if (y < top) top = y
    if (y > bottom) bottom = y
  }
  return count === 0 ? 0 : bottom - top + (diameterMm[0] ?? 0)
}

function columnsOf(atOf: Uint16Array | Uint32Array, count: number): number {
  let least = Number.POSITIVE_INFINITY
  let most = Number.NEGATIVE_INFINITY
  for (let bead = 0; bead < count; bead += 1) {
    const at = atOf[bead] ?? 0
    if (at < least) least = at
    if (at > most) most = at
  }
  return count === 0 ? 0 : (most - least) / 2 + 1
}
