import type { RouteEvent } from '../../../shared-core/route/route.ts'

const ARROW = { up: '↑', down: '↓', left: '←', right: '→' } as const

/**
 * Writes an event in one short word, so that a whole route can stand by hand in a test:
 * `+0↑1↓` picks up beads 0 and 1, `0↑` passes bead 0 upwards, `(0-1)↑` hooks the bridge above beads
 * 0 and 1, `row 2 left` begins a row, `tail 0↓` takes up the start tail below bead 0.
 */
export function eventText(event: RouteEvent): string {
  switch (event.kind) {
    case 'pick-up':
      return `+${event.beads.map((bead, at) => `${bead}${ARROW[event.directions[at] ?? 'up']}`).join('')}`
    case 'pass':
      return `${event.bead}${ARROW[event.direction]}${event.purpose === 'stitch' ? '' : ` ${event.purpose}`}`
    case 'hook':
      return `(${event.bridge.a}-${event.bridge.b})${ARROW[event.edge]}`
    case 'turn':
      return `turn ${event.around} ${event.bead}`
    case 'join':
      return `join ${event.partId} ${event.bead}${ARROW[event.direction]}${event.purpose === 'stitch' ? '' : ` ${event.purpose}`}`
    case 'tail':
      return `tail ${event.bead}${ARROW[event.edge]}`
    case 'row':
      return `row ${event.row} ${event.side}`
    case 'finding':
      return `finding ${event.findingId}`
    case 'knot':
      return `knot ${event.near}`
    case 'add-thread':
      return 'add-thread'
    case 'warp':
      return 'warp'
    case 'cut':
      return 'cut'
  }
}

/** The whole route, an event a line. */
export function routeText(events: readonly RouteEvent[]): readonly string[] {
  return events.map(eventText)
}
