import type { HoleEnds } from '../../../../shared-core/route/route-line.ts'
import type { BeadScene } from '../../../drawing/bead-scene.ts'
import type { SizeMm } from '../../../drawing/view.ts'
import type { Assembly } from './assemble.ts'

/** How many times as long as wide a piece is that is better seen lying. */
const LONG = 2.6

/** Whether a piece is so long that it is better seen lying, as a band on the table. */
export function isLong({ widthMm, heightMm }: SizeMm): boolean {
  return heightMm > LONG * widthMm
}

/** The piece a quarter turn to the left: its first row at the left, its left edge below. */
export function layAcross({ scene, parts, findings }: Assembly): Assembly {
  const { widthMm } = scene
  const turned = (ends: HoleEnds): HoleEnds => ({
    xMm: ends.yMm,
    yMm: (bead, edge) => widthMm - ends.xMm(bead, edge),
  })
  return {
    scene: layScene(scene),
    parts: parts.map((part) => ({
      ...part,
      own: turned(part.own),
      joined: part.joined && turned(part.joined),
    })),
    findings: findings.map((finding) => ({
      ...finding,
      at: { x: finding.at.y, y: widthMm - finding.at.x },
      way: { x: finding.way.y, y: -finding.way.x },
    })),
  }
}

/** A scene a quarter turn to the left. A bead's lean is told from its axis, so it stays. */
export function layScene(scene: BeadScene): BeadScene {
  const { widthMm, heightMm, beadWidthMm, beadHeightMm, axis, boxOfSlot, lines } = scene
  return {
    ...scene,
    xMm: scene.yMm,
    yMm: scene.xMm.map((x) => widthMm - x),
    widthMm: heightMm,
    heightMm: widthMm,
    beadWidthMm: beadHeightMm,
    beadHeightMm: beadWidthMm,
    axis: axis === 'vertical' ? 'horizontal' : 'vertical',
    boxOfSlot: boxOfSlot?.map((box) => ({ widthMm: box.heightMm, heightMm: box.widthMm })),
    lines: lines && layLines(lines, widthMm),
  }
}

function layLines(lines: Float32Array, widthMm: number): Float32Array {
  const laid = new Float32Array(lines.length)
  for (let at = 0; at + 1 < lines.length; at += 2) {
    laid[at] = lines[at + 1] ?? 0
    laid[at + 1] = widthMm - (lines[at] ?? 0)
  }
  return laid
}
