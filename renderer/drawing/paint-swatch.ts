import type { BeadFamily } from '../../shared-core/beads/bead-form.ts'
import type { BeadLook, Brush } from './bead-look.ts'
import { paintBead } from './paint-bead.ts'
import { screenRatio } from './screen-ratio.ts'

/** Width and height of a form's portrait, as shares of the swatch. */
const PORTRAIT: Readonly<Record<BeadFamily, readonly [number, number]>> = {
  cylinder: [0.74, 0.86],
  rocaille: [0.9, 0.74],
  bugle: [0.42, 0.96],
  drop: [0.7, 0.96],
  'two-hole': [0.92, 0.92],
  cube: [0.82, 0.82],
  faceted: [0.86, 0.86],
}

/** Draws one bead upright in the middle of a small canvas of `size` CSS px. */
export function paintSwatch(canvas: HTMLCanvasElement, look: BeadLook, size: number): void {
  const ratio = screenRatio()
  const px = Math.round(size * ratio)
  canvas.width = px
  canvas.height = px
  canvas.style.width = `${size}px`
  canvas.style.height = `${size}px`
  const brush: Brush | null = canvas.getContext('2d')
  if (brush === null) return
  const [w, h] = PORTRAIT[look.family]
  const [width, height] = [px * w, px * h]
  paintBead(brush, look, { x: (px - width) / 2, y: (px - height) / 2, width, height }, 'vertical')
}
