import type { BeadForm } from '../beads/bead-form.ts'
import { slotLabel } from '../chart/chart.ts'
import { countSlots } from '../chart/count-slots.ts'
import { isOddColumn } from '../chart/stitch-pitch.ts'
import { beadRuns } from '../route/bead-rows.ts'
import { benchSteps } from '../route/bench-steps.ts'
import { countPasses } from '../route/count-passes.ts'
import { ROW } from '../route/event-codes.ts'
import type { EventList } from '../route/event-list.ts'
import { fillWarnings, readFill } from '../route/read-fill.ts'
import type { RouteWarning } from '../route/route.ts'
import { threadSlack } from '../route/thread-slack.ts'
import { exactly, type Spread } from '../units/spread.ts'
import { addSpreads, scaleSpread, wholeSpread } from '../units/spread-arithmetic.ts'
import { writeWordChart } from '../words/write-word-chart.ts'
import type { Strand } from './design.ts'
import { lazyPart } from './lazy-part.ts'
import { panelSize } from './panel-size.ts'
import { spoolSpread, threadSpread } from './part-thread.ts'
import {
  type Journey,
  LOOP_ROUNDS,
  looseJourney,
  panelJourney,
  type ReadyStrand,
} from './read-journey.ts'
import type { ReadContext } from './read-options.ts'
import type { PartReading } from './reading.ts'
import type { ResolvedPanel, ResolvedStrand } from './resolve-design.ts'
import { type StitchedPanel, stitchPanel } from './stitch-panel.ts'

/** Beads of a slot in one copy of a part, with the form they take. */
export type SlotTotal = Readonly<{ count: number; form: BeadForm }>

/** One part's reading with what the whole unit needs of it. */
export type ReadPart = Readonly<{
  reading: PartReading
  /** Copies in one unit. */
  copies: number
  /** Times the lengths of `reading.thread.cutMm` are cut for one unit. */
  cutCopies: number
  /** Thread in the piece, mm, a copy on average. */
  allInPieceMm: Spread
  slots: ReadonlyMap<number, SlotTotal>
  /** The part as it hangs, with what hangs from it. */
  hangingWidthMm: Spread
  hangingHeightMm: Spread
}>

/** Reads every part: panels with the strands that hang from them, then strands that hang from nothing. */
export function readParts(
  context: ReadContext,
  panels: readonly ResolvedPanel[],
  strands: readonly ResolvedStrand[],
): readonly ReadPart[] {
  const read = new Map<string, ReadPart>()
  const byPanel = anchoredStrands(panels, strands)
  for (const { panel, chart, form } of panels) {
    const stitched = stitchPanel(panel, chart, form, context.thread.diameterMm.value)
    const { anchored, lost } = splitAnchors(stitched, byPanel.get(panel.id) ?? [])
    const ready = anchored.map((strand) => readyStrand(context, strand, form))
    const journey = panelJourney(stitched, ready, context)
    const panelPart = readPanelPart(context, stitched, journey, ready)
    read.set(panel.id, panelPart)
    readHangingStrands(context, stitched, journey, ready, read)
    for (const strand of lost) read.set(strand.strand.id, readLoose(context, strand, form, true))
  }
  for (const strand of strands) {
    if (read.has(strand.strand.id)) continue
    const fallback = panels[0]?.form ?? context.options.forms[0]
    if (fallback === undefined) continue
    const isLost = strand.strand.anchor !== undefined
    read.set(strand.strand.id, readLoose(context, strand, fallback, isLost))
  }
  return context.body.parts.flatMap(({ id }) => read.get(id) ?? [])
}

function anchoredStrands(
  panels: readonly ResolvedPanel[],
  strands: readonly ResolvedStrand[],
): ReadonlyMap<string, readonly ResolvedStrand[]> {
  const byPanel = new Map<string, ResolvedStrand[]>(panels.map(({ panel }) => [panel.id, []]))
  for (const strand of strands) byPanel.get(strand.strand.anchor?.panelId ?? '')?.push(strand)
  return byPanel
}

/** Parts the strands whose anchor is a stitched bead of the panel from those whose anchor is not there. */
function splitAnchors({ index, draft }: StitchedPanel, strands: readonly ResolvedStrand[]) {
  const picked = new Set(
    strands.length > 0 ? draft.events.pool.subarray(0, draft.events.poolCount) : [],
  )
  const hangs = ({ strand: { anchor } }: ResolvedStrand) => {
    if (anchor === undefined) return false
    const from = index.rowStart[anchor.row]
    const to = index.rowStart[anchor.row + 1]
    if (from === undefined || to === undefined || from + anchor.bead >= to) return false
    return picked.has(from + anchor.bead)
  }
  return {
    anchored: strands.filter(hangs),
    lost: strands.filter((strand) => !hangs(strand)),
  }
}

function readyStrand(
  context: ReadContext,
  { strand, slots }: ResolvedStrand,
  fallback: BeadForm,
): ReadyStrand {
  return { strand, slots, forms: Array.from(slots, (slot) => context.formOfSlot(slot, fallback)) }
}

function readPanelPart(
  context: ReadContext,
  stitched: StitchedPanel,
  journey: Journey,
  hanging: readonly ReadyStrand[],
): ReadPart {
  const { panel, chart, form, index, draft } = stitched
  const { thread } = context
  const events = journey.panelEvents ?? draft.events
  const slack = threadSlack(chart.stitch, thread.construction)
  const passes = countPasses(events, index.count)
  journey.joinPasses.forEach((more, bead) => {
    passes[bead] = (passes[bead] ?? 0) + more
  })
  const fillTask = {
    passes,
    formOf: (bead: number) => context.formOfSlot(index.slotOf[bead] ?? 0, form),
    thread,
    needle: context.needle,
    tables: context.options,
  }
  const filled = readFill(fillTask)
  const measure = journey.panelMeasure ?? { throughMm: 0, runMm: 0, bendMm: 0 }
  const inPieceMm = threadSpread(journey.inPieceMm[0] ?? 0, measure, { form, thread, slack })
  const cutMm = journey.lengths.filter(({ stretch }) => stretch === 0).map((length) => length.cutMm)
  const size = panelSize(chart, form, thread)
  const known = {
    partId: panel.id,
    beads: index.count,
    ...size,
    route: events,
    thread: { inPieceMm, cutMm, spoolMm: spoolSpread(cutMm, inPieceMm) },
    passes,
    ...filled,
    warnings: [
      ...draft.warnings,
      ...paletteWarnings(context, index.slotOf),
      ...fillWarnings(fillTask, filled),
    ],
    labourS: wholeSpread(
      addSpreads([
        scaleSpread(context.pace.perBeadS[chart.stitch], index.count),
        scaleSpread(context.pace.perRowS, countRows(events)),
      ]),
    ),
  }
  const reading = lazyPart(known, {
    steps: () =>
      benchSteps(events, {
        letterOf: (bead) => slotLabel(index.slotOf[bead] ?? 0),
        runs: beadRuns(index),
        rowNumber: rowNumberOf(stitched),
        growsUp: true,
      }),
    words: () =>
      writeWordChart(chart, {
        worked: { index, picks: events.pool.subarray(0, events.poolCount) },
        ...(draft.start && { start: draft.start }),
      }).lines.map(({ text }) => text),
  })
  const slots = slotTotals(countSlots(chart), (slot) => context.formOfSlot(slot, form))
  return {
    reading,
    copies: panel.copies,
    cutCopies: panel.copies,
    allInPieceMm: inPieceMm,
    slots,
    hangingWidthMm: size.widthMm,
    hangingHeightMm: hangingHeight(stitched, size.heightMm, hanging),
  }
}

/** Rows as they are counted at the bench: peyote counts half rows, as its word chart does. */
function rowNumberOf({ chart, index }: StitchedPanel): (bead: number) => number {
  return (bead) => {
    const row = index.rowOf[bead] ?? 0
    if (chart.stitch !== 'peyote') return row + 1
    return 2 * row + (isOddColumn(index.atOf[bead] ?? 0) ? 2 : 1)
  }
}

/** A panel's height with its longest fringe below and its tallest loop above (half a loop's beads, as it hangs). */
function hangingHeight(
  { index, geometry }: StitchedPanel,
  heightMm: Spread,
  hanging: readonly ReadyStrand[],
): Spread {
  let below = 0
  let above = 0
  for (const { strand, forms } of hanging) {
    const bead = (index.rowStart[strand.anchor?.row ?? 0] ?? 0) + (strand.anchor?.bead ?? 0)
    const y = geometry.yMm[bead] ?? 0
    const lengthMm = forms.reduce((sum, form) => sum + form.lengthMm.value, 0)
    if (strand.shape === 'fringe') below = Math.max(below, y + lengthMm - heightMm.value)
    else above = Math.max(above, lengthMm / 2 - y)
  }
  return addSpreads([heightMm, exactly(below), exactly(above)])
}

function readHangingStrands(
  context: ReadContext,
  { panel }: StitchedPanel,
  journey: Journey,
  ready: readonly ReadyStrand[],
  read: Map<string, ReadPart>,
): void {
  for (const strand of ready) {
    const at = journey.strands.flatMap((laid, index) => (laid.ready === strand ? [index] : []))
    const last = at.at(-1)
    const laid = last === undefined ? undefined : journey.strands[last]
    if (last === undefined || laid === undefined) continue
    const copies = strand.strand.copies
    const allMm = at.reduce((sum, index) => sum + (journey.inPieceMm[index + 1] ?? 0), 0)
    const cutMm = journey.lengths
      .filter(({ stretch }) => at.includes(stretch - 1))
      .map((length) => length.cutMm)
    const reading = readStrandPart(context, strand, {
      events: laid.events,
      measure: journey.measures[last] ?? { throughMm: 0, runMm: 0, bendMm: 0 },
      inPieceMm: journey.inPieceMm[last + 1] ?? 0,
      cutMm,
      warnings: [],
    })
    const share = allMm / Math.max(1, copies) / Math.max(1, reading.thread.inPieceMm.value)
    read.set(strand.strand.id, {
      ...strandTotals(context, strand, reading),
      copies: copies * panel.copies,
      cutCopies: panel.copies,
      allInPieceMm: scaleSpread(reading.thread.inPieceMm, share),
      // Counted with the panel it hangs from.
      hangingWidthMm: exactly(0),
      hangingHeightMm: exactly(0),
    })
  }
}

function readLoose(
  context: ReadContext,
  resolved: ResolvedStrand,
  fallback: BeadForm,
  isLost: boolean,
): ReadPart {
  const ready = readyStrand(context, resolved, fallback)
  const journey = looseJourney(ready, context, LOOP_ROUNDS)
  const laid = journey.strands[0]
  const reading = readStrandPart(context, ready, {
    events: laid?.events,
    measure: journey.measures[0] ?? { throughMm: 0, runMm: 0, bendMm: 0 },
    inPieceMm: journey.inPieceMm[0] ?? 0,
    cutMm: journey.lengths.map((length) => length.cutMm),
    warnings: isLost ? [anchorMissing(resolved.strand)] : [],
  })
  const { copies } = resolved.strand
  return {
    ...strandTotals(context, ready, reading),
    copies,
    cutCopies: copies,
    allInPieceMm: reading.thread.inPieceMm,
    hangingWidthMm: reading.widthMm,
    hangingHeightMm: reading.heightMm,
  }
}

type StrandThread = Readonly<{
  events: EventList | undefined
  measure: Journey['measures'][number]
  inPieceMm: number
  cutMm: readonly number[]
  warnings: readonly RouteWarning[]
}>

function readStrandPart(
  context: ReadContext,
  { strand, slots, forms }: ReadyStrand,
  { events, measure, inPieceMm: mm, cutMm, warnings }: StrandThread,
): PartReading {
  const { thread } = context
  const [form] = forms
  const route = events ?? emptyRoute
  const slack = threadSlack('strand', thread.construction)
  const inPieceMm =
    form === undefined ? exactly(0) : threadSpread(mm, measure, { form, thread, slack })
  const passes = countPasses(route, slots.length)
  const fillTask = {
    passes,
    formOf: (bead: number) => forms[bead] ?? context.options.forms[0] ?? neverForm(),
    thread,
    needle: context.needle,
    tables: context.options,
  }
  const filled = readFill(fillTask)
  const known = {
    partId: strand.id,
    beads: slots.length,
    widthMm: widestBead(forms),
    heightMm: addSpreads(forms.map(({ lengthMm }) => lengthMm)),
    route,
    thread: { inPieceMm, cutMm, spoolMm: spoolSpread(cutMm, inPieceMm) },
    passes,
    ...filled,
    warnings: [...warnings, ...paletteWarnings(context, slots), ...fillWarnings(fillTask, filled)],
    labourS: wholeSpread(scaleSpread(context.pace.perBeadS.strand, slots.length)),
  }
  return lazyPart(known, {
    steps: () =>
      benchSteps(route, {
        letterOf: (bead) => slotLabel(slots[bead] ?? 0),
        runs: undefined,
        rowNumber: () => 1,
        growsUp: false,
      }),
    words: () => [`${strand.name}: ${strand.beads}`],
  })
}

function neverForm(): never {
  throw new Error('Broken assumption: a strand with beads has forms')
}

const emptyRoute: EventList = {
  count: 0,
  kind: new Uint8Array(0),
  a: new Int32Array(0),
  b: new Int32Array(0),
  code: new Uint8Array(0),
  poolCount: 0,
  pool: new Int32Array(0),
  poolDirection: new Uint8Array(0),
  texts: [],
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

function slotTotals(
  counts: Uint32Array,
  formOf: (slot: number) => BeadForm,
): ReadonlyMap<number, SlotTotal> {
  const totals = new Map<number, SlotTotal>()
  counts.forEach((count, slot) => {
    if (count > 0) totals.set(slot, { count, form: formOf(slot) })
  })
  return totals
}

function countRows({ kind, count }: EventList): number {
  let rows = 0
  for (let index = 0; index < count; index += 1) if (kind[index] === ROW) rows += 1
  return rows
}

/** Slots a part uses that the palette does not name: no bead can be chosen for them. */
function paletteWarnings({ body }: ReadContext, slotOf: Uint16Array): readonly RouteWarning[] {
  const known = body.palette.length
  const beads: number[] = []
  const missing = new Set<number>()
  slotOf.forEach((slot, bead) => {
    if (slot < known) return
    missing.add(slot)
    if (beads.length < 500) beads.push(bead)
  })
  if (missing.size === 0) return []
  const letters = [...missing]
    .sort((a, b) => a - b)
    .slice(0, 8)
    .map(slotLabel)
    .join(', ')
  return [
    {
      code: 'slot-without-bead',
      severity: 'warning',
      message: `The palette has no bead for slot ${letters}; the panel's own form is reckoned with.`,
      next: 'Add the slot to the palette, or paint these beads in another slot.',
      beads,
    },
  ]
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
