import type { Mark } from '../draw-list.ts'
import type { ChartBlock } from './chart-plan.ts'
import type { PrintedChart } from './printed-chart.ts'
import { EDGE, TIDE } from './sheet-style.ts'

/** Room for the map, mm. */
const MOST = { widthMm: 16, heightMm: 9 } as const
const GAP_MM = 0.3

/**
 * A small map of a chart that goes over several pages: each page's parts as boxes, this page's filled.
 *
 * @param corner - Where its lower right corner lies on the page, mm.
 */
export function pageMap(
  { extent, pitch }: PrintedChart,
  pages: readonly (readonly ChartBlock[])[],
  here: number,
  corner: Readonly<{ rightMm: number; bottomMm: number }>,
): Readonly<{ widthMm: number; marks: readonly Mark[] }> {
  const wide = (extent.maxAt + 1 - extent.minAt) * pitch.halfMm
  const high = (extent.lastRow + 1 - extent.firstRow) * pitch.downMm
  const scale = Math.min(MOST.widthMm / wide, MOST.heightMm / high)
  const left = corner.rightMm - wide * scale
  const top = corner.bottomMm - high * scale
  const box = ({ at, rows }: ChartBlock, isHere: boolean): Mark => ({
    kind: 'box',
    xMm: left + (at[0] - extent.minAt) * pitch.halfMm * scale + GAP_MM / 2,
    yMm: top + (rows[0] - extent.firstRow) * pitch.downMm * scale + GAP_MM / 2,
    widthMm: Math.max(0.2, (at[1] - at[0]) * pitch.halfMm * scale - GAP_MM),
    heightMm: Math.max(0.2, (rows[1] - rows[0]) * pitch.downMm * scale - GAP_MM),
    radiusMm: 0,
    fill: isHere ? TIDE : null,
    stroke: { colour: isHere ? TIDE : EDGE, widthMm: 0.15 },
  })
  const marks = pages.flatMap((blocks, page) => blocks.map((block) => box(block, page === here)))
  return { widthMm: wide * scale, marks }
}
