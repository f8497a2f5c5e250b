import type { RouteSettings } from '../design/design.ts'
import { PICK_UP, ROW } from './event-codes.ts'
import type { EventList } from './event-list.ts'

/** Tail left at the start and at the end, mm. @source Trade practice: 15 cm each. */
export const TAIL_MM = 150

/** Tail of each of the two ends where a new length is joined, mm. @source Trade practice: 12 cm an end. */
export const JOINT_TAIL_MM = 120

/** The end no needle can work with, cut off after an end is woven in, mm. Chosen by us: about a needle's length. */
export const STUB_MM = 50

/** A comfortable working length, mm. @source Trade practice: an arm span, 1.5 to 1.75 m. */
export const WORKING_LENGTH_MM = 1600

/** A row's start is preferred for a new length when it costs no more than this share of the length. */
const ROW_START_SHARE = 0.15

/** The tails and the longest length a piece is worked with, mm. */
export type TailPlan = Readonly<{
  startMm: number
  endMm: number
  jointMm: number
  longestMm: number
}>

/** Tails and working length as the maker set them, else as the trade does. */
export function tailPlan(settings: RouteSettings): TailPlan {
  return {
    startMm: settings.startTailMm ?? TAIL_MM,
    endMm: settings.endTailMm ?? TAIL_MM,
    jointMm: JOINT_TAIL_MM,
    longestMm: settings.workingLengthMm ?? WORKING_LENGTH_MM,
  }
}

/**
 * Where new lengths begin: events before which the thread is changed, in order.
 *
 * As few lengths as the longest allows, of about equal size; each change falls between two beads, at
 * the start of a row where one is near. A stretch that cannot be interrupted (a long first string)
 * may make a length longer than wished.
 *
 * @param upToMm - mm laid by the end of each event, see `measureThread`.
 * @param afterMm - Thread still needed after the last event (strands that hang from the part).
 */
export function planChanges(
  events: EventList,
  upToMm: Float64Array,
  tails: TailPlan,
  afterMm: number,
): readonly number[] {
  const workMm = upToMm[events.count - 1] ?? 0
  const changes: number[] = []
  let fromMm = 0
  let fromEvent = 0
  let headMm = tails.startMm
  for (;;) {
    const restMm = workMm + afterMm - fromMm
    if (headMm + restMm + tails.endMm <= tails.longestMm) return changes
    // What hangs from the part can take a new length of its own.
    const isLastOfPart = headMm + workMm - fromMm + tails.jointMm <= tails.longestMm
    if (afterMm > 0 && isLastOfPart) return changes
    const lengths = countLengths(restMm, headMm, tails)
    const evenMm = (restMm + headMm + tails.endMm + 2 * tails.jointMm * (lengths - 1)) / lengths
    const targetMm = fromMm + Math.max(1, evenMm - headMm - tails.jointMm)
    const change = changeNear(events, upToMm, fromEvent, targetMm, evenMm * ROW_START_SHARE)
    if (change < 0) return changes
    changes.push(change)
    fromEvent = change
    fromMm = upToMm[change - 1] ?? 0
    headMm = tails.jointMm
  }
}

function countLengths(restMm: number, headMm: number, tails: TailPlan): number {
  const perLength = Math.max(50, tails.longestMm - 2 * tails.jointMm)
  const inEnds = 2 * tails.longestMm - headMm - tails.endMm - 2 * tails.jointMm
  return 2 + Math.max(0, Math.ceil((restMm - inEnds) / perLength))
}

/** The last event after `from` that begins a bead with the thread laid so far within the target; a row's start if near. */
function changeNear(
  events: EventList,
  upToMm: Float64Array,
  from: number,
  targetMm: number,
  rowShareMm: number,
): number {
  let bead = -1
  let row = -1
  for (let index = from + 1; index < events.count; index += 1) {
    const kind = events.kind[index]
    const laidMm = upToMm[index - 1] ?? 0
    if (laidMm > targetMm && bead >= 0) break
    if (kind === ROW) row = index
    if (kind === ROW || (kind === PICK_UP && events.kind[index - 1] !== ROW)) bead = index
  }
  const isRowNear = row >= 0 && targetMm - (upToMm[row - 1] ?? 0) <= rowShareMm
  return isRowNear ? row : bead
}
