import type { BeadLook, Box, Brush, HoleAxis } from './bead-look.ts'
import { shade, withAlpha } from './colour-shades.ts'

/** The mouths of the hole: seen a little from above and from the left, as a maker bends over her work. */
export function paintHoles(
  brush: Brush,
  { hex, family }: BeadLook,
  box: Box,
  axis: HoleAxis,
): void {
  const { x, y, width, height } = box
  const hole = shade(hex, { l: -0.42, c: 0.7 })
  switch (family) {
    case 'two-hole':
      for (const at of [0.3, 0.7]) {
        const [cx, cy] =
          axis === 'vertical'
            ? [x + width * at, y + height * 0.5]
            : [x + width * 0.5, y + height * at]
        mouth(brush, hole, { cx, cy, rx: width * 0.075, ry: height * 0.075 })
      }
      return
    case 'drop':
      mouth(brush, hole, {
        cx: x + width / 2,
        cy: y + height * 0.17,
        rx: width * 0.06,
        ry: height * 0.045,
      })
      return
    default:
      endMouth(brush, hex, hole, box, axis)
  }
}

type Ellipse = Readonly<{ cx: number; cy: number; rx: number; ry: number }>

/** The near end: a lit lip round a dark hole, foreshortened. */
function endMouth(brush: Brush, hex: string, hole: string, box: Box, axis: HoleAxis): void {
  const { x, y, width, height } = box
  const isUpright = axis === 'vertical'
  const depth = 0.075 * (isUpright ? height : width)
  const centre = isUpright
    ? { cx: x + width / 2, cy: y + depth * 0.5 }
    : { cx: x + depth * 0.5, cy: y + height / 2 }
  const lip = isUpright ? { rx: width * 0.4, ry: depth } : { rx: depth, ry: height * 0.4 }
  ellipse(brush, withAlpha(shade(hex, { l: 0.16, c: 0.9 }), 0.55), { ...centre, ...lip })
  const inner = isUpright
    ? { rx: width * 0.2, ry: depth * 0.52 }
    : { rx: depth * 0.52, ry: height * 0.2 }
  mouth(brush, hole, { ...centre, ...inner })
}

function mouth(brush: Brush, hole: string, shape: Ellipse): void {
  ellipse(brush, withAlpha(hole, 0.85), shape)
}

function ellipse(brush: Brush, fill: string, { cx, cy, rx, ry }: Ellipse): void {
  brush.fillStyle = fill
  brush.beginPath()
  brush.ellipse(cx, cy, rx, ry, 0, 0, Math.PI * 2)
  brush.fill()
}
