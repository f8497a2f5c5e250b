import type { BeadForm } from '../beads/bead-form.ts'
import type { Checkpoint } from '../route/checkpoint.ts'
import { countPasses } from '../route/count-passes.ts'
import type { TailPlan } from '../route/cut-lengths.ts'
import { FINISH, JOIN } from '../route/event-codes.ts'
import type { EventList } from '../route/event-list.ts'
import {
  addThread,
  copyEvent,
  createEventWriter,
  cut,
  type EventWriter,
  finishEvents,
  join,
} from '../route/event-writer.ts'
import { createWeaver, type HoleEnd } from '../route/find-weave.ts'
import type { PartGeometry } from '../route/part-geometry.ts'
import { FINISH_BEADS, weaveEndIn, weaveStartIn } from '../route/thread-ends.ts'
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

/** One laid copy of a strand, and where in the panel the thread was before it. */
export type LaidStrand = Readonly<{
  ready: ReadyStrand
  events: EventList
  geometry: PartGeometry
  from: HoleEnd
  /** The panel's bead it hangs from, where it hangs. */
  bead: number | undefined
}>

/** The thread on its way through a panel's strands: where it is, and the passes made through the panel's beads. */
export type Going = {
  readonly site: PanelSite
  readonly passes: Uint16Array
  at: HoleEnd
}

/** Ready to lay strands from where the panel's thread ends. */
export function startStrands(
  { panel, index, geometry, holds, draft }: StitchedPanel,
  hasStrands: boolean,
  checkpoint: Checkpoint,
): Going {
  const passes = hasStrands ? countPasses(draft.events, index.count) : new Uint16Array(0)
  const picked = new Uint8Array(index.count)
  for (let at = 0; at < draft.events.poolCount; at += 1) picked[draft.events.pool[at] ?? 0] = 1
  const site: PanelSite = {
    panelId: panel.id,
    index,
    geometry,
    hops: draft.hops,
    weaver: createWeaver(hasStrands ? index.count : 0, {
      checkpoint,
      isFull: (bead) => (passes[bead] ?? 0) >= (holds[bead] ?? 0),
    }),
    isWorked: (bead) => picked[bead] === 1,
  }
  return { site, passes, at: workingEnd(draft.events) }
}

/** Lays every copy of a strand: fringe from bead to bead along the row, loops from the same bead. */
export function layCopies(
  going: Going,
  { panel, index, form }: StitchedPanel,
  ready: ReadyStrand,
  context: ReadContext,
): readonly LaidStrand[] {
  const { strand, forms } = ready
  const anchor = strand.anchor
  if (anchor === undefined) return []
  const geometry = strandGeometry(forms, context.thread.diameterMm.value, form.lengthMm.value)
  const first = (index.rowStart[anchor.row] ?? 0) + anchor.bead
  const rowEnd = (index.rowStart[anchor.row + 1] ?? 0) - 1
  return Array.from({ length: strand.copies }, (_, copy) => {
    const bead = strand.shape === 'fringe' ? Math.min(rowEnd, first + copy) : first
    const from = going.at
    const hanging = hangStrand(going.site, from, bead, strand.shape)
    context.checkpoint()
    const writer = createEventWriter(4 * forms.length + 16, forms.length, context.checkpoint)
    layStrand(writer, {
      beads: forms.length,
      shape: strand.shape,
      findingId: strand.findingId,
      rounds: panel.route.loopPasses ?? LOOP_ROUNDS,
      hanging,
    })
    if (hanging !== undefined) going.at = hanging.back
    const events = finishEvents(writer)
    addJoins(going.passes, events)
    return { ready, events, geometry, from, bead }
  })
}

/** Rounds of a loop unless the maker says otherwise. @source Trade practice: two or three in all. */
export const LOOP_ROUNDS = 3

type Ending = Readonly<{ going: Going; stitched: StitchedPanel; tails: TailPlan }>

/**
 * Weaves in the thread's end after the last strand, and changes the thread before a strand it would
 * not reach through.
 */
export function endStrands(
  ending: Ending,
  copies: readonly LaidStrand[],
  strandMm: readonly number[],
  panelMm: number,
): readonly LaidStrand[] {
  const { tails } = ending
  let usedMm = panelMm
  return copies.map((laid, at) => {
    const needMm = strandMm[at] ?? 0
    const isLast = at === copies.length - 1
    const endMm = isLast ? tails.endMm : tails.jointMm
    const isChange = usedMm + needMm + endMm > tails.longestMm && usedMm > tails.jointMm
    usedMm = isChange ? tails.jointMm + needMm : usedMm + needMm
    if (!isChange && !isLast) return laid
    return { ...laid, events: withEnds(ending, laid, { isChange, isLast }) }
  })
}

function withEnds(
  { going, stitched }: Ending,
  { events, from }: LaidStrand,
  { isChange, isLast }: Readonly<{ isChange: boolean; isLast: boolean }>,
): EventList {
  const writer = createEventWriter(events.count + 32, events.poolCount)
  if (isChange) {
    weaveJoins(writer, going, stitched, from, weaveEndIn)
    cut(writer, 0)
    addThread(writer, 0)
    weaveJoins(writer, going, stitched, from, weaveStartIn)
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

function weaveJoins(
  writer: EventWriter,
  { site, passes }: Going,
  { panel, holds }: StitchedPanel,
  from: HoleEnd,
  way: typeof weaveEndIn,
): void {
  const { hops, isWorked } = site
  for (const end of way({ from, hops, passes, holds, isWorked, beads: FINISH_BEADS })) {
    join(writer, panel.id, end, FINISH)
    passes[end.bead] = (passes[end.bead] ?? 0) + 1
  }
}

/** Passes the strands add to the panel's beads. */
export function countJoins(strands: readonly LaidStrand[], beads: number): Uint16Array {
  const passes = new Uint16Array(beads)
  for (const { events } of strands) addJoins(passes, events)
  return passes
}

function addJoins(passes: Uint16Array, events: EventList): void {
  for (let index = 0; index < events.count; index += 1) {
    if (events.kind[index] !== JOIN) continue
    const bead = events.a[index] ?? 0
    passes[bead] = (passes[bead] ?? 0) + 1
  }
}
