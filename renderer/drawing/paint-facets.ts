import type { BeadLook, Box, Brush } from './bead-look.ts'
import { shade, withAlpha } from './colour-shades.ts'

/** Flat faces that each take the light by the way they look: left and top bright, right and foot dark. */
export function paintFacets(brush: Brush, { hex, family }: BeadLook, box: Box): void {
  const { x, y, width, height } = box
  const [dx, dy] = family === 'cube' ? [width * 0.14, height * 0.14] : [width * 0.3, height * 0.3]
  const light = shade(hex, { l: 0.14 })
  const dark = shade(hex, { l: -0.2 })
  const [right, foot] = [x + width, y + height]
  face(brush, withAlpha(light, 0.55), [x, y, right, y, right - dx, y + dy, x + dx, y + dy])
  face(brush, withAlpha(light, 0.35), [x, y, x + dx, y + dy, x + dx, foot - dy, x, foot])
  face(brush, withAlpha(dark, 0.4), [
    right,
    y,
    right,
    foot,
    right - dx,
    foot - dy,
    right - dx,
    y + dy,
  ])
  face(brush, withAlpha(dark, 0.55), [
    x,
    foot,
    x + dx,
    foot - dy,
    right - dx,
    foot - dy,
    right,
    foot,
  ])
}

function face(brush: Brush, fill: string, corners: readonly number[]): void {
  brush.fillStyle = fill
  brush.beginPath()
  for (let i = 0; i < corners.length; i += 2) brush.lineTo(corners[i] ?? 0, corners[i + 1] ?? 0)
  brush.fill()
}
