import type { Checkpoint } from '../route/checkpoint.ts'
import { planChanges, type TailPlan, tailPlan } from '../route/cut-lengths.ts'
import { WARP } from '../route/event-codes.ts'
import type { EventList } from '../route/event-list.ts'
import { addThread, createEventWriter, cut, finishEvents, takeTail } from '../route/event-writer.ts'
import { finishRoute } from '../route/finish-route.ts'
import { addUpLengths, type Stretch, type ThreadLength } from '../route/length-ledger.ts'
import { measureThread, type ThreadMeasure } from '../route/measure-thread.ts'
import type { PartGeometry } from '../route/part-geometry.ts'
import { threadSlack } from '../route/thread-slack.ts'
import { layStrand } from '../stitches/strand/lay-strand.ts'
import { strandGeometry } from '../stitches/strand/strand-geometry.ts'
import {
  countJoins,
  endStrands,
  type LaidStrand,
  layCopies,
  type ReadyStrand,
  startStrands,
} from './lay-strands.ts'
import type { ReadContext } from './read-options.ts'
import type { StitchedPanel } from './stitch-panel.ts'

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

/** Lays a panel's strands after it, cuts the thread into lengths and adds all up. */
export function panelJourney(
  stitched: StitchedPanel,
  hanging: readonly ReadyStrand[],
  context: ReadContext,
): Journey {
  const { index, geometry, panel, chart } = stitched
  const tails = tailPlan(panel.route)
  const { strands: doubling } = context
  const { construction } = context.thread
  const slack = threadSlack(chart.stitch, construction, doubling).value
  const strandSlack = threadSlack('strand', construction, doubling).value
  const going = startStrands(stitched, hanging.length > 0, context.checkpoint)
  const copies = hanging.flatMap((ready) => layCopies(going, stitched, ready, context))
  const strandMm = copies.map(({ events, geometry: beads }) => totalMm(events, beads) * strandSlack)
  const { panelEvents, usedMm } = cutPanel(stitched, {
    tails,
    slack,
    strandMm,
    checkpoint: context.checkpoint,
  })
  const strands = endStrands({ going, stitched, tails }, copies, strandMm, usedMm)
  const panelStretch = stretch(panelEvents, geometry, slack, context.checkpoint)
  const strandStretches = strands.map((laid) => stretch(laid.events, laid.geometry, strandSlack))
  context.checkpoint()
  const lengths = addUpLengths([panelStretch, ...strandStretches], tails, doubling)
  return {
    panelEvents,
    panelMeasure: panelStretch.measure,
    strands,
    measures: strandStretches.map(({ measure }) => measure),
    inPieceMm: [
      doubling * laidMm(panelStretch) + warpMm(panelEvents),
      ...strandStretches.map((laid) => doubling * laidMm(laid)),
    ],
    lengths,
    joinPasses: countJoins(strands, index.count),
  }
}

type Cutting = Readonly<{
  tails: TailPlan
  slack: number
  strandMm: readonly number[]
  checkpoint: Checkpoint
}>

/** The panel's route with its lengths begun and ended, and what of the last length is used when the strands begin. */
function cutPanel(
  { draft, index, geometry, holds }: StitchedPanel,
  { tails, slack, strandMm, checkpoint }: Cutting,
) {
  const upToMm = new Float64Array(draft.events.count)
  measureThread(draft.events, geometry, upToMm, checkpoint)
  for (let at = 0; at < upToMm.length; at += 1) upToMm[at] = (upToMm[at] ?? 0) * slack
  checkpoint()
  const afterMm = strandMm.reduce((sum, mm) => sum + mm, 0)
  const changes = planChanges(draft.events, upToMm, tails, afterMm)
  const endsHere = strandMm.length === 0
  const { events } = draft
  const panelEvents = finishRoute({
    events,
    beads: index.count,
    hops: draft.hops,
    holds,
    checkpoint,
    changes,
    endsHere,
  })
  const last = changes.at(-1)
  const headMm = last === undefined ? tails.startMm : tails.jointMm
  const fromMm = last === undefined ? 0 : (upToMm[last - 1] ?? 0)
  return { panelEvents, usedMm: headMm + (upToMm.at(-1) ?? 0) - fromMm }
}

function laidMm({ upToMm }: Stretch): number {
  return upToMm.at(-1) ?? 0
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
  const { strands: doubling } = context
  const slack = threadSlack('strand', context.thread.construction, doubling).value
  const events = finishEvents(writer)
  const laid = stretch(events, geometry, slack)
  return {
    panelEvents: undefined,
    panelMeasure: undefined,
    strands: [{ ready, events, geometry, from: { bead: 0, edge: 0 }, bead: undefined }],
    measures: [laid.measure],
    inPieceMm: [doubling * laidMm(laid)],
    lengths: addUpLengths([laid], tailPlan({}), doubling),
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

function stretch(
  events: EventList,
  geometry: PartGeometry,
  slack: number,
  checkpoint?: Checkpoint,
): Measured {
  const upToMm = new Float64Array(events.count)
  const measure = measureThread(events, geometry, upToMm, checkpoint)
  for (let index = 0; index < upToMm.length; index += 1) {
    upToMm[index] = (upToMm[index] ?? 0) * slack
  }
  return { events, upToMm, measure }
}

function totalMm(events: EventList, geometry: PartGeometry): number {
  const { throughMm, runMm, bendMm } = measureThread(events, geometry)
  return throughMm + runMm + bendMm
}
