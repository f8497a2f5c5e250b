import type { Spread } from '../units/spread.ts'
import type { PartWork } from './part-work.ts'
import type { PartReading } from './reading.ts'
import type { SlotTotal } from './slot-totals.ts'

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
  work: PartWork
  /** The part as it hangs, with what hangs from it. */
  hangingWidthMm: Spread
  hangingHeightMm: Spread
}>
