import type { PlacedStrand } from '../../../../shared-core/design/assembly/hang-strands.ts'
import type { PlacedFinding } from '../../../../shared-core/design/assembly/placed-finding.ts'
import type { BeadScene } from '../../../drawing/bead-scene.ts'
import type { Piece } from './join-pieces.ts'

/** A piece as its mirror shows it: the second of a mirrored pair. */
export function mirrorPiece(piece: Piece): Piece {
  const { scene, geometry, strands, findings } = piece
  const widthMm = scene?.widthMm ?? 0
  const flip = (xMm: Float32Array) => xMm.map((x) => widthMm - x)
  return {
    ...piece,
    isMirrored: true,
    ...(scene && { scene: mirrorScene(scene) }),
    ...(geometry && { geometry: { ...geometry, xMm: flip(geometry.xMm) } }),
    strands: strands.map((strand) => mirrorStrand(strand, widthMm)),
    findings: findings.map((finding) => mirrorFinding(finding, widthMm)),
  }
}

function mirrorStrand(strand: PlacedStrand, widthMm: number): PlacedStrand {
  const { places, finding } = strand
  const flip = (xMm: Float32Array) => xMm.map((x) => widthMm - x)
  return {
    ...strand,
    places: {
      ...places,
      xMm: flip(places.xMm),
      lean: places.lean.map((lean) => -lean),
      nearXMm: flip(places.nearXMm),
      farXMm: flip(places.farXMm),
    },
    finding: finding && mirrorFinding(finding, widthMm),
  }
}

function mirrorFinding(finding: PlacedFinding, widthMm: number): PlacedFinding {
  const { at, way } = finding
  return { ...finding, at: { x: widthMm - at.x, y: at.y }, way: { x: -way.x, y: way.y } }
}

function mirrorScene(scene: BeadScene): BeadScene {
  const { widthMm, xMm, leanOf, lines, nextOf, axis } = scene
  return {
    ...scene,
    xMm: xMm.map((x) => widthMm - x),
    leanOf: leanOf?.map((lean) => -lean),
    lines: lines?.map((mm, at) => (at % 2 === 0 ? widthMm - mm : mm)),
    nextOf: axis === 'vertical' ? nextOf && turnedRound(nextOf) : nextOf,
  }
}

/** The thread goes over to the neighbour at the right, which was the one at the left. */
function turnedRound(nextOf: Int32Array): Int32Array {
  const turned = new Int32Array(nextOf.length).fill(-1)
  nextOf.forEach((next, bead) => {
    if (next >= 0) turned[next] = bead
  })
  return turned
}
