/** What of the work is seen: the mm at the canvas's left and top, and pixels of the canvas a mm. */
export type View = Readonly<{ xMm: number; yMm: number; scale: number }>

/** A size in pixels of the canvas. */
export type SizePx = Readonly<{ width: number; height: number }>

/** A size in mm. */
export type SizeMm = Readonly<{ widthMm: number; heightMm: number }>

/** The view that shows the whole work in the middle, with a margin of a share of the canvas. */
export function fitView(work: SizeMm, canvas: SizePx, margin = 0.06): View {
  const width = Math.max(work.widthMm, 0.1)
  const height = Math.max(work.heightMm, 0.1)
  const room = 1 - 2 * margin
  const scale = Math.min((canvas.width * room) / width, (canvas.height * room) / height)
  const fitted = scale > 0 ? scale : 1
  return {
    xMm: (work.widthMm - canvas.width / fitted) / 2,
    yMm: (work.heightMm - canvas.height / fitted) / 2,
    scale: fitted,
  }
}

/** The view nearer or farther by a factor, with the point under (x, y) kept in its place. */
export function zoomAt(
  view: View,
  factor: number,
  at: Readonly<{ x: number; y: number }>,
  limits: Readonly<{ least: number; most: number }>,
): View {
  const scale = Math.min(limits.most, Math.max(limits.least, view.scale * factor))
  return {
    xMm: view.xMm + at.x / view.scale - at.x / scale,
    yMm: view.yMm + at.y / view.scale - at.y / scale,
    scale,
  }
}

/** The view moved by pixels, never so far that nothing of the work is left in it. */
export function panBy(view: View, dx: number, dy: number, work: SizeMm, canvas: SizePx): View {
  const [width, height] = [canvas.width / view.scale, canvas.height / view.scale]
  const keep = (value: number, extent: number, seen: number) =>
    Math.min(extent - seen * 0.1, Math.max(seen * 0.1 - seen, value))
  return {
    xMm: keep(view.xMm - dx / view.scale, work.widthMm, width),
    yMm: keep(view.yMm - dy / view.scale, work.heightMm, height),
    scale: view.scale,
  }
}
