import { DOWN, LEFT, RIGHT, STEP_UP, UP } from '../../route/event-codes.ts'
import { beginRow, finishEvents } from '../../route/event-writer.ts'
import type { Hops } from '../../route/find-weave.ts'
import type { PartGeometry } from '../../route/part-geometry.ts'
import type { RouteWarning } from '../../route/route.ts'
import {
  beginPlainWork,
  type PlainWork,
  passOn,
  pick,
  weaveOn,
  workedBeside,
} from '../plain/plain-work.ts'
import type { RouteDraft, Stitch, StitchTask } from '../stitch.ts'
import { CLOCKWISE, findUnits, placeIn, unitBeyond, type WeaveUnits } from './weave-units.ts'

/** Right-angle weave: rings of four beads that share their sides; the thread never runs straight on. */
export const rightAngleWeave: Stitch = { kind: 'right-angle-weave', layRoute: layWeave }

/**
 * Lays the thread ring by ring, row of rings by row, to and fro.
 *
 * The first ring takes four beads, each next one the beads it does not share. A ring is entered from
 * a shared bead, gone round once, closed through that bead, and left by the bead it shares with the
 * next; so neighbouring rings are gone round in opposite ways.
 */
function layWeave(task: StitchTask): RouteDraft {
  const { index, geometry, settings } = task
  const work = beginPlainWork(task, 3)
  const hops = cornerHops(work, geometry, settings.startSide)
  task.checkpoint?.()
  const units = findUnits(index, task.checkpoint)
  task.checkpoint?.()
  const done = new Uint8Array(units.count)
  const order = unitOrder(units, settings.startSide === 'right', (settings.startRow ?? 0) > 0)
  let waiting = order
  for (let sweep = 0; sweep < MAX_SWEEPS && waiting.length > 0; sweep += 1) {
    const left = layUnits(work, units, waiting, { done, hops })
    if (left.length === waiting.length) break
    waiting = left
  }
  return { events: finishEvents(work.writer), warnings: leftOver(work), hops }
}

/** Times the rings that could not be reached are tried again: a row of a concave shape may have to wait for a later one. */
const MAX_SWEEPS = 64

/** Lays every ring that can be reached, in order; gives back those that cannot yet. */
function layUnits(
  work: PlainWork,
  units: WeaveUnits,
  order: readonly number[],
  entering: Entering,
): readonly number[] {
  const left: number[] = []
  let row = -1
  order.forEach((unit, at) => {
    const isFirst = work.writer.bead < 0
    if (!isFirst && !enter(work, units, unit, entering)) {
      left.push(unit)
      return
    }
    if ((units.row[unit] ?? 0) !== row) {
      row = units.row[unit] ?? 0
      beginRow(work.writer, 2 * row + 1, isFromLeft(order, units, at) ? LEFT : RIGHT)
    }
    if (isFirst) layFirst(work, units, unit)
    else goRound(work, units, unit)
    entering.done[unit] = 1
  })
  return left
}

/** Whether a row's rings are worked from the left. */
function isFromLeft(order: readonly number[], units: WeaveUnits, at: number): boolean {
  const unit = order[at] ?? 0
  const next = order[at + 1]
  if (next === undefined || units.row[next] !== units.row[unit]) return true
  return (units.column[next] ?? 0) > (units.column[unit] ?? 0)
}

/** Rings row by row, to and fro, kept to what hangs together with the first. */
function unitOrder(units: WeaveUnits, fromRight: boolean, fromLast: boolean): readonly number[] {
  const rows = new Map<number, number[]>()
  for (let unit = 0; unit < units.count; unit += 1) {
    const row = units.row[unit] ?? 0
    const known = rows.get(row)
    if (known === undefined) rows.set(row, [unit])
    else known.push(unit)
  }
  const lines = [...rows.entries()].sort(([a], [b]) => (fromLast ? b - a : a - b))
  return lines.flatMap(([, line], at) => ((at % 2 === 1) === fromRight ? line : line.reverse()))
}

/** The first ring: four beads strung and ringed by passing the first again. */
function layFirst(work: PlainWork, units: WeaveUnits, unit: number): void {
  for (let place = 0; place < 4; place += 1) {
    pick(work, units.ring[4 * unit + place] ?? 0, CLOCKWISE[place] ?? UP, place > 0)
  }
  passOn(work, units.ring[4 * unit] ?? 0, RIGHT)
}

type Entering = Readonly<{ done: Uint8Array; hops: Hops }>

/** Brings the thread out of a bead the unit shares with finished work; on along the last ring where that leads there. */
function enter(
  work: PlainWork,
  units: WeaveUnits,
  unit: number,
  { done, hops }: Entering,
): boolean {
  const isShared = (bead: number) => {
    const beyond = unitBeyond(units, bead, unit)
    return placeIn(units, unit, bead) >= 0 && beyond >= 0 && done[beyond] === 1
  }
  if (isShared(work.writer.bead)) return true
  const last = lastUnit(units, work.writer.bead, done)
  if (last >= 0 && stepOn(work, units, last, isShared)) return true
  return weaveOn(work, hops, (bead) => isShared(bead))
}

function lastUnit({ unitsOf }: WeaveUnits, bead: number, done: Uint8Array): number {
  const [one = -1, other = -1] = [unitsOf[2 * bead], unitsOf[2 * bead + 1]]
  if (other >= 0 && done[other] === 1) return other
  return one >= 0 && done[one] === 1 ? one : -1
}

/** Goes on round a finished ring to its nearest bead that `isShared`; false when it has none. */
function stepOn(
  work: PlainWork,
  units: WeaveUnits,
  unit: number,
  isShared: (bead: number) => boolean,
): boolean {
  const from = placeIn(units, unit, work.writer.bead)
  const turn = isClockwise(work, from) ? 1 : 3
  for (let steps = 1; steps < 4; steps += 1) {
    const place = (from + turn * steps) % 4
    if (!isShared(units.ring[4 * unit + place] ?? -1)) continue
    for (let step = 1; step <= steps; step += 1)
      passPlace(work, units, unit, from + turn * step, turn)
    return true
  }
  return false
}

function isClockwise({ writer }: PlainWork, place: number): boolean {
  return CLOCKWISE[place] === writer.edge
}

function passPlace(
  work: PlainWork,
  units: WeaveUnits,
  unit: number,
  at: number,
  turn: number,
): void {
  const place = at % 4
  const clockwise = CLOCKWISE[place] ?? UP
  passOn(work, units.ring[4 * unit + place] ?? 0, turn === 1 ? clockwise : clockwise ^ 1, STEP_UP)
}

/** Goes round a ring from the shared bead the thread leaves: strings what is missing, passes what is there, closes. */
function goRound(work: PlainWork, units: WeaveUnits, unit: number): void {
  const entry = work.writer.bead
  const from = placeIn(units, unit, entry)
  const turn = isClockwise(work, from) ? 1 : 3
  let isStringing = false
  for (let step = 1; step <= 4; step += 1) {
    const place = (from + turn * step) % 4
    const bead = units.ring[4 * unit + place] ?? 0
    const clockwise = CLOCKWISE[place] ?? UP
    const direction = turn === 1 ? clockwise : clockwise ^ 1
    if (work.worked[bead] === 1) {
      passOn(work, bead, direction)
      isStringing = false
    } else {
      pick(work, bead, direction, isStringing)
      isStringing = true
    }
  }
}

/** Where a thread can travel: at each corner on into the two beads that stand square to the one it leaves. */
function cornerHops(
  work: PlainWork,
  { lengthMm, diameterMm }: PartGeometry,
  startSide: 'left' | 'right' = 'left',
): Hops {
  const costMm = (lengthMm[0] ?? 0) + (diameterMm[0] ?? 0) * Math.SQRT1_2
  const sides = startSide === 'left' ? [-1, 1] : [1, -1]
  return (bead, edge, visit) => {
    if (edge === UP || edge === DOWN) {
      for (const side of sides) {
        const next = workedBeside(work, bead, edge === UP ? -1 : 1, side)
        if (next >= 0) visit(next, side < 0 ? LEFT : RIGHT, costMm)
      }
      return
    }
    const halves = edge === LEFT ? -1 : 1
    const up = workedBeside(work, bead, -1, halves)
    const down = workedBeside(work, bead, 1, halves)
    if (up >= 0) visit(up, UP, costMm)
    if (down >= 0) visit(down, DOWN, costMm)
  }
}

/** Beads that belong to no whole ring, or whose ring hangs together with none of the rest. */
function leftOver({ index, worked }: PlainWork): readonly RouteWarning[] {
  const beads: number[] = []
  let count = 0
  for (let bead = 0; bead < index.count; bead += 1) {
    if (worked[bead] === 1) continue
    count += 1
    if (beads.length < 500) beads.push(bead)
  }
  if (count === 0) return []
  return [
    {
      code: 'no-ring',
      severity: 'impossible',
      message: `${count} beads belong to no ring of four that hangs together with the rest.`,
      next: 'Complete each ring: a bead on every side of it.',
      beads,
    },
  ]
}
