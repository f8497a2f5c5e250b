import type { BeadRuns } from './bead-rows.ts'
import {
  ADD_THREAD,
  CUT,
  DIRECTIONS,
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

/** What the steps are told with: each bead's slot letter, and the runs bridges are counted in. */
export type StepWords = Readonly<{
  letterOf: (bead: number) => string
  /** Absent for strands, whose beads have no bridges. */
  runs: BeadRuns | undefined
}>

type Teller = {
  readonly events: EventList
  readonly words: StepWords
  row: number
  fromRight: boolean
}

/**
 * The steps for the bench, in plain words: one for each bead or pair picked up, one for each way
 * woven, one for each length begun and each end finished.
 */
export function benchSteps(events: EventList, words: StepWords): readonly BenchStep[] {
  const teller: Teller = { events, words, row: 0, fromRight: false }
  const steps: BenchStep[] = []
  let from = 0
  for (let index = 0; index < events.count; index += 1) {
    const isEnd = index + 1 === events.count || beginsStep(events, index + 1)
    if (!isEnd) continue
    const text = tell(teller, from, index)
    steps.push({ row: teller.row, text, fromEvent: from, toEvent: index })
    from = index + 1
  }
  return steps
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
    phrases.push(phraseOf(teller, index, ends))
    index = ends + 1
  }
  const text = phrases.filter((phrase) => phrase !== '').join('; ')
  return text.charAt(0).toUpperCase() + text.slice(1)
}

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
      return `row ${a + 1} from the ${code === RIGHT ? 'right' : 'left'}`
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
      return `thread the needle with ${a} mm`
    default:
      return 'cut the end'
  }
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

/** Names a bridge by its place in its run, counted from the edge the row is worked from. */
function bridgePhrase({ words, fromRight }: Teller, a: number, b: number): string {
  if (words.runs === undefined) return 'under the thread'
  const place = fromRight ? (words.runs.last[b] ?? b) - b : a - (words.runs.first[a] ?? a)
  return `under bridge ${place + 1} from the edge`
}

function passPhrase(teller: Teller, index: number, end: number): string {
  const { events, words } = teller
  const code = events.code[index] ?? 0
  const purpose = code >> 2
  const count = end - index + 1
  const way = Array.from({ length: Math.min(count, 12) }, (_, at) => {
    const direction = DIRECTIONS[(events.code[index + at] ?? 0) & 3] ?? 'up'
    const isOther = events.kind[index] === JOIN
    return `${direction} through ${isOther ? 'the panel' : words.letterOf(events.a[index + at] ?? 0)}`
  }).join(', ')
  const more = count > 12 ? ` and ${count - 12} more` : ''
  if (purpose === LOCK) return 'lock'
  if (purpose === WEAVE) return `weave ${way}${more}`
  if (purpose === FINISH) return `weave the end ${way}${more}`
  if (purpose === REINFORCE) return `once more ${way}${more}`
  if (purpose === STEP_UP) return `step up ${way}${more}`
  return way + more
}
