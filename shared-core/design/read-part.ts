import type { Spread } from '../units/spread.ts'
import type { PartWork } from './part-work.ts'
import type { PartReading, ThreadReading } from './reading.ts'
import type { SlotTotal } from './slot-totals.ts'

/** One part's reading with what the whole unit needs of it. */
export type ReadPart = Readonly<{
  reading: PartReading
  /** Copies in one unit. */
  copies: number
  /** Thread as the route reckons it: in the piece a copy on average; the lengths of one journey. */
  allThread: Pick<ThreadReading, 'inPieceMm' | 'cutMm' | 'inWorkMm'>
  /** Times the lengths of `allThread` are cut for one unit. */
  cutCopies: number
  slots: ReadonlyMap<number, SlotTotal>
  work: PartWork
  /** The part as it hangs, with what hangs from it. */
  hangingWidthMm: Spread
  hangingHeightMm: Spread
}>
