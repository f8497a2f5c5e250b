import type { Face, Mark, Measure } from '../draw-list.ts'
import { wrapText } from '../wrap-text.ts'
import { type Frame, LINE, onGrid } from './sheet-frame.ts'
import { INK, SOFT, type TextMark, TIDE, text } from './sheet-style.ts'

/** A stretch of body text: `hang` mm of indent for every line but the first, `lead` for all. */
export type Stretch = Readonly<{
  words: string
  face?: Face
  sizePt?: number
  colour?: string
  leadMm?: number
  hangMm?: number
  /** Drawn at the first line's baseline, from the left edge of the column. */
  before?: (xMm: number, yMm: number) => readonly Mark[]
}>

/**
 * Writes text down the pages of a sheet, in one column or two, every line on the grid.
 *
 * `y` is the next free baseline; a page is begun when there is no room for a line.
 */
export class SheetWriter {
  readonly frame: Frame
  readonly measure: Measure
  readonly pages: Mark[][] = []
  #y: number
  #columns = 1
  #column = 0
  #columnTop: number

  constructor(frame: Frame, measure: Measure) {
    this.frame = frame
    this.measure = measure
    this.#y = Infinity
    this.#columnTop = frame.top
  }

  get y(): number {
    return this.#y
  }

  get left(): number {
    return this.frame.left + this.#column * (this.width + GUTTER)
  }

  get width(): number {
    const whole = this.frame.right - this.frame.left
    return (whole - (this.#columns - 1) * GUTTER) / this.#columns
  }

  put(...marks: readonly Mark[]): void {
    this.pages.at(-1)?.push(...marks)
  }

  newPage(): void {
    this.pages.push([])
    this.#column = 0
    this.#columnTop = this.frame.top
    this.#y = this.frame.top + LINE
  }

  /** Goes to the next column or page unless so many lines still fit. */
  keep(lines: number): void {
    if (this.#y + (lines - 1) * LINE <= this.frame.bottom + 1e-6) return
    if (this.#column + 1 < this.#columns && this.pages.length > 0) {
      this.#column += 1
      this.#y = this.#columnTop + LINE
    } else this.newPage()
  }

  down(lines: number): void {
    this.#y += lines * LINE
  }

  /** Free space, but none at the top of a column. */
  gap(lines = 1): void {
    if (this.#y > this.#columnTop + LINE + 1e-6) this.down(lines)
  }

  /** Sets the text that follows in so many columns, from here to the next change. */
  columns(count: 1 | 2): void {
    if (count === 1 && this.#columns === 2 && this.#column > 0) {
      // What follows stands below both columns.
      this.#y = this.frame.bottom + LINE
    }
    this.#columns = count
    this.#column = 0
    this.#columnTop = this.#y - LINE
  }

  title(words: string): void {
    if (this.pages.length === 0) this.newPage()
    this.gap(2)
    this.keep(5)
    for (const line of this.wrapped(words, 'title', 16, this.width, 2)) {
      this.put(text(this.left, this.#y + 1, line, { face: 'title', sizePt: 16 }))
      this.down(1.5)
    }
    this.#y = onGrid(this.frame, this.#y)
  }

  heading(words: string): void {
    if (this.pages.length === 0) this.newPage()
    this.gap()
    this.keep(3)
    const style = { face: 'text-strong', sizePt: 10.5, colour: TIDE } as const
    for (const line of this.wrapped(words, style.face, style.sizePt, this.width, 2)) {
      this.put(text(this.left, this.#y, line, style))
      this.down(1)
    }
  }

  paragraph(stretch: Stretch): void {
    const { words, face = 'text', sizePt = BODY_PT, colour = INK, leadMm = 0, hangMm = 0 } = stretch
    if (words.trim() === '') return
    const style: Partial<TextMark> = { face, sizePt, colour }
    const lines = this.linesOf(stretch)
    // A line alone at the foot or the head of a page is lost.
    this.keep(Math.min(lines.length, 2))
    lines.forEach((line, i) => {
      this.keep(lines.length > 2 && i === lines.length - 2 ? 2 : 1)
      if (i === 0) this.put(...(stretch.before?.(this.left, this.#y) ?? []))
      this.put(text(this.left + leadMm + (i === 0 ? 0 : hangMm), this.#y, line, style))
      this.down(1)
    })
  }

  /** The lines that a paragraph takes in the column as it stands. */
  linesOf({
    words,
    face = 'text',
    sizePt = BODY_PT,
    leadMm = 0,
    hangMm = 0,
  }: Stretch): readonly string[] {
    return this.wrapped(words, face, sizePt, this.width - leadMm - hangMm, 4_000)
  }

  note(words: string): void {
    this.paragraph({ words, colour: SOFT, sizePt: 9 })
  }

  wrapped(
    words: string,
    face: Face,
    sizePt: number,
    widthMm: number,
    maxLines: number,
  ): readonly string[] {
    return wrapText({ text: words, face, sizePt, widthMm, maxLines }, this.measure)
  }
}

const BODY_PT = 9.5
/** Between two columns, mm. */
const GUTTER = 9
