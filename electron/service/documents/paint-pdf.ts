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

/**
 * Writes one outline at many places: the same path each time, moved there.
 *
 * Written as page content of its own, as pdfkit's calls for each step take ten times as long, and
 * the same words again and again pack small.
 */
function paintStamps(doc: PDFKit.PDFDocument, mark: Extract<Mark, { kind: 'stamps' }>): void {
  const { outline, placesMm, turnRad, fill, stroke } = mark
  if (placesMm.length === 0) return
  doc.save()
  if (fill !== null) doc.fillColor(fill)
  if (stroke !== null) {
    doc.strokeColor(stroke.colour).lineWidth(pt(stroke.widthMm)).lineJoin('round')
  }
  const path = pathOperators(placedOutline(outline, { scale: 1 / MM_PER_PT, turnRad }))
  const paint = fill === null ? 'S' : stroke === null ? 'f' : 'B'
  const stamps = placesMm.map(
    ([x, y]) => `q 1 0 0 1 ${figure(pt(x))} ${figure(pt(y))} cm\n${path}\n${paint} Q`,
  )
  doc.addContent(stamps.join('\n'))
  doc.restore()
}

/** An outline as the operators of a page's content. @source ISO 32000-1, 8.5.2 path construction */
function pathOperators(outline: readonly PathStep[]): string {
  const operators = { M: 'm', L: 'l', C: 'c', Z: 'h' } as const
  return outline
    .map(([letter, ...numbers]) =>
      [...(numbers as readonly number[]).map(figure), operators[letter]].join(' '),
    )
    .join('\n')
}

/** A thousandth of a point is finer than any printer. */
function figure(value: number): string {
  return String(Math.round(value * 1000) / 1000)
}
