import type { BeadRuns } from './bead-rows.ts'
import { bridgePlace } from './bridge-place.ts'
import {
  ADD_THREAD,
  CUT,
  DIRECTIONS,
  DOWN,
  FINDING,
  FINISH,
  HOOK,
  JOIN,
  KNOT,
  LOCK,
  PASS,
  PICK_UP,
  REINFORCE,
  RIGHT,
  ROW,
  STEP_UP,
  TAIL,
  TURN,
  WARP,
  WEAVE,
} from './event-codes.ts'
import type { EventList } from './event-list.ts'
import type { BenchStep } from './route.ts'
import { rowsBegun } from './rows-begun.ts'

/** Where a step begins and ends in a route. */
export type StepBounds = Pick<BenchStep, 'fromEvent' | 'toEvent'>

/** What the beads of the panel that a strand hangs from are called, and the panel: `row 5, bead 1`, `the panel`. */
export type JoinedWords = Readonly<{ placeOf: (bead: number) => string; panel: string }>

/** What the steps are told with: each bead's slot letter, and the runs bridges are counted in. */
export type StepWords = Readonly<{
  letterOf: (bead: number) => string
  /** Absent for strands, whose beads have no bridges. */
  runs: BeadRuns | undefined
  /** A row's number as the maker counts it, from the bead it begins with. */
  rowNumber: (bead: number) => number
  /** Work that grows down the chart is told as makers hold it, growing up. */
  growsUp: boolean
  /** Whether the thread is worked doubled: told where a length is begun. */
  isDoubled: boolean
  /** Only where a part hangs from another. */
  joined?: JoinedWords
  /** Leaves out rows, beads picked up and lengths cut, where they are told elsewhere. */
  isBrief?: boolean
}>

type Teller = {
  readonly events: EventList
  readonly words: StepWords
  row: number
  fromRight: boolean
  isTurned: boolean
}

/**
 * The steps for the bench, in plain words: one for each bead or pair picked up, one for each way
 * woven, one for each length begun and each end finished.
 */
export function benchSteps(events: EventList, words: StepWords): readonly BenchStep[] {
  const teller: Teller = { events, words, row: 0, fromRight: false, isTurned: false }
  return stepBounds(events).map(({ fromEvent, toEvent }) => {
    const text = tell(teller, fromEvent, toEvent)
    return { row: teller.row, text, fromEvent, toEvent }
  })
}

/** The first and the last event of each step, in order: as `benchSteps`, without a word. */
export function stepBounds(events: EventList): readonly StepBounds[] {
  const bounds: StepBounds[] = []
  let fromEvent = 0
  for (let index = 0; index < events.count; index += 1) {
    const isEnd = index + 1 === events.count || beginsStep(events, index + 1)
    if (!isEnd) continue
    bounds.push({ fromEvent, toEvent: index })
    fromEvent = index + 1
  }
  return bounds
}

/** The manner of an event: stitching, weaving or finishing an end. A step has one manner. */
function manner({ kind, code }: EventList, index: number): number {
  if (kind[index] !== PASS && kind[index] !== JOIN) return kind[index] === KNOT ? FINISH : 0
  const purpose = (code[index] ?? 0) >> 2
  return purpose === WEAVE || purpose === FINISH ? purpose : 0
}

function beginsStep(events: EventList, index: number): boolean {
  const kind = events.kind[index]
  const before = events.kind[index - 1]
  if (kind === ROW || kind === ADD_THREAD || kind === TAIL) return before !== TAIL
  if (before === ADD_THREAD) return true
  if (kind === PICK_UP) return before !== ROW && before !== FINDING && before !== TAIL
  if (kind === CUT || kind === KNOT) return false
  if (kind === HOOK) return false
  return manner(events, index) !== manner(events, index - 1) && before !== ROW && before !== TAIL
}

function tell(teller: Teller, from: number, to: number): string {
  const { events } = teller
  const phrases: string[] = []
  let index = from
  while (index <= to) {
    const kind = events.kind[index]
    const ends = kind === PASS || kind === JOIN ? samePurpose(events, index, to) : index
    const isLeftOut = teller.words.isBrief === true && TOLD_ELSEWHERE.has(kind)
    const phrase = phraseOf(teller, index, ends)
    if (!isLeftOut) phrases.push(phrase)
    index = ends + 1
  }
  const text = phrases.filter((phrase) => phrase !== '').join('; ')
  return text.charAt(0).toUpperCase() + text.slice(1)
}

/** What brief words leave out. */
const TOLD_ELSEWHERE: ReadonlySet<number | undefined> = new Set([ROW, PICK_UP, ADD_THREAD, WARP])

/** The last of the passes from `index` on that share its purpose, where they are told in one breath. */
function samePurpose(events: EventList, index: number, to: number): number {
  const code = events.code[index] ?? 0
  let end = index
  while (end < to && events.kind[end + 1] === events.kind[index]) {
    if ((events.code[end + 1] ?? 0) >> 2 !== code >> 2) break
    end += 1
  }
  return end
}

function phraseOf(teller: Teller, index: number, end: number): string {
  const { events, words } = teller
  const a = events.a[index] ?? 0
  const b = events.b[index] ?? 0
  const code = events.code[index] ?? 0
  switch (events.kind[index]) {
    case ROW:
      teller.row = a
      teller.fromRight = code === RIGHT
      teller.isTurned = words.growsUp && growsDown(events, index)
      return rowPhrase(teller, index)
    case PICK_UP:
      return `pick up ${letters(teller, a, b)}`
    case HOOK:
      return bridgePhrase(teller, a, b)
    case PASS:
    case JOIN:
      return passPhrase(teller, index, end)
    case TURN:
      return code === 0 ? `skip ${words.letterOf(a)}, the turn bead` : 'turn round the edge thread'
    case TAIL:
      return 'take up the start tail'
    case FINDING:
      return 'through the finding'
    case KNOT:
      return 'half hitch'
    case WARP:
      return `hang a warp of ${a} mm`
    case ADD_THREAD:
      return `thread the needle with ${a} mm${words.isDoubled ? ', doubled' : ''}`
    default:
      return 'cut the end'
  }
}

/** Names a row, or the two rows that are strung together at the start of peyote. */
function rowPhrase({ events, words, fromRight }: Teller, index: number): string {
  const side = fromRight ? 'right' : 'left'
  const [first, second] = rowsBegun(events, words.rowNumber, index)
  if (first === undefined) return `from the ${side}`
  if (second === undefined) return `row ${first} from the ${side}`
  return `rows ${first} and ${second} from the ${side}`
}

/** Whether the work grows down the chart from here: the next bridge lies below its beads, or the pair goes down first. */
function growsDown(events: EventList, from: number): boolean {
  for (let index = from + 1; index < events.count; index += 1) {
    if (events.kind[index] === HOOK) return events.code[index] === DOWN
  }
  const first = events.kind[from + 1] === PICK_UP ? events.a[from + 1] : undefined
  return first !== undefined && events.poolDirection[first] === DOWN
}

function letters({ events, words }: Teller, from: number, count: number): string {
  const runs: { letter: string; count: number }[] = []
  for (let at = from; at < from + count; at += 1) {
    const letter = words.letterOf(events.pool[at] ?? 0)
    const last = runs.at(-1)
    if (last?.letter === letter) last.count += 1
    else runs.push({ letter, count: 1 })
  }
  return runs.map((run) => (run.count === 1 ? run.letter : `${run.count}${run.letter}`)).join(', ')
}

function bridgePhrase({ words, fromRight }: Teller, a: number, b: number): string {
  if (words.runs === undefined) return 'under the thread'
  return `under bridge ${bridgePlace(words.runs, { a, b }, fromRight)} from the edge`
}

/** Passes told one by one, at most; longer ways are told by direction and number. */
const MAX_TOLD = 4

function passPhrase(teller: Teller, index: number, end: number): string {
  const { events } = teller
  const told =
    events.kind[index] === JOIN ? joinPhrase(teller, index, end) : wayPhrase(teller, index, end)
  switch ((events.code[index] ?? 0) >> 2) {
    case LOCK:
      return 'lock'
    case WEAVE:
      return `weave ${told}`
    case FINISH:
      return `weave the end ${told}`
    case REINFORCE:
      return `once more ${told}`
    case STEP_UP:
      return `step up ${told}`
    default:
      return told
  }
}

function wayPhrase(teller: Teller, from: number, to: number): string {
  if (to - from >= MAX_TOLD) return passesByWay(teller, from, to)
  return eachPass(teller, from, to, teller.words.letterOf).join(', ')
}

/** A way through the panel a strand hangs from: every bead by its place, or a long way by where it ends. */
function joinPhrase(teller: Teller, from: number, to: number): string {
  const { events, words } = teller
  if (words.joined === undefined) throw new Error('Broken assumption: what joins hangs from a part')
  const { panel, placeOf } = words.joined
  if (to - from < MAX_TOLD) {
    return `${eachPass(teller, from, to, placeOf).join(', then ')} of ${panel}`
  }
  const last = placeOf(events.a[to] ?? 0)
  return `${passesByWay(teller, from, to)} of ${panel}, the last of them ${last}`
}

function eachPass(
  teller: Teller,
  from: number,
  to: number,
  nameOf: (bead: number) => string,
): readonly string[] {
  const passes: string[] = []
  for (let index = from; index <= to; index += 1) {
    passes.push(`${directionAt(teller, index)} through ${nameOf(teller.events.a[index] ?? 0)}`)
  }
  return passes
}

function passesByWay(teller: Teller, from: number, to: number): string {
  const ways: { direction: string; count: number }[] = []
  for (let index = from; index <= to; index += 1) {
    const direction = directionAt(teller, index)
    const last = ways.at(-1)
    if (last?.direction === direction) last.count += 1
    else ways.push({ direction, count: 1 })
  }
  if (ways.length > MAX_TOLD) return `through ${to - from + 1} beads`
  return ways
    .map(
      ({ direction, count }) => `${direction} through ${count} ${count === 1 ? 'bead' : 'beads'}`,
    )
    .join(', ')
}

function directionAt({ events, isTurned }: Teller, index: number): string {
  const code = (events.code[index] ?? 0) & 3
  return DIRECTIONS[isTurned && code <= DOWN ? code ^ 1 : code] ?? 'up'
}
