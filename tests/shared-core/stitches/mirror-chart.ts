import type { BeadIndex } from '../../../shared-core/chart/bead-index.ts'
import { findBead } from '../../../shared-core/chart/bead-index.ts'
import type { Chart } from '../../../shared-core/chart/chart.ts'
import type { Direction, RouteEvent } from '../../../shared-core/route/route.ts'

/** The axis a chart is mirrored about, so that every stitch's beads fall on its own lattice again. */
function axis(chart: Chart): number {
  const end = Math.max(2, ...chart.rows.map(({ start, cells }) => start + 2 * cells.length))
  // Peyote's odd columns stay odd (a multiple of 4); a herringbone pair stays a pair (4 n + 2).
  if (chart.stitch === 'peyote') return 4 * Math.ceil(end / 4)
  if (chart.stitch === 'herringbone') return 4 * Math.ceil(end / 4) + 2
  return 2 * Math.ceil(end / 2)
}

/** The chart as seen in a mirror. */
export function mirrorChart(chart: Chart): Chart {
  const about = axis(chart)
  return {
    stitch: chart.stitch,
    rows: chart.rows.map(({ start, cells }) => ({
      start: about - start - 2 * (cells.length - 1),
      cells: cells.toReversed(),
    })),
  }
}

const SWAPPED = { left: 'right', right: 'left', up: 'up', down: 'down' } as const

/** A route as seen in a mirror: the mirrored beads, left for right. */
export function mirrorEvents(
  chart: Chart,
  events: readonly RouteEvent[],
  from: BeadIndex,
  to: BeadIndex,
): readonly RouteEvent[] {
  const about = axis(chart)
  const swap = (bead: number) => findBead(to, from.rowOf[bead] ?? 0, about - (from.atOf[bead] ?? 0))
  const turned = (direction: Direction) => SWAPPED[direction]
  return events.map((event): RouteEvent => {
    switch (event.kind) {
      case 'pick-up':
        return { ...event, beads: event.beads.map(swap), directions: event.directions.map(turned) }
      case 'pass':
        return { ...event, bead: swap(event.bead), direction: turned(event.direction) }
      case 'hook': {
        const [a, b] = [swap(event.bridge.a), swap(event.bridge.b)]
        const isRowBridge = event.edge === 'up' || event.edge === 'down'
        return {
          ...event,
          bridge: isRowBridge ? { a: b, b: a } : { a, b },
          edge: turned(event.edge),
        }
      }
      case 'turn':
        return { ...event, bead: swap(event.bead) }
      case 'tail':
        return { ...event, bead: swap(event.bead), edge: turned(event.edge) }
      case 'row':
        return { ...event, side: event.side === 'left' ? 'right' : 'left' }
      default:
        return event
    }
  })
}
