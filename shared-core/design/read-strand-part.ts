import type { BeadForm } from '../beads/bead-form.ts'
import { benchSteps, type JoinedWords } from '../route/bench-steps.ts'
import { countPasses } from '../route/count-passes.ts'
import { type EventList, emptyRoute } from '../route/event-list.ts'
import type { ThreadLength } from '../route/length-ledger.ts'
import { fillWarnings, readFill } from '../route/read-fill.ts'
import type { RouteWarning } from '../route/route.ts'
import { threadSlack } from '../route/thread-slack.ts'
import { exactly, type Spread } from '../units/spread.ts'
import { addSpreads, scaleSpread } from '../units/spread-arithmetic.ts'
import type { Strand } from './design.ts'
import { emptyPart } from './empty-part.ts'
import { hangingPlace, joinedWords } from './joined-words.ts'
import { LOOP_ROUNDS, type ReadyStrand } from './lay-strands.ts'
import { lazyPart } from './lazy-part.ts'
import { threadAsUsed } from './learn-thread-use.ts'
import { paletteWarnings } from './palette-warnings.ts'
import { threadOf, threadSpread } from './part-thread.ts'
import { stitchingS } from './part-work.ts'
import { type Journey, looseJourney } from './read-journey.ts'
import type { ReadContext } from './read-options.ts'
import type { ReadPart } from './read-part.ts'
import type { PartReading, ThreadReading } from './reading.ts'
import { routeAsUsed } from './route-as-used.ts'
import { slotTotals } from './slot-totals.ts'
import type { StitchedPanel } from './stitch-panel.ts'
import { strandStepWords } from './strand-step-words.ts'

/**
 * Reads a strand that hangs from a panel, from the panel's journey: the copy read is the last, which
 * also holds the end of the thread where no other strand follows.
 */
export function readHangingStrand(
  context: ReadContext,
  stitched: StitchedPanel,
  journey: Journey,
  strand: ReadyStrand,
): ReadPart | undefined {
  const at = journey.strands.flatMap((laid, index) => (laid.ready === strand ? [index] : []))
  const last = at.at(-1)
  const laid = last === undefined ? undefined : journey.strands[last]
  if (last === undefined || laid === undefined) return undefined
  const copies = strand.strand.copies
  const panelCopies = stitched.panel.copies
  const joined = joinedWords(stitched, context.body)
  const allMm = at.reduce((sum, index) => sum + (journey.inPieceMm[index + 1] ?? 0), 0)
  const laidStrand = {
    events: laid.events,
    measure: journey.measures[last] ?? { throughMm: 0, runMm: 0, bendMm: 0 },
    inPieceMm: journey.inPieceMm[last + 1] ?? 0,
    lengths: journey.lengths.filter(({ stretch }) => at.includes(stretch - 1)),
    warnings: [],
    joined,
    place: hangingPlace(strand.strand, stitched, joined),
  }
  const thread = strandThread(context, strand, laidStrand)
  const reading = readStrandPart(context, strand, laidStrand, thread)
  const share = allMm / Math.max(1, copies) / Math.max(1, thread.inPieceMm.value)
  return {
    ...strandTotals(context, strand, reading),
    copies: copies * panelCopies,
    work: { kind: 'strand', beads: reading.beads, rows: 0, copies: copies * panelCopies },
    cutCopies: panelCopies,
    allThread: { ...thread, inPieceMm: scaleSpread(thread.inPieceMm, share) },
    // Counted with the panel it hangs from.
    hangingWidthMm: exactly(0),
    hangingHeightMm: exactly(0),
  }
}

/** Reads a strand that hangs from nothing, or whose anchor is not there. */
export function readLooseStrand(
  context: ReadContext,
  ready: ReadyStrand,
  isLost: boolean,
): ReadPart {
  const journey = looseJourney(ready, context, LOOP_ROUNDS)
  const laid = journey.strands[0]
  const laidStrand = {
    events: laid?.events,
    measure: journey.measures[0] ?? { throughMm: 0, runMm: 0, bendMm: 0 },
    inPieceMm: journey.inPieceMm[0] ?? 0,
    lengths: journey.lengths,
    warnings: isLost ? [anchorMissing(ready.strand)] : [],
    joined: undefined,
    place: '',
  }
  const thread = strandThread(context, ready, laidStrand)
  const reading = readStrandPart(context, ready, laidStrand, thread)
  const { copies } = ready.strand
  return {
    ...strandTotals(context, ready, reading),
    copies,
    work: { kind: 'strand', beads: reading.beads, rows: 0, copies },
    cutCopies: copies,
    allThread: thread,
    hangingWidthMm: reading.widthMm,
    hangingHeightMm: reading.heightMm,
  }
}

type StrandThread = Readonly<{
  events: EventList | undefined
  measure: Journey['measures'][number]
  inPieceMm: number
  lengths: readonly ThreadLength[]
  warnings: readonly RouteWarning[]
  joined: JoinedWords | undefined
  /** Where it hangs, in words; empty where it hangs from nothing. */
  place: string
}>

/** Thread of one copy, as the route reckons it. */
function strandThread(
  { thread, strands }: ReadContext,
  { forms: [form] }: ReadyStrand,
  { measure, inPieceMm: mm, lengths }: StrandThread,
): ThreadReading {
  const slack = threadSlack('strand', thread.construction, strands)
  const inPieceMm =
    form === undefined ? exactly(0) : threadSpread(mm, measure, { form, thread, slack })
  return threadOf(lengths, inPieceMm)
}

/** Reads one copy of a strand. */
function readStrandPart(
  context: ReadContext,
  { strand, slots, forms }: ReadyStrand,
  { events, warnings, joined, place }: StrandThread,
  thread: ThreadReading,
): PartReading {
  const route = routeAsUsed(events ?? emptyRoute, context.threadUse)
  const { warnings: fillWarned, ...filled } = strandFill(context, slots, forms, route)
  const known = {
    partId: strand.id,
    beads: slots.length,
    widthMm: widestBead(forms),
    heightMm: addSpreads(forms.map(({ lengthMm }) => lengthMm)),
    route,
    thread: threadAsUsed(thread, context.threadUse),
    ...filled,
    warnings: [
      ...emptyPart(strand, slots.length),
      ...warnings,
      ...paletteWarnings(context, slots),
      ...fillWarned,
    ],
    labourS: stitchingS({ kind: 'strand', beads: slots.length, rows: 0 }, context.pace),
  }
  return lazyPart(known, {
    steps: () => benchSteps(route, strandStepWords(slots, context.strands, joined)),
    words: () => [`${strand.name}${place && `, from ${place}`}: ${strand.beads}`],
    rowStarts: () => [],
  })
}

function strandFill(
  context: ReadContext,
  slots: Uint16Array,
  forms: readonly BeadForm[],
  events: EventList,
) {
  const passes = countPasses(events, slots.length)
  const task = {
    passes,
    events,
    formOf: (bead: number) => forms[bead] ?? context.options.forms[0] ?? neverForm(),
    thread: context.thread,
    strands: context.strands,
    needle: context.needle,
    tables: context.options,
  }
  const filled = readFill(task)
  return { passes, ...filled, warnings: fillWarnings(task, filled) }
}

function neverForm(): never {
  throw new Error('Broken assumption: a strand with beads has forms')
}

function widestBead(forms: readonly BeadForm[]): Spread {
  return forms.reduce(
    (widest, { diameterMm }) => (diameterMm.value > widest.value ? diameterMm : widest),
    exactly(0),
  )
}

function strandTotals(context: ReadContext, { slots, forms }: ReadyStrand, reading: PartReading) {
  const counts = new Uint32Array(slots.reduce((most, slot) => Math.max(most, slot + 1), 0))
  slots.forEach((slot) => {
    counts[slot] = (counts[slot] ?? 0) + 1
  })
  const fallback = forms[0] ?? context.options.forms[0] ?? neverForm()
  return { reading, slots: slotTotals(counts, (slot) => context.formOfSlot(slot, fallback)) }
}

function anchorMissing({ anchor, name }: Strand): RouteWarning {
  return {
    code: 'anchor-missing',
    severity: 'warning',
    message: `"${name}" hangs from row ${(anchor?.row ?? 0) + 1}, bead ${(anchor?.bead ?? 0) + 1}, where no stitched bead is.`,
    next: 'Choose a bead of the panel for it to hang from.',
    beads: [],
  }
}
