import PDFDocument from 'pdfkit'
import { assertNever } from '../../../shared-core/assert.ts'
import { type PathStep, placedOutline } from '../../../shared-core/colour/path-step.ts'
import { type Mark, MM_PER_PT, type Page } from './draw-list.ts'
import { fontPath, measureText, textRuns } from './fonts.ts'

export type PdfInfo = Readonly<{ title: string; author: string; madeAtMs: number }>

const pt = (mm: number) => mm / MM_PER_PT

/** Paints pages into the bytes of a PDF with its fonts embedded. */
export function paintPdf(pages: readonly Page[], info: PdfInfo): Promise<Uint8Array> {
  const doc = new PDFDocument({
    autoFirstPage: false,
    font: fontPath('text'),
    lang: 'en',
    displayTitle: true,
    info: {
      Title: info.title,
      Author: info.author,
      Creator: 'Tallystrand',
      CreationDate: new Date(info.madeAtMs),
    },
  })
  const chunks: Uint8Array[] = []
  doc.on('data', (chunk: Uint8Array) => chunks.push(chunk))
  const done = new Promise<Uint8Array>((resolve, reject) => {
    doc.on('end', () => resolve(Buffer.concat(chunks)))
    doc.on('error', reject)
  })
  for (const page of pages) {
    doc.addPage({ size: [pt(page.widthMm), pt(page.heightMm)], margin: 0 })
    for (const mark of page.marks) paintMark(doc, mark)
  }
  doc.end()
  return done
}

function paintMark(doc: PDFKit.PDFDocument, mark: Mark): void {
  switch (mark.kind) {
    case 'text':
      paintText(doc, mark)
      break
    case 'line':
      paintLine(doc, mark)
      break
    case 'box':
      paintBox(doc, mark)
      break
    case 'modules':
      paintModules(doc, mark)
      break
    case 'stamps':
      paintStamps(doc, mark)
      break
    default:
      assertNever(mark)
  }
}

function paintLine(doc: PDFKit.PDFDocument, mark: Extract<Mark, { kind: 'line' }>): void {
  doc
    .lineWidth(pt(mark.widthMm))
    .moveTo(pt(mark.fromMm[0]), pt(mark.fromMm[1]))
    .lineTo(pt(mark.toMm[0]), pt(mark.toMm[1]))
    .stroke(mark.colour)
}

function paintText(doc: PDFKit.PDFDocument, mark: Extract<Mark, { kind: 'text' }>): void {
  const width = mark.align === 'left' ? 0 : measureText(mark.text, mark.face, mark.sizePt)
  const shift = { left: 0, right: width, centre: width / 2 }[mark.align]
  let x = pt(mark.xMm - shift)
  doc.fillColor(mark.colour)
  for (const run of textRuns(mark.text, mark.face)) {
    doc.font(fontPath(run.font)).fontSize(mark.sizePt)
    doc.text(run.text, x, pt(mark.yMm), { lineBreak: false, baseline: 'alphabetic' })
    x += doc.widthOfString(run.text)
  }
}

function paintBox(doc: PDFKit.PDFDocument, mark: Extract<Mark, { kind: 'box' }>): void {
  const [x, y, w, h] = [pt(mark.xMm), pt(mark.yMm), pt(mark.widthMm), pt(mark.heightMm)]
  const shape =
    mark.radiusMm > 0 ? doc.roundedRect(x, y, w, h, pt(mark.radiusMm)) : doc.rect(x, y, w, h)
  if (mark.stroke !== null) shape.lineWidth(pt(mark.stroke.widthMm))
  if (mark.fill !== null && mark.stroke !== null) shape.fillAndStroke(mark.fill, mark.stroke.colour)
  else if (mark.fill !== null) shape.fill(mark.fill)
  else if (mark.stroke !== null) shape.stroke(mark.stroke.colour)
}

function paintModules(doc: PDFKit.PDFDocument, mark: Extract<Mark, { kind: 'modules' }>): void {
  const side = pt(mark.sideMm) / mark.size
  mark.dark.forEach((dark, at) => {
    if (!dark) return
    const column = at % mark.size
    const row = Math.floor(at / mark.size)
    // A hair wider than the module, so that viewers draw no light seams between neighbours.
    doc.rect(pt(mark.xMm) + column * side, pt(mark.yMm) + row * side, side + 0.02, side + 0.02)
  })
  doc.fill('#000000')
}

/** Outlines put into one path before it is painted: viewers are slow with longer ones. */
const STAMPS_AT_ONCE = 400

function paintStamps(doc: PDFKit.PDFDocument, mark: Extract<Mark, { kind: 'stamps' }>): void {
  const { outline, placesMm, turnRad, fill, stroke } = mark
  const turned = placedOutline(outline, { scale: 1 / MM_PER_PT, turnRad })
  if (stroke !== null) doc.lineWidth(pt(stroke.widthMm)).lineJoin('round')
  for (let from = 0; from < placesMm.length; from += STAMPS_AT_ONCE) {
    for (const [x, y] of placesMm.slice(from, from + STAMPS_AT_ONCE)) {
      tracePath(doc, turned, pt(x), pt(y))
    }
    if (fill !== null && stroke !== null) doc.fillAndStroke(fill, stroke.colour)
    else if (fill !== null) doc.fill(fill)
    else doc.stroke(stroke?.colour ?? '#000000')
  }
}

/** A thousandth of a point is finer than any printer; fewer digits keep large sheets small. */
const round = (value: number) => Math.round(value * 1000) / 1000

function tracePath(
  doc: PDFKit.PDFDocument,
  outline: readonly PathStep[],
  x: number,
  y: number,
): void {
  for (const step of outline) {
    switch (step[0]) {
      case 'M':
        doc.moveTo(round(step[1] + x), round(step[2] + y))
        break
      case 'L':
        doc.lineTo(round(step[1] + x), round(step[2] + y))
        break
      case 'C': {
        const [, ax, ay, bx, by, cx, cy] = step
        doc.bezierCurveTo(
          round(ax + x),
          round(ay + y),
          round(bx + x),
          round(by + y),
          round(cx + x),
          round(cy + y),
        )
        break
      }
      case 'Z':
        doc.closePath()
        break
    }
  }
}
