import type { BeadForm } from '../beads/bead-form.ts'
import { planChanges, type TailPlan, tailPlan } from '../route/cut-lengths.ts'
import { FINISH, JOIN, PICK_UP, WARP } from '../route/event-codes.ts'
import type { EventList } from '../route/event-list.ts'
import {
  addThread,
  copyEvent,
  createEventWriter,
  cut,
  type EventWriter,
  finishEvents,
  join,
  takeTail,
} from '../route/event-writer.ts'
import { createWeaver, type HoleEnd } from '../route/find-weave.ts'
import { finishRoute } from '../route/finish-route.ts'
import { addUpLengths, type Stretch, type ThreadLength } from '../route/length-ledger.ts'
import { measureThread, type ThreadMeasure } from '../route/measure-thread.ts'
import type { PartGeometry } from '../route/part-geometry.ts'
import { FINISH_BEADS, weaveEndIn, weaveStartIn } from '../route/thread-ends.ts'
import { threadSlack } from '../route/thread-slack.ts'
import { hangStrand, type PanelSite } from '../stitches/strand/hang-strand.ts'
import { layStrand } from '../stitches/strand/lay-strand.ts'
import { strandGeometry } from '../stitches/strand/strand-geometry.ts'
import type { Strand } from './design.ts'
import type { ReadContext } from './read-options.ts'
import { type StitchedPanel, workingEnd } from './stitch-panel.ts'

/** A strand made ready to be laid: its slots and the form of each bead. */
export type ReadyStrand = Readonly<{
  strand: Strand
  slots: Uint16Array
  forms: readonly BeadForm[]
}>

/** One laid copy of a strand. */
export type LaidStrand = Readonly<{ ready: ReadyStrand; events: EventList; geometry: PartGeometry }>

/**
 * One thread's journey: a panel (or none) and the strands that hang from it, with the lengths cut for
 * it. `stretches[0]` is the panel's where there is one; then every copy of every strand in order.
 */
export type Journey = Readonly<{
  panelEvents: EventList | undefined
  panelMeasure: ThreadMeasure | undefined
  strands: readonly LaidStrand[]
  measures: readonly ThreadMeasure[]
  inPieceMm: readonly number[]
  lengths: readonly ThreadLength[]
  /** Passes the strands add to the panel's beads. */
  joinPasses: Uint16Array
}>

type Going = {
  readonly site: PanelSite
  readonly passes: Uint16Array
  at: HoleEnd
}

/** Lays a panel's strands after it, cuts the thread into lengths and adds all up. */
export function panelJourney(
  stitched: StitchedPanel,
  hanging: readonly ReadyStrand[],
  context: ReadContext,
): Journey {
  const { draft, index, geometry, panel, chart } = stitched
  const tails = tailPlan(panel.route)
  const slack = threadSlack(chart.stitch, context.thread.construction).value
  const strandSlack = threadSlack('strand', context.thread.construction).value
  const going = startStrands(stitched, hanging.length > 0)
  const copies = hanging.flatMap((ready) => layCopies(going, stitched, ready, context))
  const strandMm = copies.map(({ events, geometry: beads }) => totalMm(events, beads) * strandSlack)
  const upToMm = new Float64Array(draft.events.count)
  measureThread(draft.events, geometry, upToMm)
  const changes = planChanges(
    draft.events,
    upToMm.map((mm) => mm * slack),
    tails,
    strandMm.reduce((sum, mm) => sum + mm, 0),
  )
  const panelEvents = finishRoute({
    events: draft.events,
    beads: index.count,
    hops: draft.hops,
    changes,
    endsHere: copies.length === 0,
  })
  const strands = endStrands(going, stitched, copies, tails, strandMm)
  const panelStretch = stretch(panelEvents, geometry, slack)
  const strandStretches = strands.map((laid) => stretch(laid.events, laid.geometry, strandSlack))
  const all = [panelStretch, ...strandStretches]
  const lengths = addUpLengths(all, tails)
  return {
    panelEvents,
    panelMeasure: panelStretch.measure,
    strands,
    measures: strandStretches.map(({ measure }) => measure),
    inPieceMm: all.map(
      ({ upToMm: upTo }, at) => (upTo.at(-1) ?? 0) + (at === 0 ? warpMm(panelEvents) : 0),
    ),
    lengths,
    joinPasses: countJoins(strands, index.count),
  }
}

/** A strand that hangs from nothing: its own thread, knotted and both ends run back through its beads. */
export function looseJourney(ready: ReadyStrand, context: ReadContext, rounds: number): Journey {
  const { strand, forms } = ready
  const geometry = strandGeometry(forms, context.thread.diameterMm.value, 0)
  const writer = createEventWriter(4 * forms.length + 16, forms.length)
  addThread(writer, 0)
  layStrand(writer, {
    beads: forms.length,
    shape: strand.shape,
    findingId: strand.findingId,
    rounds,
    hanging: undefined,
  })
  cut(writer, 0)
  takeTail(writer, 0, 0)
  cut(writer, 0)
  const slack = threadSlack('strand', context.thread.construction).value
  const events = finishEvents(writer)
  const laid = stretch(events, geometry, slack)
  return {
    panelEvents: undefined,
    panelMeasure: undefined,
    strands: [{ ready, events, geometry }],
    measures: [laid.measure],
    inPieceMm: [laid.upToMm.at(-1) ?? 0],
    lengths: addUpLengths([laid], tailPlan({})),
    joinPasses: new Uint16Array(0),
  }
}

/** What the warps leave in the work, mm. */
function warpMm({ kind, b, count }: EventList): number {
  let mm = 0
  for (let index = 0; index < count; index += 1) if (kind[index] === WARP) mm += b[index] ?? 0
  return mm
}

type Measured = Stretch & Readonly<{ measure: ThreadMeasure }>

function stretch(events: EventList, geometry: PartGeometry, slack: number): Measured {
  const upToMm = new Float64Array(events.count)
  const measure = measureThread(events, geometry, upToMm)
  for (let index = 0; index < upToMm.length; index += 1) {
    upToMm[index] = (upToMm[index] ?? 0) * slack
  }
  return { events, upToMm, measure }
}

function totalMm(events: EventList, geometry: PartGeometry): number {
  const { throughMm, runMm, bendMm } = measureThread(events, geometry)
  return throughMm + runMm + bendMm
}

function startStrands(
  { panel, index, geometry, draft }: StitchedPanel,
  hasStrands: boolean,
): Going {
  const picked = new Uint8Array(index.count)
  for (let at = 0; at < draft.events.poolCount; at += 1) picked[draft.events.pool[at] ?? 0] = 1
  const site: PanelSite = {
    panelId: panel.id,
    index,
    geometry,
    hops: draft.hops,
    weaver: createWeaver(hasStrands ? index.count : 0),
    isWorked: (bead) => picked[bead] === 1,
  }
  return { site, passes: new Uint16Array(index.count), at: workingEnd(draft.events) }
}

/** Lays every copy of a strand: fringe from bead to bead along the row, loops from the same bead. */
function layCopies(
  going: Going,
  { panel, index, form }: StitchedPanel,
  ready: ReadyStrand,
  context: ReadContext,
): readonly LaidStrand[] {
  const { strand, forms } = ready
  const anchor = strand.anchor
  if (anchor === undefined) return []
  const geometry = strandGeometry(forms, context.thread.diameterMm.value, form.lengthMm.value)
  const from = (index.rowStart[anchor.row] ?? 0) + anchor.bead
  const rowEnd = (index.rowStart[anchor.row + 1] ?? 0) - 1
  return Array.from({ length: strand.copies }, (_, copy) => {
    const bead = strand.shape === 'fringe' ? Math.min(rowEnd, from + copy) : from
    const hanging = hangStrand(going.site, going.at, bead, strand.shape)
    const writer = createEventWriter(4 * forms.length + 16, forms.length)
    layStrand(writer, {
      beads: forms.length,
      shape: strand.shape,
      findingId: strand.findingId,
      rounds: panel.route.loopPasses ?? LOOP_ROUNDS,
      hanging,
    })
    if (hanging !== undefined) going.at = hanging.back
    return { ready, events: finishEvents(writer), geometry }
  })
}

/** Rounds of a loop unless the maker says otherwise. @source Trade practice: two or three in all. */
export const LOOP_ROUNDS = 3

/** Weaves in the thread's end after the last strand, and changes it before a strand it no longer reaches round. */
function endStrands(
  going: Going,
  stitched: StitchedPanel,
  copies: readonly LaidStrand[],
  tails: TailPlan,
  strandMm: readonly number[],
): readonly LaidStrand[] {
  let usedMm = tails.jointMm
  return copies.map((laid, at) => {
    const needMm = strandMm[at] ?? 0
    const isChange = at > 0 && usedMm + needMm + tails.endMm > tails.longestMm
    usedMm = isChange ? tails.jointMm + needMm : usedMm + needMm
    const isLast = at === copies.length - 1
    if (!isChange && !isLast) return laid
    return { ...laid, events: withEnds(going, stitched, laid.events, { isChange, isLast }) }
  })
}

function withEnds(
  going: Going,
  stitched: StitchedPanel,
  events: EventList,
  { isChange, isLast }: Readonly<{ isChange: boolean; isLast: boolean }>,
): EventList {
  const writer = createEventWriter(events.count + 32, events.poolCount)
  const firstJoin = firstJoinOf(events)
  if (isChange && firstJoin !== undefined) {
    weaveJoins(writer, going, stitched, firstJoin, weaveEndIn)
    cut(writer, 0)
    addThread(writer, 0)
    weaveJoins(writer, going, stitched, firstJoin, weaveStartIn)
  }
  appendAll(writer, events)
  if (isLast) {
    weaveJoins(writer, going, stitched, going.at, weaveEndIn)
    cut(writer, 0)
  }
  return finishEvents(writer)
}

function appendAll(writer: EventWriter, events: EventList): void {
  for (let index = 0; index < events.count; index += 1) copyEvent(writer, events, index)
}

function firstJoinOf({ kind, a, code, count }: EventList): HoleEnd | undefined {
  for (let index = 0; index < count && kind[index] !== PICK_UP; index += 1) {
    if (kind[index] === JOIN) return { bead: a[index] ?? 0, edge: (code[index] ?? 0) & 3 }
  }
  return undefined
}

function weaveJoins(
  writer: EventWriter,
  { site, passes }: Going,
  { panel }: StitchedPanel,
  from: HoleEnd,
  way: typeof weaveEndIn,
): void {
  const { hops, isWorked } = site
  for (const end of way({ from, hops, passes, isWorked, beads: FINISH_BEADS })) {
    join(writer, panel.id, end, FINISH)
    passes[end.bead] = (passes[end.bead] ?? 0) + 1
  }
}

function countJoins(strands: readonly LaidStrand[], beads: number): Uint16Array {
  const passes = new Uint16Array(beads)
  for (const { events } of strands) {
    for (let index = 0; index < events.count; index += 1) {
      if (events.kind[index] !== JOIN) continue
      const bead = events.a[index] ?? 0
      passes[bead] = (passes[bead] ?? 0) + 1
    }
  }
  return passes
}
