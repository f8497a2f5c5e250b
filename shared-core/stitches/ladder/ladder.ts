import { DOWN, LEFT, REINFORCE, RIGHT, UP } from '../../route/event-codes.ts'
import { beginRow, finishEvents } from '../../route/event-writer.ts'
import { columnHops } from '../plain/column-hops.ts'
import { beginPlainWork, type PlainWork, passOn, pick } from '../plain/plain-work.ts'
import type { RouteDraft, Stitch, StitchTask } from '../stitch.ts'
import { ladderColumns } from './ladder-columns.ts'

/** Ladder: beads, or stacks of beads, upright side by side. */
export const ladder: Stitch = { kind: 'ladder', layRoute: layLadder }

/**
 * Lays a ladder: each new stack is strung, the stack before passed again from the side away from the
 * thread, then the new one again. Reinforced, the thread then runs back through all stacks in zigzag.
 */
function layLadder(task: StitchTask): RouteDraft {
  const { index, geometry, settings } = task
  const work = beginPlainWork(task, 3)
  const { columns, warnings } = ladderColumns(index, settings.startSide)
  const fromRight = settings.startSide === 'right'
  const stacks = fromRight ? [...columns].reverse() : columns
  beginRow(work.writer, 0, fromRight ? RIGHT : LEFT)
  stacks.forEach((stack, at) => {
    const direction = directionOf(at)
    pickStack(work, stack, direction, at === 1)
    const before = stacks[at - 1]
    if (before === undefined) return
    passStack(work, before, direction ^ 1)
    passStack(work, stack, direction)
  })
  if (settings.reinforce) {
    for (let at = stacks.length - 2; at >= 0; at -= 1) {
      passStack(work, stacks[at] ?? [], directionOf(at), REINFORCE)
    }
  }
  return {
    events: finishEvents(work.writer),
    warnings,
    hops: columnHops(work, geometry, settings.startSide),
  }
}

/** The way a stack is passed, out and back in zigzag alike. */
function directionOf(at: number): number {
  return at % 2 === 0 ? DOWN : UP
}

/** A stack's beads from the top, in the order the thread meets them. */
function inOrder(stack: readonly number[], direction: number): readonly number[] {
  return direction === DOWN ? stack : [...stack].reverse()
}

function pickStack(
  work: PlainWork,
  stack: readonly number[],
  direction: number,
  also: boolean,
): void {
  inOrder(stack, direction).forEach((bead, at) => {
    pick(work, bead, direction, also || at > 0)
  })
}

function passStack(
  work: PlainWork,
  stack: readonly number[],
  direction: number,
  purpose?: number,
): void {
  for (const bead of inOrder(stack, direction)) passOn(work, bead, direction, purpose)
}
