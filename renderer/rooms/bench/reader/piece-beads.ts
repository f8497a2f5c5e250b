import type { PlacedLine, ReaderMap } from '../../../../shared-core/bench/reader-place.ts'
import type { ReaderPiece, ReaderStretch } from '../../../../shared-core/bench/reader-script.ts'
import type { BeadScene } from '../../../drawing/bead-scene.ts'
import type { Assembly } from '../../designs/assembly/assemble.ts'
import { TO_COME } from './wash-layer.ts'

/** The first bead of a stretch in the picture, or -1 when it is not drawn there. */
export function firstBead({ parts }: Assembly, { partId, copy }: ReaderStretch): number {
  const copies = parts.filter((part) => part.partId === partId)
  return (copies[copy] ?? copies.at(-1))?.firstBead ?? -1
}

/** For each bead of the picture, whether it is made: what is not is to come. `inUnit` is the step to be done next. */
export function madeBeads(
  assembly: Assembly,
  map: ReaderMap,
  piece: ReaderPiece,
  inUnit: number,
): Uint8Array {
  const levels = new Uint8Array(assembly.scene.xMm.length).fill(TO_COME)
  for (const placed of map.lines) {
    if (placed.from >= inUnit) break
    if (placed.piece !== piece) continue
    const first = firstBead(assembly, placed.stretch)
    if (first < 0) continue
    placed.line.steps.slice(0, inUnit - placed.from).forEach(({ beads }) => {
      for (const bead of beads) levels[first + bead] = 0
    })
  }
  return levels
}

/** The beads of some steps of a line, by their numbers in the picture. */
export function beadsInPicture(
  assembly: Assembly,
  { stretch, line }: PlacedLine,
  from = 0,
  to = line.steps.length,
): readonly number[] {
  const first = firstBead(assembly, stretch)
  if (first < 0) return []
  return line.steps.slice(from, to).flatMap(({ beads }) => beads.map((bead) => first + bead))
}

/** A picture as in a mirror beside it; its beads keep their numbers. */
export function mirrorScene(scene: BeadScene): BeadScene {
  const { widthMm, xMm, leanOf, lines } = scene
  return {
    ...scene,
    xMm: xMm.map((x) => widthMm - x),
    leanOf: leanOf?.map((lean) => -lean),
    lines: lines?.map((mm, at) => (at % 2 === 0 ? widthMm - mm : mm)),
  }
}
