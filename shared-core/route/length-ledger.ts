import { JOINT_TAIL_MM, STUB_MM, type TailPlan } from './cut-lengths.ts'
import { ADD_THREAD, CUT, FINISH, JOIN, KNOT, PASS, TAIL } from './event-codes.ts'
import type { EventList } from './event-list.ts'

/** Lengths are cut to the next whole step, mm. */
const CUT_STEP_MM = 10

/** One stretch of the journey: a part's events with the mm laid by the end of each, slack included. */
export type Stretch = Readonly<{ events: EventList; upToMm: Float64Array }>

/**
 * One length of thread: what stays in the work, and what must be cut off the spool for it.
 * `stretch` is the one it begins in.
 */
export type ThreadLength = Readonly<{ stretch: number; inPieceMm: number; cutMm: number }>

type Length = { stretch: number; event: number; workMm: number; finishMm: number; endsMm: number }

/**
 * Adds up every length of thread along a journey through parts, and fills in the amounts of its
 * `add-thread` and `cut` events.
 *
 * A length is its work plus an allowance at both ends: the tail asked for, or what weaving the end in
 * takes and the stub no needle can use, if that is more.
 */
export function addUpLengths(
  journey: readonly Stretch[],
  tails: TailPlan,
): readonly ThreadLength[] {
  const lengths: Length[] = []
  let current = -1
  let endMm = 0
  let isTail = false
  journey.forEach(({ events, upToMm }, stretch) => {
    let before = 0
    for (let index = 0; index < events.count; index += 1) {
      const laid = (upToMm[index] ?? 0) - before
      before = upToMm[index] ?? 0
      const kind = events.kind[index]
      if (kind === ADD_THREAD) {
        current = lengths.length
        lengths.push({ stretch, event: index, workMm: 0, finishMm: 0, endsMm: 0 })
        endMm = 0
      }
      if (kind === TAIL) {
        current = 0
        isTail = true
        endMm = 0
      }
      const length = lengths[current]
      if (length === undefined) continue
      if (kind === CUT) {
        const isLast = !hasMoreLengths(journey, stretch, index)
        const asked = isTail ? tails.startMm : isLast ? tails.endMm : JOINT_TAIL_MM
        closeEnd(length, events, index, { asked, usedMm: endMm })
        endMm = 0
      } else if (isFinishing(events, index)) {
        length.finishMm += laid
        endMm += laid
      } else {
        // What was woven in before the work goes on was the beginning of a joined length.
        if (endMm > 0) length.endsMm += Math.max(JOINT_TAIL_MM, endMm + STUB_MM)
        endMm = 0
        length.workMm += laid
      }
    }
  })
  return lengths.map((length) => settle(journey, length))
}

function isFinishing({ kind, code }: EventList, index: number): boolean {
  if (kind[index] === KNOT) return true
  return (kind[index] === PASS || kind[index] === JOIN) && (code[index] ?? 0) >> 2 === FINISH
}

function closeEnd(
  length: Length,
  events: EventList,
  index: number,
  { asked, usedMm }: Readonly<{ asked: number; usedMm: number }>,
): void {
  const allowed = Math.max(asked, usedMm + STUB_MM)
  length.endsMm += allowed
  events.a[index] = Math.round(allowed - usedMm)
}

function hasMoreLengths(journey: readonly Stretch[], stretch: number, from: number): boolean {
  for (let at = stretch; at < journey.length; at += 1) {
    const events = journey[at]?.events
    if (events === undefined) continue
    for (let index = at === stretch ? from : 0; index < events.count; index += 1) {
      if (events.kind[index] === ADD_THREAD) return true
    }
  }
  return false
}

function settle(journey: readonly Stretch[], length: Length): ThreadLength {
  const cutMm = Math.ceil((length.workMm + length.endsMm) / CUT_STEP_MM - 1e-6) * CUT_STEP_MM
  const events = journey[length.stretch]?.events
  if (events !== undefined) events.a[length.event] = cutMm
  return { stretch: length.stretch, inPieceMm: length.workMm + length.finishMm, cutMm }
}
