import { JOINT_TAIL_MM, STUB_MM, type TailPlan } from './cut-lengths.ts'
import { ADD_THREAD, CUT, FINISH, JOIN, KNOT, PASS, TAIL, WARP } from './event-codes.ts'
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
 * Where the adding up stands: the length in hand, what of its present end has been woven in, whether
 * that end is the head of a joined length, and whether the needle is on the start tail.
 */
type Ledger = {
  readonly lengths: Length[]
  readonly warps: ThreadLength[]
  readonly tails: TailPlan
  readonly strands: number
  readonly total: number
  current: number
  endMm: number
  isHead: boolean
  isOnTail: boolean
}

/**
 * Adds up every length of thread along a journey through parts, and fills in the amounts of its
 * `add-thread` events (to cut, and what of it stays in the work) and `cut` events.
 *
 * A length is its work plus an allowance at both ends: the tail asked for, or what weaving the end in
 * takes and the stub no needle can use, if that is more. A thread worked doubled is cut twice as
 * long; warps are single lengths of their own.
 *
 * @param journey - Laid in mm along the needle's way, whatever the strands.
 * @param strands - Strands of thread in each pass.
 */
export function addUpLengths(
  journey: readonly Stretch[],
  tails: TailPlan,
  strands: 1 | 2 = 1,
): readonly ThreadLength[] {
  const total = journey.reduce((sum, { events }) => sum + countLengths(events), 0)
  const ledger: Ledger = {
    strands,
    lengths: [],
    warps: [],
    tails,
    total,
    current: -1,
    endMm: 0,
    isHead: false,
    isOnTail: false,
  }
  journey.forEach((stretch, at) => {
    addStretch(ledger, stretch, at)
  })
  return [...ledger.lengths.map((length) => settle(journey, length, strands)), ...ledger.warps]
}

function countLengths({ kind, count }: EventList): number {
  let lengths = 0
  for (let index = 0; index < count; index += 1) if (kind[index] === ADD_THREAD) lengths += 1
  return lengths
}

function addStretch(ledger: Ledger, { events, upToMm }: Stretch, stretch: number): void {
  let before = 0
  // The start tail was taken up at the end of the part before: work goes on with the last length.
  ledger.current = ledger.lengths.length - 1
  ledger.isOnTail = false
  ledger.endMm = 0
  for (let index = 0; index < events.count; index += 1) {
    const laidMm = (upToMm[index] ?? 0) - before
    before = upToMm[index] ?? 0
    const kind = events.kind[index]
    if (kind === ADD_THREAD) beginLength(ledger, stretch, index)
    else if (kind === WARP) addWarp(ledger, events, stretch, index)
    else if (kind === TAIL) moveToTail(ledger)
    else if (kind === CUT) endLength(ledger, events, index)
    else if (isFinishing(events, index)) weaveIn(ledger, laidMm)
    else goOn(ledger, laidMm)
  }
}

function beginLength(ledger: Ledger, stretch: number, event: number): void {
  ledger.isHead = ledger.lengths.length > 0
  ledger.current = ledger.lengths.length
  ledger.lengths.push({ stretch, event, workMm: 0, finishMm: 0, endsMm: 0 })
  ledger.endMm = 0
}

function addWarp({ warps }: Ledger, { a, b }: EventList, stretch: number, index: number): void {
  warps.push({ stretch, inPieceMm: b[index] ?? 0, cutMm: a[index] ?? 0 })
}

function moveToTail(ledger: Ledger): void {
  ledger.current = 0
  ledger.isOnTail = true
  ledger.endMm = 0
}

function weaveIn(ledger: Ledger, laidMm: number): void {
  const length = ledger.lengths[ledger.current]
  if (length === undefined) return
  length.finishMm += laidMm
  ledger.endMm += laidMm
}

function goOn(ledger: Ledger, laidMm: number): void {
  const length = ledger.lengths[ledger.current]
  if (length === undefined) return
  length.workMm += laidMm
  if (!ledger.isHead) return
  // What was woven in before the work goes on is the head of a joined length.
  length.endsMm += Math.max(JOINT_TAIL_MM, ledger.endMm + STUB_MM)
  ledger.isHead = false
  ledger.endMm = 0
}

function endLength(ledger: Ledger, events: EventList, index: number): void {
  const length = ledger.lengths[ledger.current]
  if (length === undefined) return
  const { tails, strands, isOnTail, endMm } = ledger
  const isLast = ledger.lengths.length === ledger.total
  const asked = isOnTail ? tails.startMm : isLast ? tails.endMm : tails.jointMm
  const allowedMm = Math.max(asked, endMm + STUB_MM)
  length.endsMm += allowedMm
  events.a[index] = Math.round(strands * (allowedMm - endMm))
  ledger.endMm = 0
}

function isFinishing({ kind, code }: EventList, index: number): boolean {
  if (kind[index] === KNOT) return true
  const isPass = kind[index] === PASS || kind[index] === JOIN
  return isPass && (code[index] ?? 0) >> 2 === FINISH
}

function settle(journey: readonly Stretch[], length: Length, strands: number): ThreadLength {
  const neededMm = strands * (length.workMm + length.endsMm)
  const cutMm = Math.ceil(neededMm / CUT_STEP_MM - 1e-6) * CUT_STEP_MM
  const events = journey[length.stretch]?.events
  const inPieceMm = strands * (length.workMm + length.finishMm)
  if (events !== undefined) {
    events.a[length.event] = cutMm
    events.b[length.event] = Math.round(inPieceMm)
  }
  return { stretch: length.stretch, inPieceMm, cutMm }
}
