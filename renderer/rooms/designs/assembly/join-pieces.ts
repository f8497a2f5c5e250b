import type { BeadIndex } from '../../../../shared-core/chart/bead-index.ts'
import type { PlacedStrand } from '../../../../shared-core/design/assembly/hang-strands.ts'
import {
  findingCorners,
  type PlacedFinding,
} from '../../../../shared-core/design/assembly/placed-finding.ts'
import { strandEnds } from '../../../../shared-core/design/assembly/strand-places.ts'
import type { PartGeometry } from '../../../../shared-core/route/part-geometry.ts'
import { endsOf, type HoleEnds } from '../../../../shared-core/route/route-line.ts'
import type { BeadLook } from '../../../drawing/bead-look.ts'
import type { BeadScene } from '../../../drawing/bead-scene.ts'
import type { SizeMm } from '../../../drawing/view.ts'
import type { Assembly, PlacedPart } from './assemble.ts'

/** What hangs together: a panel with its strands, or a strand alone. Its own mm. */
export type Piece = Readonly<{
  partId: string
  name: string
  isMirrored: boolean
  /** Copies in one unit, and whether every second is the mirror image. */
  copies: number
  mirrors?: boolean
  scene?: BeadScene
  index?: BeadIndex
  geometry?: PartGeometry
  strands: readonly PlacedStrand[]
  /** Findings that sit on the panel itself. */
  findings: readonly PlacedFinding[]
}>

/** What each slot's bead looks like, and its upright box where they differ in size. */
type Looks = Readonly<{ palette: readonly BeadLook[]; boxOfSlot: readonly SizeMm[] | undefined }>

/** Room between pieces side by side, mm. */
const GAP_MM = 5

/** Lays pieces side by side, their tops in a line, and numbers their beads on. */
export function joinPieces(pieces: readonly Piece[], looks: Looks): Assembly | undefined {
  const drawn = pieces.filter((piece) => countBeads(piece) > 0)
  const [first] = drawn
  if (first === undefined) return undefined
  if (drawn.length === 1 && first.scene !== undefined && isPlain(first)) {
    const parts = panelPart(first, { firstBead: 0, copy: 0, shift: shifted(0, 0) })
    return { scene: first.scene, parts, findings: [] }
  }
  const joining = createJoining(drawn, looks)
  for (const piece of drawn) addPiece(joining, piece)
  const { scene, parts, findings, acrossMm, heightMm } = joining
  return { scene: { ...scene, widthMm: acrossMm - GAP_MM, heightMm }, parts, findings }
}

/** Whether a piece is its panel and nothing more, so that the panel's own scene is the picture. */
function isPlain({ strands, findings }: Piece): boolean {
  return strands.length === 0 && findings.length === 0
}

type Shift = (ends: HoleEnds) => HoleEnds

type Joining = {
  readonly scene: BeadScene & Readonly<{ turnedOf: Uint8Array; leanOf: Float32Array }>
  readonly nextOf: Int32Array
  readonly parts: PlacedPart[]
  readonly findings: PlacedFinding[]
  beads: number
  acrossMm: number
  heightMm: number
}

function countBeads({ scene, strands }: Piece): number {
  return (scene?.xMm.length ?? 0) + strands.reduce((sum, { slots }) => sum + slots.length, 0)
}

function createJoining(pieces: readonly Piece[], { palette, boxOfSlot }: Looks): Joining {
  const beads = pieces.reduce((sum, piece) => sum + countBeads(piece), 0)
  const model = pieces.find(({ scene }) => scene !== undefined)?.scene
  const form = pieces.flatMap(({ strands }) => strands.flatMap(({ forms }) => forms)).at(0)
  const nextOf = new Int32Array(beads).fill(-1)
  const axis = model?.axis ?? 'vertical'
  return {
    scene: {
      xMm: new Float32Array(beads),
      yMm: new Float32Array(beads),
      slotOf: new Uint16Array(beads),
      palette,
      widthMm: 0,
      heightMm: 0,
      beadWidthMm: model?.beadWidthMm ?? form?.diameterMm.value ?? 1,
      beadHeightMm: model?.beadHeightMm ?? form?.lengthMm.value ?? 1,
      axis,
      boxOfSlot: axis === 'vertical' ? boxOfSlot : boxOfSlot?.map(lying),
      turnedOf: new Uint8Array(beads),
      leanOf: new Float32Array(beads),
      nextOf,
      lines: model?.lines,
    },
    nextOf,
    parts: [],
    findings: [],
    beads: 0,
    acrossMm: 0,
    heightMm: 0,
  }
}

function lying({ widthMm, heightMm }: SizeMm): SizeMm {
  return { widthMm: heightMm, heightMm: widthMm }
}

function addPiece(joining: Joining, piece: Piece): void {
  const bounds = boundsOf(piece)
  const dx = joining.acrossMm - bounds.left
  const dy = -bounds.top
  const shift = shifted(dx, dy)
  const copy = joining.parts.filter(({ partId }) => partId === piece.partId).length
  if (piece.scene !== undefined && piece.geometry !== undefined) {
    joining.parts.push(...panelPart(piece, { firstBead: joining.beads, copy, shift }))
    copyPanel(joining, piece.scene, dx, dy)
  }
  for (const strand of piece.strands) addStrand(joining, piece, strand, { dx, dy, copy, shift })
  for (const finding of piece.findings) addFinding(joining, finding, dx, dy)
  joining.acrossMm += bounds.right - bounds.left + GAP_MM
  joining.heightMm = Math.max(joining.heightMm, bounds.bottom - bounds.top)
}

function panelPart(
  piece: Piece,
  { firstBead, copy, shift }: Readonly<{ firstBead: number; copy: number; shift: Shift }>,
): readonly PlacedPart[] {
  const { partId, name, isMirrored, scene, index, geometry } = piece
  if (scene === undefined || geometry === undefined) return []
  const own = shift(endsOf(geometry))
  const beads = scene.xMm.length
  const whose = { partId, name, copy, isMirrored }
  return [{ ...whose, firstBead, beads, index, geometry, own, joined: undefined }]
}

function copyPanel(joining: Joining, from: BeadScene, dx: number, dy: number): void {
  const { scene, nextOf, beads: first } = joining
  const isOtherWay = from.axis !== scene.axis
  from.xMm.forEach((x, bead) => {
    scene.xMm[first + bead] = x + dx
    scene.yMm[first + bead] = (from.yMm[bead] ?? 0) + dy
    const turned = from.turnedOf?.[bead] === 1
    scene.turnedOf[first + bead] = Number(turned !== isOtherWay)
    const next = from.nextOf?.[bead] ?? -1
    nextOf[first + bead] = next < 0 || isOtherWay ? -1 : first + next
  })
  scene.slotOf.set(from.slotOf, first)
  if (from.leanOf !== undefined) scene.leanOf.set(from.leanOf, first)
  joining.beads += from.xMm.length
}

function addStrand(
  joining: Joining,
  piece: Piece,
  strand: PlacedStrand,
  { dx, dy, copy, shift }: Readonly<{ dx: number; dy: number; copy: number; shift: Shift }>,
): void {
  const { scene, beads: first } = joining
  const { places, slots, partId, name, geometry, isFolded } = strand
  slots.forEach((slot, bead) => {
    scene.xMm[first + bead] = (places.xMm[bead] ?? 0) + dx
    scene.yMm[first + bead] = (places.yMm[bead] ?? 0) + dy
    scene.slotOf[first + bead] = slot
    scene.leanOf[first + bead] = places.lean[bead] ?? 0
  })
  // A strand's holes run along it, so its beads stand where the panel's lie.
  if (scene.axis === 'horizontal') scene.turnedOf.fill(1, first, first + slots.length)
  const { finding } = strand
  if (finding !== undefined) addFinding(joining, finding, dx, dy)
  joining.parts.push({
    partId,
    name,
    copy,
    isMirrored: piece.isMirrored,
    firstBead: first,
    beads: slots.length,
    index: undefined,
    geometry,
    own: shift(strandEnds(places, isFolded)),
    joined: piece.geometry && shift(endsOf(piece.geometry)),
  })
  joining.beads += slots.length
}

function shifted(dx: number, dy: number): Shift {
  if (dx === 0 && dy === 0) return (ends) => ends
  return ({ xMm, yMm }) => ({
    xMm: (bead, edge) => xMm(bead, edge) + dx,
    yMm: (bead, edge) => yMm(bead, edge) + dy,
  })
}

type Bounds = { left: number; top: number; right: number; bottom: number }

function addFinding(joining: Joining, finding: PlacedFinding, dx: number, dy: number): void {
  const { x, y } = finding.at
  joining.findings.push({ ...finding, at: { x: x + dx, y: y + dy } })
}

function holdFinding(bounds: Bounds, finding: PlacedFinding): void {
  for (const { x, y } of findingCorners(finding)) {
    bounds.left = Math.min(bounds.left, x)
    bounds.right = Math.max(bounds.right, x)
    bounds.top = Math.min(bounds.top, y)
    bounds.bottom = Math.max(bounds.bottom, y)
  }
}

function boundsOf({ scene, strands, findings }: Piece) {
  const bounds =
    scene === undefined
      ? { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity }
      : { left: 0, top: 0, right: scene.widthMm, bottom: scene.heightMm }
  for (const finding of findings) holdFinding(bounds, finding)
  for (const { places, forms, finding } of strands) {
    if (finding !== undefined) holdFinding(bounds, finding)
    forms.forEach((form, bead) => {
      const reach = Math.max(form.diameterMm.value, form.lengthMm.value) / 2
      const [x, y] = [places.xMm[bead] ?? 0, places.yMm[bead] ?? 0]
      bounds.left = Math.min(bounds.left, x - reach)
      bounds.right = Math.max(bounds.right, x + reach)
      bounds.top = Math.min(bounds.top, y - reach)
      bounds.bottom = Math.max(bounds.bottom, y + reach)
    })
  }
  return bounds
}
