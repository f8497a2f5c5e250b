import type { z } from 'zod'
import type { pageMark, sheetPage } from '../../../shared-core/contract/page-marks.ts'
import type { Mark, Page } from './draw-list.ts'

/** A page as the contract sends it to be looked at: places in one list of numbers, to a thousandth of a mm. */
export function pageView({ widthMm, heightMm, marks }: Page): z.output<typeof sheetPage> {
  return { widthMm, heightMm, marks: marks.flatMap(markView) }
}

function markView(mark: Mark): readonly z.output<typeof pageMark>[] {
  switch (mark.kind) {
    case 'text': {
      const { kind, text, face, sizePt, colour, align } = mark
      return [{ kind, text, face, sizePt, colour, align, xMm: fine(mark.xMm), yMm: fine(mark.yMm) }]
    }
    case 'line': {
      const { kind, widthMm, colour } = mark
      const [[x1, y1], [x2, y2]] = [mark.fromMm, mark.toMm]
      return [{ kind, widthMm, colour, placesMm: [x1, y1, x2, y2].map(fine) }]
    }
    case 'box':
      return [mark]
    case 'stamps': {
      const { kind, turnRad, fill, stroke } = mark
      const outline = mark.outline.map(([letter, ...numbers]) => ({
        step: letter,
        at: (numbers as readonly number[]).map(fine),
      }))
      const placesMm = mark.placesMm.flatMap(([x, y]) => [fine(x), fine(y)])
      return [{ kind, outline, placesMm, turnRad, fill, stroke }]
    }
    case 'modules':
      throw new Error('a pattern sheet has no modules')
  }
}

function fine(mm: number): number {
  return Math.round(mm * 1000) / 1000
}
