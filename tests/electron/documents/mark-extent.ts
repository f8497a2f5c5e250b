import type { Mark } from '../../../electron/service/documents/draw-list.ts'
import { measureText } from '../../../electron/service/documents/fonts.ts'
import { placedOutline } from '../../../shared-core/colour/path-step.ts'

export type Extent = readonly [left: number, top: number, right: number, bottom: number]

/** Left, top, right and bottom of a mark in mm; a text's top is its cap height, near enough. */
export function extent(mark: Mark): Extent {
  switch (mark.kind) {
    case 'text': {
      const width = measureText(mark.text, mark.face, mark.sizePt)
      const left = mark.xMm - { left: 0, right: width, centre: width / 2 }[mark.align]
      return [left, mark.yMm - mark.sizePt * 0.25, left + width, mark.yMm]
    }
    case 'line': {
      const [[x1, y1], [x2, y2]] = [mark.fromMm, mark.toMm]
      return [Math.min(x1, x2), Math.min(y1, y2), Math.max(x1, x2), Math.max(y1, y2)]
    }
    case 'box':
      return [mark.xMm, mark.yMm, mark.xMm + mark.widthMm, mark.yMm + mark.heightMm]
    case 'modules':
      return [mark.xMm, mark.yMm, mark.xMm + mark.sideMm, mark.yMm + mark.sideMm]
    case 'stamps':
      return stampsExtent(mark)
  }
}

function stampsExtent({ outline, placesMm, turnRad }: Extract<Mark, { kind: 'stamps' }>): Extent {
  // Control points hold their curve, so the box of all points holds the outline.
  const points = placedOutline(outline, { scale: 1, turnRad }).flatMap(
    ([, ...xy]) => xy as number[],
  )
  const xs = points.filter((_, i) => i % 2 === 0)
  const ys = points.filter((_, i) => i % 2 === 1)
  const least = (values: readonly number[]) => values.reduce((a, b) => Math.min(a, b), Infinity)
  const most = (values: readonly number[]) => values.reduce((a, b) => Math.max(a, b), -Infinity)
  const [px, py] = [placesMm.map(([x]) => x), placesMm.map(([, y]) => y)]
  return [least(px) + least(xs), least(py) + least(ys), most(px) + most(xs), most(py) + most(ys)]
}
