import type { PathStep } from '../../../shared-core/colour/path-step.ts'

/**
 * A page as data: what goes where, in millimetres from the page's upper left corner, y down.
 *
 * Layouts are pure functions that return pages; the painter alone knows PDF.
 */
export type Page = Readonly<{ widthMm: number; heightMm: number; marks: readonly Mark[] }>

/** The faces of the workshop's sheets; the painter falls back to a wider font for letters a face lacks. */
export type Face = 'text' | 'text-strong' | 'title'

export type Mark =
  | Readonly<{
      kind: 'text'
      xMm: number
      /** Of the baseline. */
      yMm: number
      text: string
      face: Face
      sizePt: number
      colour: string
      align: 'left' | 'right' | 'centre'
    }>
  | Readonly<{
      kind: 'line'
      fromMm: readonly [number, number]
      toMm: readonly [number, number]
      widthMm: number
      colour: string
    }>
  | Readonly<{
      kind: 'box'
      xMm: number
      yMm: number
      widthMm: number
      heightMm: number
      radiusMm: number
      fill: string | null
      stroke: Readonly<{ colour: string; widthMm: number }> | null
    }>
  | Readonly<{
      /** Square modules, true is dark; row by row, `size` by `size`. */
      kind: 'modules'
      xMm: number
      yMm: number
      sideMm: number
      size: number
      dark: readonly boolean[]
    }>
  | Readonly<{
      /** One outline at many places, such as the beads of one colour; outline in mm round its own origin. */
      kind: 'stamps'
      outline: readonly PathStep[]
      placesMm: readonly (readonly [x: number, y: number])[]
      /** Clockwise. */
      turnRad: number
      fill: string | null
      stroke: Readonly<{ colour: string; widthMm: number }> | null
    }>

/** Width of a text in mm when it is set; what a layout needs to know of fonts. */
export type Measure = (text: string, face: Face, sizePt: number) => number

/** Paper sizes in mm. @source ISO 216 for A4; 8.5 x 11 in for Letter. */
export const PAPER = {
  a4: { widthMm: 210, heightMm: 297 },
  letter: { widthMm: 215.9, heightMm: 279.4 },
} as const

export type Paper = keyof typeof PAPER

/** Millimetres of one typographic point. */
export const MM_PER_PT = 25.4 / 72
