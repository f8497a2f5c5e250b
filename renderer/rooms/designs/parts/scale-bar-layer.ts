import type { OverlayLayer } from '../../../drawing/overlay.ts'

/** Lengths a bar may stand for, mm. */
const LENGTHS = [1, 2, 5, 10, 20, 50, 100, 200] as const
/** The widest a bar is drawn, as a share of the picture. */
const WIDEST = 0.22
const INSET = 16

/** A bar of a round length in the lower left corner, so that sizes are seen as well as read. */
export const scaleBarLayer: OverlayLayer = ({ brush, view, ratio, colours }) => {
  const { width, height } = brush.canvas
  const mm = LENGTHS.findLast((length) => length * view.scale <= width * WIDEST) ?? LENGTHS[0]
  const [left, bottom] = [INSET * ratio, height - INSET * ratio]
  const right = left + mm * view.scale
  const cap = 5 * ratio
  brush.beginPath()
  brush.moveTo(left, bottom - cap)
  brush.lineTo(left, bottom)
  brush.lineTo(right, bottom)
  brush.lineTo(right, bottom - cap)
  brush.lineWidth = 2 * ratio
  brush.strokeStyle = colours.ink
  brush.stroke()
  brush.font = `600 ${15 * ratio}px 'Atkinson Hyperlegible Next', sans-serif`
  brush.fillStyle = colours.ink
  brush.textBaseline = 'bottom'
  brush.fillText(`${mm} mm`, left, bottom - cap - 3 * ratio)
}
