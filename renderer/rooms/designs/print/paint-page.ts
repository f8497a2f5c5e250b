import type { CallOutput } from '../../../../shared-core/contract/calls.ts'

/** A page of a sheet as the service lays it out, mm from its upper left corner. */
export type SheetPage = CallOutput<'designs.sheetPage'>['page']
type Mark = SheetPage['marks'][number]
type Of<K extends Mark['kind']> = Extract<Mark, { kind: K }>
type Brush = CanvasRenderingContext2D

const MM_PER_PT = 25.4 / 72

/** The faces of the printed sheet as the window has them. */
export const PAGE_FACES = {
  text: "400 {size} 'Atkinson Hyperlegible Next', sans-serif",
  'text-strong': "700 {size} 'Atkinson Hyperlegible Next', sans-serif",
  title: "600 {size} 'Literata', serif",
} as const

/** Paints a page's marks on white, at so many pixels a millimetre: the same marks the PDF is painted from. */
export function paintPage(brush: Brush, page: SheetPage, scale: number): void {
  brush.setTransform(scale, 0, 0, scale, 0, 0)
  brush.fillStyle = '#ffffff'
  brush.fillRect(0, 0, page.widthMm, page.heightMm)
  for (const mark of page.marks) paintMark(brush, mark)
  brush.setTransform(1, 0, 0, 1, 0, 0)
}

function paintMark(brush: Brush, mark: Mark): void {
  switch (mark.kind) {
    case 'text':
      paintText(brush, mark)
      break
    case 'line':
      paintLine(brush, mark)
      break
    case 'box':
      paintBox(brush, mark)
      break
    case 'stamps':
      paintStamps(brush, mark)
  }
}

function paintText(brush: Brush, { text, face, sizePt, colour, align, xMm, yMm }: Of<'text'>) {
  // Fonts are set at ten times their size: a browser's least size is larger than a small print in mm.
  const size = `${sizePt * MM_PER_PT * 10}px`
  brush.save()
  brush.translate(xMm, yMm)
  brush.scale(0.1, 0.1)
  brush.font = PAGE_FACES[face].replace('{size}', size)
  brush.textAlign = align === 'centre' ? 'center' : align
  brush.textBaseline = 'alphabetic'
  brush.fillStyle = colour
  brush.fillText(text, 0, 0)
  brush.restore()
}

function paintLine(brush: Brush, { placesMm, widthMm, colour }: Of<'line'>): void {
  const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = placesMm
  brush.beginPath()
  brush.moveTo(x1, y1)
  brush.lineTo(x2, y2)
  brush.lineWidth = widthMm
  brush.strokeStyle = colour
  brush.stroke()
}

function paintBox(brush: Brush, mark: Of<'box'>): void {
  const { xMm, yMm, widthMm, heightMm, radiusMm, fill, stroke } = mark
  brush.beginPath()
  brush.roundRect(xMm, yMm, widthMm, heightMm, radiusMm)
  fillAndStroke(brush, fill, stroke)
}

/** All places of one outline in one path, which a canvas paints in one go. */
function paintStamps(brush: Brush, mark: Of<'stamps'>): void {
  const { placesMm, turnRad } = mark
  const outline = outlinePath(mark.outline)
  const [cosine, sine] = [Math.cos(turnRad), Math.sin(turnRad)]
  const all = new Path2D()
  for (let i = 0; i + 1 < placesMm.length; i += 2) {
    all.addPath(
      outline,
      new DOMMatrix([cosine, sine, -sine, cosine, placesMm[i], placesMm[i + 1]] as number[]),
    )
  }
  fillAndStroke(brush, mark.fill, mark.stroke, all)
}

function outlinePath(outline: Of<'stamps'>['outline']): Path2D {
  const path = new Path2D()
  for (const { step, at } of outline) {
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = at
    if (step === 'M') path.moveTo(a, b)
    else if (step === 'L') path.lineTo(a, b)
    else if (step === 'C') path.bezierCurveTo(a, b, c, d, e, f)
    else path.closePath()
  }
  return path
}

function fillAndStroke(
  brush: Brush,
  fill: string | null,
  stroke: Of<'box'>['stroke'],
  path?: Path2D,
): void {
  if (fill !== null) {
    brush.fillStyle = fill
    if (path === undefined) brush.fill()
    else brush.fill(path)
  }
  if (stroke === null) return
  brush.lineWidth = stroke.widthMm
  brush.strokeStyle = stroke.colour
  brush.lineJoin = 'round'
  if (path === undefined) brush.stroke()
  else brush.stroke(path)
}
