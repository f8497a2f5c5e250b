import { type BeadIndex, findBead } from '../../../shared-core/chart/bead-index.ts'
import type { Direction, RouteEvent } from '../../../shared-core/route/route.ts'

/** Where beads lie and how big they are, for judging whether a thread can go from one to the next. */
export type ReplayGround = Readonly<{
  index: BeadIndex
  xMm: ArrayLike<number>
  yMm: ArrayLike<number>
  lengthMm: number
  diameterMm: number
}>

/** What a replay found: faults in plain words, passes per bead, and how often each bead was picked up. */
export type Replay = Readonly<{
  faults: readonly string[]
  passes: readonly number[]
  picked: readonly number[]
}>

const OPPOSITE = { up: 'down', down: 'up', left: 'right', right: 'left' } as const

type End = Readonly<{ bead: number; edge: Direction }>

/**
 * Follows a route event by event with no knowledge of how it was made, and names every place where
 * it is not one continuous thread: a bead passed before it is strung or strung twice, a run longer
 * than to a neighbour, a turn back into the hole just left with nothing to hold it, a bridge hooked
 * that no thread lies on, work before a thread is added.
 */
export function replayRoute(events: readonly RouteEvent[], ground: ReplayGround): Replay {
  const { index } = ground
  const faults: string[] = []
  const passes = new Array<number>(index.count).fill(0)
  const picked = new Array<number>(index.count).fill(0)
  const threads = new Set<string>()
  let at: End | undefined
  let held = false
  const longest = Math.hypot(ground.diameterMm, ground.lengthMm) + 0.35 * ground.diameterMm + 0.2

  const through = (bead: number, direction: Direction, number: number) => {
    const entry: End = { bead, edge: OPPOSITE[direction] }
    if (at !== undefined) {
      if (at.bead === bead && at.edge === entry.edge && !held) {
        faults.push(`event ${number}: turns back in bead ${bead}`)
      }
      const run = distance(ground, at, entry)
      if (run > longest) faults.push(`event ${number}: runs ${run.toFixed(1)} mm to bead ${bead}`)
      if (at.bead !== bead && at.edge === entry.edge) threads.add(key(at.bead, bead, at.edge))
    }
    passes[bead] = (passes[bead] ?? 0) + 1
    at = { bead, edge: direction }
    held = false
  }

  events.forEach((event, number) => {
    switch (event.kind) {
      case 'pick-up':
        event.beads.forEach((bead, place) => {
          picked[bead] = (picked[bead] ?? 0) + 1
          through(bead, event.directions[place] ?? 'up', number)
        })
        break
      case 'pass':
        if (picked[event.bead] === 0) faults.push(`event ${number}: passes ${event.bead} unstrung`)
        through(event.bead, event.direction, number)
        break
      case 'hook': {
        const { a, b } = event.bridge
        if (!threads.has(key(a, b, event.edge))) {
          faults.push(`event ${number}: no bridge ${a}-${b} ${event.edge}`)
        }
        // A loop that holds a bridge is itself a thread beside the bead it comes from.
        if (at !== undefined) {
          for (const other of [a, b]) {
            if (isNeighbour(index, at.bead, other)) threads.add(key(at.bead, other, event.edge))
          }
        }
        held = true
        break
      }
      case 'turn':
        held = true
        break
      case 'tail':
        at = { bead: event.bead, edge: event.edge }
        held = false
        break
      case 'add-thread':
        at = undefined
        break
    }
  })
  return { faults, passes, picked }
}

function key(a: number, b: number, edge: Direction): string {
  return `${Math.min(a, b)}-${Math.max(a, b)} ${edge}`
}

/** Beads next to each other in a column of peyote, whose edge threads are held at turns. */
function isNeighbour(index: BeadIndex, a: number, b: number): boolean {
  const row = index.rowOf[a] ?? 0
  const at = index.atOf[a] ?? 0
  return findBead(index, row + 1, at) === b || findBead(index, row - 1, at) === b
}

function distance(ground: ReplayGround, from: End, to: End): number {
  const [a, b] = [place(ground, from), place(ground, to)]
  return Math.hypot(a.x - b.x, a.y - b.y)
}

function place({ xMm, yMm, lengthMm }: ReplayGround, { bead, edge }: End) {
  const half = lengthMm / 2
  const x = (xMm[bead] ?? 0) + (edge === 'left' ? -half : edge === 'right' ? half : 0)
  const y = (yMm[bead] ?? 0) + (edge === 'up' ? -half : edge === 'down' ? half : 0)
  return { x, y }
}
