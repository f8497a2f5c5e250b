import type { BeadForm } from '../beads/bead-form.ts'
import { threadMass } from '../beads/thread-mass.ts'
import { slotLabel } from '../chart/chart.ts'
import type { Refusal } from '../refusal.ts'
import { err, ok, type Result } from '../result.ts'
import { Stopped } from '../route/checkpoint.ts'
import { addSpreads, scaleSpread } from '../units/spread-arithmetic.ts'
import type { DesignBody } from './design.ts'
import { threadAsUsed } from './learn-thread-use.ts'
import { spoolSpread } from './part-thread.ts'
import { readLabour } from './read-labour.ts'
import type { ReadContext, ReadOptions } from './read-options.ts'
import type { ReadPart } from './read-part.ts'
import { readParts } from './read-parts.ts'
import type { DesignReading, SlotCount, ThreadReading } from './reading.ts'
import { resolveDesign } from './resolve-design.ts'
import { weighSlot } from './weigh-slot.ts'

/**
 * All that the core knows about one unit of a design: counts, masses, the thread's whole journey,
 * passes and hole fill, size, labour, steps, warnings.
 *
 * What cannot be stitched is a warning that points at its beads; only a body that cannot be read at
 * all is refused: `unknown-thread`, `unknown-needle`, `unknown-form`, `chart-unreadable`,
 * `chart-too-large`, `strand-unreadable`, `too-many-strand-beads`, `duplicate-part`, `cancelled`.
 */
export function readDesign(body: DesignBody, options: ReadOptions): Result<DesignReading, Refusal> {
  const resolved = resolveDesign(body, options)
  if (!resolved.ok) return resolved
  const { context, panels, strands } = resolved.value
  try {
    return ok(readResolved(context, readParts(context, panels, strands)))
  } catch (cause) {
    if (cause instanceof Stopped) return err(cancelled)
    throw cause
  }
}

/** Adds up the parts of one unit. */
function readResolved(context: ReadContext, parts: readonly ReadPart[]): DesignReading {
  const counts = slotCounts(context, parts)
  const thread = threadAsUsed(allThread(parts), context.threadUse)
  const work = parts.map((part) => part.work)
  return {
    beads: parts.reduce((sum, part) => sum + part.reading.beads * part.copies, 0),
    counts,
    thread,
    ...assembledSize(parts),
    unitMassMg: addSpreads([
      ...counts.map(({ massMg }) => massMg),
      threadMass(context.thread, thread.inPieceMm),
    ]),
    labour: readLabour(work, context.body, context.pace),
    work,
    parts: parts.map(({ reading }) => reading),
    warnings: parts.flatMap(({ reading }) =>
      reading.warnings.map((warning) => ({ ...warning, partId: reading.partId })),
    ),
  }
}

const cancelled: Refusal = {
  code: 'cancelled',
  message: 'The reading of the design was stopped before it was done.',
  next: 'Read it again when nothing else is waiting.',
}

/** Thread of one unit, as the route reckons it. */
function allThread(parts: readonly ReadPart[]): ThreadReading {
  const inPieceMm = addSpreads(
    parts.map((part) => scaleSpread(part.allThread.inPieceMm, part.copies)),
  )
  const each = (pick: (thread: ReadPart['allThread']) => readonly number[]) =>
    parts.flatMap((part) => repeated(pick(part.allThread), part.cutCopies))
  const cutMm = each((thread) => thread.cutMm)
  const inWorkMm = each((thread) => thread.inWorkMm)
  return { inPieceMm, cutMm, inWorkMm, spoolMm: spoolSpread(cutMm, inPieceMm) }
}

function repeated(mm: readonly number[], times: number): readonly number[] {
  return Array.from({ length: times }, () => mm).flat()
}

function slotCounts(context: ReadContext, parts: readonly ReadPart[]): readonly SlotCount[] {
  const totals = new Map<number, { count: number; form: BeadForm }>()
  for (const { slots, copies } of parts) {
    slots.forEach(({ count, form }, slot) => {
      const before = totals.get(slot)
      totals.set(slot, { count: (before?.count ?? 0) + count * copies, form: before?.form ?? form })
    })
  }
  return [...totals.entries()]
    .sort(([a], [b]) => a - b)
    .map(([slot, { count, form }]) => slotCount(context, slot, count, form))
}

function slotCount(
  { options }: ReadContext,
  slot: number,
  count: number,
  form: BeadForm,
): SlotCount {
  const label = slotLabel(slot)
  return weighSlot({ label, count }, form, {
    calibration: options.calibrations?.[label],
    cullRates: options.cullRates,
  })
}

/** The assembled piece as worn: its largest panel with what hangs from it. */
function assembledSize(parts: readonly ReadPart[]) {
  const zero = scaleSpread(addSpreads([]), 0)
  const widest = (pick: (part: ReadPart) => ReadPart['hangingWidthMm']) =>
    parts.map(pick).reduce((best, size) => (size.value > best.value ? size : best), zero)
  return {
    widthMm: widest((part) => part.hangingWidthMm),
    heightMm: widest((part) => part.hangingHeightMm),
  }
}
