import { fitView, panBy, type SizeMm, type SizePx, type View, zoomAt } from './view.ts'

/** One press of a key or button. */
const ZOOM_STEP = 1.4
const PAN_SHARE = 0.12
/** A bead fills this many CSS px when no nearer view is of use. */
const NEAREST_BEAD_PX = 180

/** What the control must know of the picture. */
export type Picture = Readonly<{
  work: SizeMm
  beadMm: number
  canvas: SizePx
  ratio: number
}>

/** Nearest and farthest views of a picture. */
function limitsOf({ work, beadMm, canvas, ratio }: Picture) {
  const fit = fitView(work, canvas).scale
  const most = Math.max(fit, (NEAREST_BEAD_PX * ratio) / beadMm)
  return { least: fit * 0.5, most }
}

/** The view nearer (above 1) or farther, about a point in pixels of the canvas; about its middle when absent. */
export function zoom(
  picture: Picture,
  view: View,
  factor: number,
  at = { x: picture.canvas.width / 2, y: picture.canvas.height / 2 },
): View {
  const zoomed = zoomAt(view, factor, at, limitsOf(picture))
  return panBy(zoomed, 0, 0, picture.work, picture.canvas)
}

/** The view moved by pixels of the canvas. */
export function pan({ work, canvas }: Picture, view: View, dx: number, dy: number): View {
  return panBy(view, dx, dy, work, canvas)
}

/** The view after a wheel: pinching and turning zoom, with Shift it moves sideways. */
export function wheel(
  picture: Picture,
  view: View,
  event: Pick<WheelEvent, 'deltaX' | 'deltaY' | 'ctrlKey' | 'shiftKey'>,
  at: Readonly<{ x: number; y: number }>,
): View {
  const { ratio } = picture
  if (event.shiftKey) return pan(picture, view, -(event.deltaX + event.deltaY) * ratio, 0)
  // A pinch arrives as a wheel with Ctrl and much smaller steps.
  const perPx = event.ctrlKey ? 0.01 : 0.0016
  return zoom(picture, view, Math.exp(-event.deltaY * perPx), at)
}

/** The view after a key, or `undefined` when the key is not one of the picture's. `fit` shows all of it. */
export function viewAfterKey(picture: Picture, view: View, key: string): View | 'fit' | undefined {
  const { width, height } = picture.canvas
  switch (key) {
    case 'ArrowLeft':
      return pan(picture, view, width * PAN_SHARE, 0)
    case 'ArrowRight':
      return pan(picture, view, -width * PAN_SHARE, 0)
    case 'ArrowUp':
      return pan(picture, view, 0, height * PAN_SHARE)
    case 'ArrowDown':
      return pan(picture, view, 0, -height * PAN_SHARE)
    case '+':
    case '=':
      return zoom(picture, view, ZOOM_STEP)
    case '-':
    case '\u2212':
      return zoom(picture, view, 1 / ZOOM_STEP)
    case '0':
      return 'fit'
    default:
      return undefined
  }
}
