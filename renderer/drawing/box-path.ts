/** A box to trace, px: its middle, its size, how round its corners are and how it leans, radians clockwise. */
export type TracedBox = Readonly<{
  x: number
  y: number
  width: number
  height: number
  corner: number
  lean: number
}>

/** Adds a box to a path, leaning as its bead leans. */
export function addBox(path: Path2D, { x, y, width, height, corner, lean }: TracedBox): void {
  const box = new Path2D()
  box.roundRect(-width / 2, -height / 2, width, height, corner)
  path.addPath(box, new DOMMatrix().translateSelf(x, y).rotateSelf((lean * 180) / Math.PI))
}
