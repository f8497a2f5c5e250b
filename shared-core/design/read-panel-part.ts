import { countSlots } from '../chart/count-slots.ts'
import { benchSteps } from '../route/bench-steps.ts'
import { countPasses } from '../route/count-passes.ts'
import { ROW } from '../route/event-codes.ts'
import type { EventList } from '../route/event-list.ts'
import { fillWarnings, readFill } from '../route/read-fill.ts'
import { rowStarts } from '../route/row-starts.ts'
import { threadSlack } from '../route/thread-slack.ts'
import { warpEndPasses } from '../stitches/loom/warp-end-passes.ts'
import { exactly, type Spread } from '../units/spread.ts'
import { addSpreads } from '../units/spread-arithmetic.ts'
import { writeWordChart } from '../words/write-word-chart.ts'
import { emptyPart } from './empty-part.ts'
import type { ReadyStrand } from './lay-strands.ts'
import { lazyPart } from './lazy-part.ts'
import { threadAsUsed } from './learn-thread-use.ts'
import { paletteWarnings } from './palette-warnings.ts'
import { panelSize } from './panel-size.ts'
import { panelStepWords } from './panel-step-words.ts'
import { threadOf, threadSpread } from './part-thread.ts'
import { stitchingS } from './part-work.ts'
import type { Journey } from './read-journey.ts'
import type { ReadContext } from './read-options.ts'
import type { ReadPart } from './read-part.ts'
import type { PartReading } from './reading.ts'
import { routeAsUsed } from './route-as-used.ts'
import { slotTotals } from './slot-totals.ts'
import type { StitchedPanel } from './stitch-panel.ts'

/** Reads one copy of a panel; what hangs from it adds passes to its beads and length to its height. */
export function readPanelPart(
  context: ReadContext,
  stitched: StitchedPanel,
  journey: Journey,
  hanging: readonly ReadyStrand[],
): ReadPart {
  const { panel, chart, form, draft } = stitched
  const events = journey.panelEvents ?? draft.events
  const size = panelSize(chart, form, context.thread)
  const thread = panelThread(context, stitched, journey)
  const work = { kind: chart.stitch, beads: stitched.index.count, rows: countRows(events) }
  const known = {
    partId: panel.id,
    beads: stitched.index.count,
    ...size,
    route: routeAsUsed(events, context.threadUse),
    thread: threadAsUsed(thread, context.threadUse),
    ...panelFill(context, stitched, journey, events),
    labourS: stitchingS(work, context.pace),
  }
  return {
    reading: writtenOut(known, stitched, context.strands),
    copies: panel.copies,
    work: { ...work, copies: panel.copies },
    cutCopies: panel.copies,
    allThread: thread,
    slots: slotTotals(countSlots(chart), (slot) => context.formOfSlot(slot, form)),
    hangingWidthMm: size.widthMm,
    hangingHeightMm: hangingHeight(stitched, size.heightMm, hanging),
  }
}

function panelThread(
  { thread, strands }: ReadContext,
  { chart, form }: StitchedPanel,
  journey: Journey,
) {
  const slack = threadSlack(chart.stitch, thread.construction, strands)
  const measure = journey.panelMeasure ?? { throughMm: 0, runMm: 0, bendMm: 0 }
  const inPieceMm = threadSpread(journey.inPieceMm[0] ?? 0, measure, { form, thread, slack })
  return threadOf(
    journey.lengths.filter(({ stretch }) => stretch === 0),
    inPieceMm,
  )
}

function panelFill(
  context: ReadContext,
  { panel, chart, form, index, holds, draft: { hops, warnings: stitched } }: StitchedPanel,
  journey: Journey,
  events: EventList,
) {
  context.checkpoint()
  const passes = countPasses(events, index.count)
  addPasses(passes, journey.joinPasses)
  if (chart.stitch === 'loom') {
    addPasses(passes, warpEndPasses({ index, hops, passes, holds }))
  }
  const task = {
    passes,
    events,
    formOf: (bead: number) => context.formOfSlot(index.slotOf[bead] ?? 0, form),
    thread: context.thread,
    strands: context.strands,
    needle: context.needle,
    tables: context.options,
  }
  context.checkpoint()
  const filled = readFill(task)
  context.checkpoint()
  const warnings = [
    ...emptyPart(panel, index.count),
    ...stitched,
    ...paletteWarnings(context, index.slotOf, form),
    ...fillWarnings(task, filled),
  ]
  return { passes, ...filled, warnings }
}

function addPasses(passes: Uint16Array, more: Uint16Array): void {
  more.forEach((added, bead) => {
    passes[bead] = (passes[bead] ?? 0) + added
  })
}

function writtenOut(
  known: Omit<PartReading, 'events' | 'steps' | 'words' | 'rowStarts'>,
  stitched: StitchedPanel,
  strands: 1 | 2,
): PartReading {
  const { chart, index, draft } = stitched
  const { route: events } = known
  return lazyPart(known, {
    steps: () => benchSteps(events, panelStepWords(chart.stitch, index, strands)),
    rowStarts: () => rowStarts(events, panelStepWords(chart.stitch, index, strands)),
    words: () =>
      writeWordChart(chart, {
        worked: { index, picks: events.pool.subarray(0, events.poolCount) },
        ...(draft.start && { start: draft.start }),
      }).lines.map(({ text }) => text),
  })
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

function countRows({ kind, count }: EventList): number {
  let rows = 0
  for (let index = 0; index < count; index += 1) if (kind[index] === ROW) rows += 1
  return rows
}
