import type { Mark } from '../draw-list.ts'

export const INK = '#16242c'
export const SOFT = '#46565f'
export const EDGE = '#9fb0b8'
export const TIDE = '#155e75'
/** Behind the picture: paper a shade darker, light enough to print as nothing. */
export const SAND = '#f7f4ee'

export type TextMark = Extract<Mark, { kind: 'text' }>

/** A text mark in the sheet's body size unless said otherwise. */
export function text(
  xMm: number,
  yMm: number,
  words: string,
  style: Partial<Omit<TextMark, 'kind' | 'xMm' | 'yMm' | 'text'>> = {},
): TextMark {
  return {
    kind: 'text',
    xMm,
    yMm,
    text: words,
    face: 'text',
    sizePt: 9.5,
    colour: INK,
    align: 'left',
    ...style,
  }
}

/** A level hairline. */
export function rule(
  fromX: number,
  toX: number,
  yMm: number,
  style: Readonly<{ widthMm?: number; colour?: string }> = {},
): Mark {
  const { widthMm = 0.2, colour = EDGE } = style
  return { kind: 'line', fromMm: [fromX, yMm], toMm: [toX, yMm], widthMm, colour }
}
