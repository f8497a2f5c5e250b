import type { EventList } from '../route/event-list.ts'
import type { BenchStep, RouteEvent, RouteWarning } from '../route/route.ts'
import type { RowStart } from '../route/row-starts.ts'
import type { Spread } from '../units/spread.ts'
import type { PartWork } from './part-work.ts'

/** Beads of one slot in one unit: counted exactly; mass in mg by the best calibration there is. */
export type SlotCount = Readonly<{
  label: string
  count: number
  /** What the beads weigh in the finished unit. */
  massMg: Spread
  /** What must be at hand to make it, culls included. */
  needMg: Spread
}>

/**
 * Thread of one unit or one part, in mm: what stays in the work, each length to cut, what of each
 * stays in the work, and what leaves the spool.
 */
export type ThreadReading = Readonly<{
  inPieceMm: Spread
  cutMm: readonly number[]
  inWorkMm: readonly number[]
  spoolMm: Spread
}>

/** Whether one more pass goes through a bead's hole. */
export type Fill = 'free' | 'tight' | 'full'

/**
 * Everything read from one copy of one part. Arrays over beads are in the order of bead numbers.
 *
 * `route` is the journey in compact form; `events`, `steps`, `words` and `rowStarts` are written out
 * from it when first asked for, so that a giant panel costs little until a screen wants them.
 */
export type PartReading = Readonly<{
  partId: string
  beads: number
  widthMm: Spread
  heightMm: Spread
  route: EventList
  events: readonly RouteEvent[]
  steps: readonly BenchStep[]
  /** The word chart, a line a row in the direction of work. */
  words: readonly string[]
  /** Where each row begins among the steps; none for a strand. */
  rowStarts: readonly RowStart[]
  thread: ThreadReading
  /** Passes through each bead: of the route, of what hangs from it, and of a loom's warp ends. */
  passes: Uint16Array
  /** 0 free, 1 tight, 2 full, for each bead after its last pass. */
  fill: Uint8Array
  /** Passes each bead's hole holds: the next one sticks. */
  holds: Uint16Array
  warnings: readonly RouteWarning[]
  labourS: Spread
}>

/** Labour of one unit in seconds, and what it is made of. */
export type LabourReading = Readonly<{
  setUpS: Spread
  stitchingS: Spread
  finishingS: Spread
  totalS: Spread
}>

/** All that the core knows about one unit of a design, computed from the design alone. */
export type DesignReading = Readonly<{
  beads: number
  counts: readonly SlotCount[]
  thread: ThreadReading
  /** The assembled piece, hanging as worn: one copy where a unit is a pair. */
  widthMm: Spread
  heightMm: Spread
  /** Mass of one unit: beads, thread; findings only where their mass is known. */
  unitMassMg: Spread
  labour: LabourReading
  /** What there is to do, part by part: what `labour` is reckoned from at any pace. */
  work: readonly PartWork[]
  parts: readonly PartReading[]
  warnings: readonly (RouteWarning & Readonly<{ partId: string }>)[]
}>
