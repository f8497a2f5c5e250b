import { PAPER, type Paper } from '../draw-list.ts'

/** Where things stand on a page of a sheet, mm. */
export type Frame = Readonly<{
  widthMm: number
  heightMm: number
  left: number
  right: number
  top: number
  bottom: number
  /** Baselines of the running head and of the foot. */
  headY: number
  footY: number
}>

/** Distance of baselines in mm: all body text of all pages stands on this grid. */
export const LINE = 4.8

/** No mark of a sheet comes nearer to the paper's edge, mm: what a home printer can print. */
export const SAFE = 9

/** The frame of a paper: as wide as the narrower paper allows, the body a whole number of lines high. */
export function sheetFrame(paper: Paper): Frame {
  const { widthMm, heightMm } = PAPER[paper]
  const left = 18
  const top = 24
  const lines = Math.floor((heightMm - top - 22) / LINE)
  return {
    widthMm,
    heightMm,
    left,
    right: widthMm - left,
    top,
    bottom: top + lines * LINE,
    headY: 14.4,
    footY: heightMm - 11,
  }
}

/** The first line of the grid at or below a height. */
export function onGrid({ top }: Frame, yMm: number): number {
  return top + Math.ceil((yMm - top) / LINE - 1e-6) * LINE
}
