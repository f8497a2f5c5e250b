import type { BridgeAt } from '../../../../shared-core/bench/reader-script.ts'
import type { OverlayLayer, OverlayPaint } from '../../../drawing/overlay.ts'

/** Beads narrower than this, CSS px, leave no room for a number. */
const ROOM_PX = 15

/** The picture's number of a bead of the part, and a bead of the row in hand. */
type Row = Readonly<{ beadOf: (bead: number) => number; rowBead: number }>

/** The numbers of bridges between their beads; those of the step in hand are filled with lamp light. */
export function bridgeLayer(
  bridges: readonly BridgeAt[],
  lit: readonly BridgeAt[],
  { beadOf, rowBead }: Row,
): OverlayLayer {
  return (paint) => {
    if (paint.scene.beadWidthMm * paint.view.scale < ROOM_PX * paint.ratio) return
    for (const bridge of bridges) number(paint, bridge, lit.includes(bridge), { beadOf, rowBead })
  }
}

function number(
  { brush, scene, view, ratio, x, y, colours }: OverlayPaint,
  { place, a, b }: BridgeAt,
  isLit: boolean,
  { beadOf, rowBead }: Row,
): void {
  const [one, two] = [beadOf(a), beadOf(b)]
  const px = scene.beadWidthMm * view.scale
  const radius = Math.min(15 * ratio, Math.max(9 * ratio, px * 0.26))
  const cx = x(((scene.xMm[one] ?? 0) + (scene.xMm[two] ?? 0)) / 2)
  const yMm = ((scene.yMm[one] ?? 0) + (scene.yMm[two] ?? 0)) / 2
  // On the edge that the row is worked on, where the needle goes under.
  const side = Math.sign((scene.yMm[rowBead] ?? 0) - yMm)
  const cy = y(yMm + side * 0.4 * scene.beadHeightMm)
  brush.beginPath()
  brush.arc(cx, cy, radius, 0, 2 * Math.PI)
  brush.fillStyle = isLit ? colours.lamp : colours.paper
  brush.fill()
  brush.lineWidth = 1.5 * ratio
  brush.strokeStyle = colours.ink
  brush.stroke()
  brush.fillStyle = isLit ? '#10272e' : colours.ink
  brush.font = `700 ${Math.round(radius * 1.2)}px 'Atkinson Hyperlegible Next', sans-serif`
  brush.textAlign = 'center'
  brush.textBaseline = 'middle'
  brush.fillText(String(place), cx, cy + radius * 0.06)
}
