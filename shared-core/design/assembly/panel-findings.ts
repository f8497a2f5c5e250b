import type { PartGeometry } from '../../route/part-geometry.ts'
import type { PointMm } from '../../stitches/strand/point-mm.ts'
import type { DesignBody, Extra, Panel } from '../design.ts'
import { isHook, type PlacedFinding, shapeOfFinding } from './placed-finding.ts'

/** Where a finding sits on a panel: at its top, along both of its ends, or unseen behind it. */
type Seat = 'top' | 'ends' | 'unseen'

const UP: PointMm = { x: 0, y: -1 }

/**
 * The findings that no strand carries, as they sit on one copy of a design's first panel.
 *
 * Its name tells where: ear wires, rings, bails and chains at the middle of the top edge, side by
 * side when one copy has several; clasps, end bars and caps along both short ends; ear studs, pins and
 * whatever the name does not tell are behind the work or elsewhere, and not drawn.
 *
 * @param geometry - Where the panel's beads lie, mm.
 * @returns Findings in the panel's mm; none for any panel but the first.
 */
export function panelFindings(
  body: DesignBody,
  panel: Panel,
  geometry: PartGeometry,
): readonly PlacedFinding[] {
  if (geometry.count === 0 || firstPanel(body)?.id !== panel.id) return []
  return looseFindings(body).flatMap((finding) => {
    const seat = seatOf(finding.name)
    if (seat === 'unseen') return []
    if (seat === 'ends') return shortEnds(geometry).map((way) => barAlong(geometry, way))
    return atTop(geometry, finding, Math.max(1, Math.round(finding.count / panel.copies)))
  })
}

/** The findings of a design that none of its strands carries. */
export function looseFindings({ parts, extras }: DesignBody): readonly Extra[] {
  const carried = new Set(parts.flatMap((part) => (part.kind === 'strand' ? part.findingId : [])))
  return extras.filter(({ kind, id }) => kind === 'finding' && !carried.has(id))
}

function firstPanel({ parts }: DesignBody): Panel | undefined {
  return parts.find((part): part is Panel => part.kind === 'panel')
}

function seatOf(name: string): Seat {
  if (/\b(stud|post|pin|back|clutch)s?\b/i.test(name)) return 'unseen'
  if (/\b(clasp|end|cap|bar|crimp)s?\b/i.test(name)) return 'ends'
  if (isHook(name)) return 'top'
  return /\b(ring|bail|link|loop|hoop|chain)s?\b/i.test(name) ? 'top' : 'unseen'
}

/** More than this beside each other is a row of wire, not a finding. */
const MOST_BESIDE = 5

function atTop(geometry: PartGeometry, { name }: Extra, count: number): readonly PlacedFinding[] {
  const { at, acrossMm } = edgeOf(geometry, UP)
  const shape = shapeOfFinding(name)
  const many = Math.min(count, MOST_BESIDE)
  return Array.from({ length: many }, (_, i) => {
    const x = at.x + ((i + 0.5) / many - 0.5) * acrossMm
    return { at: { x, y: at.y }, way: UP, shape, acrossMm: 0 }
  })
}

function barAlong(geometry: PartGeometry, way: PointMm): PlacedFinding {
  return { ...edgeOf(geometry, way), way, shape: 'bar' }
}

/** The two ways out of a panel over its short ends. */
function shortEnds(geometry: PartGeometry): readonly PointMm[] {
  const isTall = spanOf(geometry.yMm) >= spanOf(geometry.xMm)
  return isTall
    ? [UP, { x: 0, y: 1 }]
    : [
        { x: -1, y: 0 },
        { x: 1, y: 0 },
      ]
}

const FAR: readonly [number, number] = [Infinity, -Infinity]

function spanOf(mm: Float32Array): number {
  let [least, most] = FAR
  for (const at of mm) {
    least = Math.min(least, at)
    most = Math.max(most, at)
  }
  return most - least
}

/** The middle of a panel's outermost beads on one side, and how far they reach along it, mm. */
function edgeOf(geometry: PartGeometry, way: PointMm): Readonly<{ at: PointMm; acrossMm: number }> {
  const { xMm, yMm, count } = geometry
  const outer = (bead: number) =>
    (xMm[bead] ?? 0) * way.x + (yMm[bead] ?? 0) * way.y + halfAlong(geometry, bead, way)
  let outermost = -Infinity
  for (let bead = 0; bead < count; bead += 1) outermost = Math.max(outermost, outer(bead))
  const side: PointMm = { x: Math.abs(way.y), y: Math.abs(way.x) }
  let [least, most] = FAR
  for (let bead = 0; bead < count; bead += 1) {
    // A staggered row lies half a bead further in, and belongs to the edge too.
    if (outermost - outer(bead) > 1.2 * halfAlong(geometry, bead, way)) continue
    const middle = (xMm[bead] ?? 0) * side.x + (yMm[bead] ?? 0) * side.y
    const half = halfAlong(geometry, bead, side)
    least = Math.min(least, middle - half)
    most = Math.max(most, middle + half)
  }
  const along = (least + most) / 2
  const at = { x: outermost * way.x + along * side.x, y: outermost * way.y + along * side.y }
  return { at, acrossMm: most - least }
}

/** Half of a bead's box along a level or upright line, mm. */
function halfAlong(
  { upright, lengthMm, diameterMm }: PartGeometry,
  bead: number,
  way: PointMm,
): number {
  const isAlongHole = (upright[bead] === 1) === (way.y !== 0)
  return ((isAlongHole ? lengthMm[bead] : diameterMm[bead]) ?? 0) / 2
}
