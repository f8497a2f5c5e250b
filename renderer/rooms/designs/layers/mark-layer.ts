import type { OverlayLayer, OverlayPaint } from '../../../drawing/overlay.ts'

/** What is written on a bead, or a sign drawn there; nothing for beads that need none. */
export type BeadMark =
  | Readonly<{ kind: 'number'; number: number; ink: string }>
  | Readonly<{ kind: 'bar' | 'cross'; ink: string }>

/** Shorter side of a bead in CSS px from which a mark can be told. */
const SIGNS_FROM_PX = 5
const NUMBERS_FROM_PX = 10

/** Writes a mark on each bead, so that a level does not rest on colour alone. */
export function markLayer(markOf: (bead: number) => BeadMark | undefined): OverlayLayer {
  return (paint) => {
    const { grid, seen, scene, view, ratio } = paint
    const px = Math.min(scene.beadWidthMm, scene.beadHeightMm) * view.scale
    if (px < SIGNS_FROM_PX * ratio) return
    grid.forEachIn(seen, (bead) => {
      const mark = markOf(bead)
      if (mark === undefined) return
      if (mark.kind !== 'number') paintSign(paint, bead, mark, px)
      else if (px >= NUMBERS_FROM_PX * ratio) paintNumber(paint, bead, mark, px)
    })
  }
}

function paintNumber(
  { brush, scene, x, y }: OverlayPaint,
  bead: number,
  { number, ink }: Readonly<{ number: number; ink: string }>,
  px: number,
): void {
  brush.fillStyle = ink
  brush.font = `600 ${Math.round(px * (number > 9 ? 0.56 : 0.74))}px 'Atkinson Hyperlegible Next', sans-serif`
  brush.textAlign = 'center'
  brush.textBaseline = 'middle'
  brush.fillText(String(number), x(scene.xMm[bead] ?? 0), y(scene.yMm[bead] ?? 0) + px * 0.04)
}

function paintSign(
  { brush, scene, x, y }: OverlayPaint,
  bead: number,
  { kind, ink }: Readonly<{ kind: 'bar' | 'cross'; ink: string }>,
  px: number,
): void {
  const [cx, cy, reach] = [x(scene.xMm[bead] ?? 0), y(scene.yMm[bead] ?? 0), px * 0.24]
  brush.beginPath()
  brush.moveTo(cx - reach, cy + reach)
  brush.lineTo(cx + reach, cy - reach)
  if (kind === 'cross') {
    brush.moveTo(cx - reach, cy - reach)
    brush.lineTo(cx + reach, cy + reach)
  }
  brush.lineCap = 'round'
  brush.lineWidth = Math.max(1.4, px * 0.13)
  brush.strokeStyle = ink
  brush.stroke()
}
