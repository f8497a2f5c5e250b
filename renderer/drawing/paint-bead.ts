import type { BeadLook, Box, Brush, HoleAxis } from './bead-look.ts'
import { beadOutline } from './bead-outline.ts'
import { shade, withAlpha } from './colour-shades.ts'
import { type FinishLight, finishLights } from './finish-light.ts'
import { paintFacets } from './paint-facets.ts'
import { paintHoles } from './paint-holes.ts'

/** Under this many pixels across, holes and streaks would only be noise. */
const DETAIL_PX = 9

/** Paints one bead into a box, by its form and finish, with one light from the upper left. */
export function paintBead(brush: Brush, look: BeadLook, box: Box, axis: HoleAxis): void {
  const light = finishLights[look.finish]
  const outline = beadOutline(look.family, box, axis)
  const isNear = Math.min(box.width, box.height) >= DETAIL_PX
  brush.save()
  brush.fillStyle = bodyGradient(brush, look, box, axis)
  brush.fill(outline)
  brush.clip(outline)
  if (look.family !== 'cube') shadeEnds(brush, look, box, axis)
  if (look.family === 'cube' || look.family === 'faceted') paintFacets(brush, look, box)
  if (isNear) {
    if (light.core > 0) paintCore(brush, light, look, { box, axis })
    if (light.glow > 0) paintGlow(brush, light, look, box)
    if (light.streak > 0) paintStreak(brush, light, look, { box, axis })
    paintHoles(brush, look, box, axis)
  }
  brush.restore()
  brush.lineWidth = Math.max(0.6, Math.min(box.width, box.height) * 0.025)
  brush.strokeStyle = withAlpha(shade(look.hex, { l: -0.3 }), 0.55)
  brush.stroke(outline)
}

function bodyGradient(brush: Brush, look: BeadLook, box: Box, axis: HoleAxis): CanvasGradient {
  const { x, y, width, height } = box
  const isRound = look.family === 'drop' || look.family === 'rocaille'
  // Round beads are lit aslant; long ones straight across, as a tube is.
  const lean = isRound ? 0.55 : 0
  const gradient =
    axis === 'vertical'
      ? brush.createLinearGradient(
          x,
          y + height * (0.5 - lean / 2),
          x + width,
          y + height * (0.5 + lean / 2),
        )
      : brush.createLinearGradient(
          x + width * (0.5 - lean / 2),
          y,
          x + width * (0.5 + lean / 2),
          y + height,
        )
  for (const [at, change] of finishLights[look.finish].across) {
    gradient.addColorStop(at, shade(look.hex, change))
  }
  return gradient
}

/** Both ends turn away from the light; round beads turn more. */
function shadeEnds(brush: Brush, { hex, family }: BeadLook, box: Box, axis: HoleAxis): void {
  const { x, y, width, height } = box
  const gradient =
    axis === 'vertical'
      ? brush.createLinearGradient(x, y, x, y + height)
      : brush.createLinearGradient(x, y, x + width, y)
  const isRound = family === 'rocaille' || family === 'drop'
  const dark = shade(hex, { l: -0.32 })
  const reach = isRound ? 0.38 : 0.13
  gradient.addColorStop(0, withAlpha(dark, isRound ? 0.22 : 0.3))
  gradient.addColorStop(reach * 0.6, withAlpha(dark, 0))
  gradient.addColorStop(1 - reach, withAlpha(dark, 0))
  gradient.addColorStop(1, withAlpha(dark, isRound ? 0.5 : 0.42))
  brush.fillStyle = gradient
  brush.fillRect(x, y, width, height)
}

type Along = Readonly<{ box: Box; axis: HoleAxis }>

/** The hole of a clear bead, seen through its body. */
function paintCore(
  brush: Brush,
  light: FinishLight,
  { hex }: BeadLook,
  { box, axis }: Along,
): void {
  const { x, y, width, height } = box
  brush.fillStyle = withAlpha(shade(hex, { l: -0.3, c: 1.1 }), light.core)
  if (axis === 'vertical') brush.fillRect(x + width * 0.35, y, width * 0.3, height)
  else brush.fillRect(x, y + height * 0.35, width, height * 0.3)
}

/** The light that has gone through clear glass gathers low on the far side. */
function paintGlow(brush: Brush, light: FinishLight, { hex }: BeadLook, box: Box): void {
  const { x, y, width, height } = box
  const [cx, cy] = [x + width * 0.7, y + height * 0.72]
  const glow = brush.createRadialGradient(cx, cy, 0, cx, cy, Math.max(width, height) * 0.42)
  const bright = shade(hex, { l: 0.3, c: 1.1 })
  glow.addColorStop(0, withAlpha(bright, light.glow))
  glow.addColorStop(1, withAlpha(bright, 0))
  brush.fillStyle = glow
  brush.fillRect(x, y, width, height)
}

/** The lamp itself, seen in the surface: warm, soft at its ends. */
function paintStreak(brush: Brush, light: FinishLight, look: BeadLook, { box, axis }: Along): void {
  const { x, y, width, height } = box
  const isRound = look.family === 'rocaille' || look.family === 'drop'
  const [long, thick] = isRound ? [0.3, 0.17] : [0.52, 0.1]
  const [w, h] =
    axis === 'vertical' ? [thick * width, long * height] : [long * width, thick * height]
  const at = isRound ? 0.34 : 0.29
  const cx = x + width * (axis === 'vertical' ? at : isRound ? at : 0.42)
  const cy = y + height * (axis === 'vertical' ? (isRound ? 0.34 : 0.42) : at)
  // A gradient, not a blur: a blur filter costs a hundred times as much.
  const gleam = brush.createRadialGradient(0, 0, 0, 0, 0, 1)
  gleam.addColorStop(0, `rgb(255 250 236 / ${light.streak})`)
  gleam.addColorStop(0.55, `rgb(255 250 236 / ${light.streak * 0.85})`)
  gleam.addColorStop(1, 'rgb(255 250 236 / 0)')
  brush.save()
  brush.translate(cx, cy)
  if (isRound) brush.rotate(-0.6)
  brush.scale(w * 0.62, h * 0.56)
  brush.fillStyle = gleam
  brush.fillRect(-1, -1, 2, 2)
  brush.restore()
}
