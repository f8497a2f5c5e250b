import PDFDocument from 'pdfkit'
import { assertNever } from '../../../shared-core/assert.ts'
import { type PathStep, placedOutline } from '../../../shared-core/colour/path-step.ts'
import { type Mark, MM_PER_PT, type Page } from './draw-list.ts'
import { fontPath, measureText, runEms, textRuns } from './fonts.ts'

export type PdfInfo = Readonly<{ title: string; author: string; madeAtMs: number }>

type Form = Readonly<{ name: string; ref: PDFKit.PDFKitReference }>

/** A document being painted, and the outlines it holds already. */
type Sheet = Readonly<{ doc: PDFKit.PDFDocument; forms: Map<string, Form> }>

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
  const sheet: Sheet = { doc, forms: new Map() }
  for (const page of pages) {
    doc.addPage({ size: [pt(page.widthMm), pt(page.heightMm)], margin: 0 })
    for (const mark of page.marks) paintMark(sheet, mark)
  }
  doc.end()
  return done
}

function paintMark(sheet: Sheet, mark: Mark): void {
  const { doc } = sheet
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
      paintStamps(sheet, mark)
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
    doc.text(run.text, x, pt(mark.yMm), {
      lineBreak: false,
      baseline: 'alphabetic',
      // With features named, even none, a run is shaped whole: words from the right stand in their order.
      ...(run.isRightToLeft ? { features: [] } : {}),
    })
    x += runEms(run) * mark.sizePt
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
 * Writes one outline at many places: a form that is kept once in the file, called at each place.
 *
 * Each place is written as the way from the one before, in whole thousandths, so that nothing adds up.
 */
function paintStamps(sheet: Sheet, mark: Extract<Mark, { kind: 'stamps' }>): void {
  const { outline, placesMm, turnRad, fill, stroke } = mark
  if (placesMm.length === 0) return
  const { doc } = sheet
  const placed = placedOutline(outline, { scale: 1 / MM_PER_PT, turnRad })
  const path = pathOperators(placed)
  const paint = fill === null ? 'S' : stroke === null ? 'f' : 'B'
  const form = formOf(
    sheet,
    `${path}\n${paint}`,
    reachOf(placed) + (stroke === null ? 0 : pt(stroke.widthMm)),
  )
  doc.page.xobjects[form.name] = form.ref
  doc.save()
  if (fill !== null) doc.fillColor(fill)
  if (stroke !== null) {
    doc.strokeColor(stroke.colour).lineWidth(pt(stroke.widthMm)).lineJoin('round')
  }
  let [x, y] = [0, 0]
  const calls = placesMm.map(([xMm, yMm]) => {
    const [nextX, nextY] = [thousandths(pt(xMm)), thousandths(pt(yMm))]
    const call = `1 0 0 1 ${(nextX - x) / 1000} ${(nextY - y) / 1000} cm /${form.name} Do`
    ;[x, y] = [nextX, nextY]
    return call
  })
  doc.addContent(calls.join('\n'))
  doc.restore()
}

/** The form of a content: alike outlines of all pages and colours are one. */
function formOf({ doc, forms }: Sheet, content: string, reachPt: number): Form {
  const known = forms.get(content)
  if (known !== undefined) return known
  const reach = Math.ceil(reachPt)
  const ref = doc.ref({
    Type: 'XObject',
    Subtype: 'Form',
    FormType: 1,
    BBox: [-reach, -reach, reach, reach],
    Resources: {},
  })
  ref.end(Buffer.from(content, 'latin1'))
  const form = { name: `Stamp${forms.size + 1}`, ref }
  forms.set(content, form)
  return form
}

/** No point of an outline lies farther than this from its origin, across or down. */
function reachOf(outline: readonly PathStep[]): number {
  const numbers = outline.flatMap(([, ...xy]) => xy as readonly number[])
  return numbers.reduce((most, value) => Math.max(most, Math.abs(value)), 0)
}

/** An outline as the operators of a page's content. @source ISO 32000-1, 8.5.2 path construction */
function pathOperators(outline: readonly PathStep[]): string {
  const operators = { M: 'm', L: 'l', C: 'c', Z: 'h' } as const
  return outline
    .map(([letter, ...numbers]) =>
      [
        ...(numbers as readonly number[]).map((value) => thousandths(value) / 1000),
        operators[letter],
      ].join(' '),
    )
    .join('\n')
}

/** A thousandth of a point is finer than any printer. */
function thousandths(value: number): number {
  return Math.round(value * 1000)
}
