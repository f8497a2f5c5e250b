import { type Mark, type Measure, MM_PER_PT, PAPER, type Page, type Paper } from './draw-list.ts'
import type { QrCode } from './qr-code.ts'
import { wrapText } from './wrap-text.ts'

/** A design drawn small: one rounded bead a place, mm from its own upper left corner. */
export type TagPicture = Readonly<{
  widthMm: number
  heightMm: number
  beadWidthMm: number
  beadHeightMm: number
  beads: readonly Readonly<{ xMm: number; yMm: number; colour: string }>[]
}>

/** What one tag says. Texts are ready to print; `price` is null where none is printed. */
export type Tag = Readonly<{
  name: string
  colourway: string
  code: string
  qr: QrCode
  price: string | null
  materials: string
  care: string
  caution: string
  maker: string
  picture: TagPicture | null
}>

export const TAG = { widthMm: 86, heightMm: 52 } as const
const COLUMNS = 2
const INK = '#16242c'
const SOFT = '#46565f'
const EDGE = '#9fb0b8'

/** Lays tags out on pages, two across, with cutting marks and a ring where the string goes through. */
export function tagSheet(tags: readonly Tag[], paper: Paper, measure: Measure): readonly Page[] {
  const { widthMm, heightMm } = PAPER[paper]
  const rows = Math.floor((heightMm - 16) / TAG.heightMm)
  const leftMm = (widthMm - COLUMNS * TAG.widthMm) / 2
  const topMm = (heightMm - rows * TAG.heightMm) / 2
  const perPage = COLUMNS * rows
  const pages: Page[] = []
  for (let first = 0; first < tags.length; first += perPage) {
    const marks = tags.slice(first, first + perPage).flatMap((tag, at) => {
      const xMm = leftMm + (at % COLUMNS) * TAG.widthMm
      const yMm = topMm + Math.floor(at / COLUMNS) * TAG.heightMm
      return tagMarks(tag, measure).map((mark) => shifted(mark, xMm, yMm))
    })
    pages.push({ widthMm, heightMm, marks })
  }
  return pages
}

/** The marks of one tag, from its own upper left corner. */
export function tagMarks(tag: Tag, measure: Measure): readonly Mark[] {
  return [
    ...frame(),
    ...picture(tag),
    ...heading(tag, measure),
    ...details(tag, measure),
    ...foot(tag, measure),
  ]
}

const TEXT_X = 26
const QR_SIDE = 16
const PRICE_WIDTH_MM = 23
const PRICE_SIZES_PT = [13, 11, 9, 7, 6] as const

function frame(): readonly Mark[] {
  const stroke = { colour: EDGE, widthMm: 0.15 }
  return [
    {
      kind: 'box',
      xMm: 0,
      yMm: 0,
      widthMm: TAG.widthMm,
      heightMm: TAG.heightMm,
      radiusMm: 0,
      fill: null,
      stroke,
    },
    { kind: 'box', xMm: 11, yMm: 3.5, widthMm: 4, heightMm: 4, radiusMm: 2, fill: null, stroke },
  ]
}

function picture({ picture }: Tag): readonly Mark[] {
  if (picture === null || picture.beads.length === 0) return []
  const room = { widthMm: 17, heightMm: 36 }
  const scale = Math.min(room.widthMm / picture.widthMm, room.heightMm / picture.heightMm, 1.2)
  const left = 13 - (picture.widthMm * scale) / 2
  const top = 11 + (room.heightMm - picture.heightMm * scale) / 2
  const [w, h] = [picture.beadWidthMm * scale * 0.94, picture.beadHeightMm * scale * 0.94]
  return picture.beads.map(({ xMm, yMm, colour }) => ({
    kind: 'box',
    xMm: left + xMm * scale - w / 2,
    yMm: top + yMm * scale - h / 2,
    widthMm: w,
    heightMm: h,
    radiusMm: Math.min(w, h) * 0.28,
    fill: colour,
    stroke: { colour: INK, widthMm: Math.min(0.08, w * 0.08) },
  }))
}

function heading(tag: Tag, measure: Measure): readonly Mark[] {
  const widthMm = TAG.widthMm - TEXT_X - 5
  const box = {
    face: 'text',
    sizePt: 8.5,
    widthMm: widthMm - PRICE_WIDTH_MM - 1,
    maxLines: 1,
  } as const
  const colourway = wrapText({ ...box, text: tag.colourway }, measure)[0] ?? ''
  const marks: Mark[] = [...nameMarks(tag.name, widthMm, measure)]
  marks.push(text(TEXT_X, 14.6, colourway, { sizePt: 8.5, colour: SOFT }))
  const right = TAG.widthMm - 5
  if (tag.price !== null) marks.push(text(right, 15, tag.price, priceStyle(tag.price, measure)))
  marks.push({
    kind: 'line',
    fromMm: [TEXT_X, 17.2],
    toMm: [right, 17.2],
    widthMm: 0.2,
    colour: EDGE,
  })
  return marks
}

/** As large as fits beside the colourway. */
function priceStyle(price: string, measure: Measure) {
  const face = 'text-strong'
  const sizePt = PRICE_SIZES_PT.find((size) => measure(price, face, size) <= PRICE_WIDTH_MM)
  return { face, sizePt: sizePt ?? PRICE_SIZES_PT[4], align: 'right' } as const
}

/** The name on one line, as large as fits; a very long one small on two. */
function nameMarks(name: string, widthMm: number, measure: Measure): readonly Mark[] {
  const face = 'title'
  const sizePt = [13, 12, 11, 10].find((size) => measure(name, face, size) <= widthMm)
  if (sizePt !== undefined) return [text(TEXT_X, 9, name, { face, sizePt })]
  const lines = wrapText({ text: name, face, sizePt: 9, widthMm, maxLines: 2 }, measure)
  return lines.map((line, at) => text(TEXT_X, 6.4 + at * 3.8, line, { face, sizePt: 9 }))
}

const DETAIL_SIZES_PT = [6.6, 6.2, 5.8, 5.4, 5] as const
const DETAILS_TOP_MM = 20.6
const PARAGRAPH_GAP_MM = 0.9
/** From the last of the details to the maker's first line, at least. */
const ABOVE_MAKER_MM = 2.6

/** What it is made of, its care and its caution, as large as all of it fits above the maker's name. */
function details(tag: Tag, measure: Measure): readonly Mark[] {
  const lastMm = (makerLines(tag, measure)[0]?.yMm ?? TAG.heightMm - 2) - ABOVE_MAKER_MM
  const isInRoom = ({ yMm }: Line) => yMm <= lastMm
  const tries = DETAIL_SIZES_PT.map((sizePt) => detailLines(tag, sizePt, measure))
  const fitting = tries.find((lines) => lines.every(isInRoom)) ?? tries.at(-1) ?? []
  return fitting
    .filter(isInRoom)
    .map(({ words, yMm, sizePt }) => text(TEXT_X, yMm, words, { sizePt }))
}

type Line = Readonly<{ words: string; yMm: number; sizePt: number }>

/** The caution stands before the care: it is what must not be missing where there is too much text. */
function detailLines(tag: Tag, sizePt: number, measure: Measure): readonly Line[] {
  const widthMm = TAG.widthMm - TEXT_X - QR_SIDE - 8
  const leading = leadingMm(sizePt)
  const lines: Line[] = []
  let yMm = DETAILS_TOP_MM
  for (const [words, maxLines] of [
    [tag.materials, 3],
    [tag.caution, 8],
    [tag.care, 8],
  ] as const) {
    if (words.trim() === '') continue
    for (const line of wrapText(
      { text: words, face: 'text', sizePt, widthMm, maxLines },
      measure,
    )) {
      lines.push({ words: line, yMm, sizePt })
      yMm += leading
    }
    yMm += PARAGRAPH_GAP_MM
  }
  return lines
}

function leadingMm(sizePt: number): number {
  return sizePt * MM_PER_PT * 1.26
}

function foot(tag: Tag, measure: Measure): readonly Mark[] {
  const qrX = TAG.widthMm - QR_SIDE - 5
  return [
    { kind: 'modules', xMm: qrX, yMm: 20, sideMm: QR_SIDE, size: tag.qr.size, dark: tag.qr.dark },
    text(qrX + QR_SIDE / 2, 40, tag.code, { face: 'text-strong', sizePt: 8, align: 'centre' }),
    ...makerLines(tag, measure).map(({ words, yMm, sizePt }) =>
      text(TEXT_X, yMm, words, { sizePt, colour: SOFT }),
    ),
  ]
}

/** Who made it, on one line or two at the foot. */
function makerLines({ maker }: Tag, measure: Measure): readonly Line[] {
  const sizePt = 6.6
  const box = { face: 'text', sizePt, widthMm: TAG.widthMm - TEXT_X - 5, maxLines: 2 } as const
  const lines = wrapText({ ...box, text: maker }, measure)
  const lastMm = TAG.heightMm - 3.2
  return lines.map((words, at) => ({
    words,
    yMm: lastMm - (lines.length - 1 - at) * leadingMm(sizePt),
    sizePt,
  }))
}

type TextMark = Extract<Mark, { kind: 'text' }>

function text(xMm: number, yMm: number, words: string, style: Partial<TextMark>): Mark {
  return {
    kind: 'text',
    xMm,
    yMm,
    text: words,
    face: 'text',
    sizePt: 7,
    colour: INK,
    align: 'left',
    ...style,
  }
}

function shifted(mark: Mark, byX: number, byY: number): Mark {
  if (mark.kind === 'line') {
    const move = ([x, y]: readonly [number, number]) => [x + byX, y + byY] as const
    return { ...mark, fromMm: move(mark.fromMm), toMm: move(mark.toMm) }
  }
  if (mark.kind === 'stamps') {
    return { ...mark, placesMm: mark.placesMm.map(([x, y]) => [x + byX, y + byY]) }
  }
  return { ...mark, xMm: mark.xMm + byX, yMm: mark.yMm + byY }
}
