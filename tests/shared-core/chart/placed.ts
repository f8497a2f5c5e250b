import { indexBeads } from '../../../shared-core/chart/bead-index.ts'
import type { Chart } from '../../../shared-core/chart/chart.ts'
import { layoutChart } from '../../../shared-core/chart/layout.ts'
import { beadOf, CYLINDER } from './forms.ts'

type Point = Readonly<{ x: number; y: number }>

/**
 * Where the beads of a chart lie and of which slot they are, as sorted lines, moved to the top left:
 * two charts with equal lists are the same piece of work. `map` places each bead elsewhere first.
 */
export function placedBeads(chart: Chart, map: (point: Point) => Point = (p) => p): string[] {
  // On a grid of beads as long as wide a turned chart can be compared, whichever way its holes run.
  const isGrid = chart.stitch === 'square' || chart.stitch === 'loom'
  const { xMm, yMm } = layoutChart(chart, isGrid ? beadOf(2, 2) : CYLINDER)
  const { slotOf } = indexBeads(chart)
  const points = Array.from(xMm, (x, bead) => map({ x, y: yMm[bead] ?? Number.NaN }))
  const left = Math.min(...points.map(({ x }) => x))
  const top = Math.min(...points.map(({ y }) => y))
  return points
    .map(({ x, y }, bead) => `${(y - top).toFixed(2)} ${(x - left).toFixed(2)} ${slotOf[bead]}`)
    .toSorted()
}
