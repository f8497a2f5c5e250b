import type { OverlayLayer, OverlayPaint } from '../overlay.ts'

/** Shorter side of a bead in CSS px from which its number can be read. */
const NUMBERS_FROM_PX = 16
const MARKS_FROM_PX = 5

/**
 * Beads marked by a level: passes, or hole fill (0 free, 1 tight, 2 full).
 *
 * The mark grows and closes with the level, so it does not rest on colour alone; near enough, the
 * number stands in it.
 *
 * @param levels - A level a bead, in the order of bead numbers.
 * @param most - The level drawn as full.
 */
export function levelLayer(levels: Uint16Array | Uint8Array, most: number): OverlayLayer {
  return (paint) => {
    const { grid, seen, scene, view, ratio } = paint
    const px = Math.min(scene.beadWidthMm, scene.beadHeightMm) * view.scale
    if (px < MARKS_FROM_PX * ratio) return
    grid.forEachIn(seen, (bead) => {
      const level = levels[bead] ?? 0
      if (level > 0) paintMark(paint, { bead, level, share: Math.min(1, level / most), px })
    })
  }
}

type Mark = Readonly<{ bead: number; level: number; share: number; px: number }>

function paintMark(
  { brush, scene, x, y, ratio, colours }: OverlayPaint,
  { bead, level, share, px }: Mark,
): void {
  const [cx, cy] = [x(scene.xMm[bead] ?? 0), y(scene.yMm[bead] ?? 0)]
  const hasNumber = px >= NUMBERS_FROM_PX * ratio
  const radius = px * (hasNumber ? 0.36 : 0.12 + 0.2 * share)
  brush.beginPath()
  brush.arc(cx, cy, radius, 0, 2 * Math.PI)
  brush.fillStyle = share >= 1 ? colours.bad : share > 0.5 ? colours.lamp : colours.paper
  brush.fill()
  brush.lineWidth = ratio * (0.75 + 2 * share)
  brush.strokeStyle = colours.ink
  brush.stroke()
  if (!hasNumber) return
  brush.fillStyle = share >= 1 ? colours.paper : share > 0.5 ? '#10272e' : colours.ink
  brush.font = `600 ${Math.round(px * 0.42)}px 'Atkinson Hyperlegible Next', sans-serif`
  brush.textAlign = 'center'
  brush.textBaseline = 'middle'
  brush.fillText(String(level), cx, cy + px * 0.02)
}
