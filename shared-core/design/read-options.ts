import type { BeadForm } from '../beads/bead-form.ts'
import type { Calibration } from '../beads/calibration.ts'
import type { Needle, Thread } from '../beads/thread.ts'
import type { BeadTables } from '../beads/user-forms.ts'
import type { Checkpoint } from '../route/checkpoint.ts'
import type { Spread } from '../units/spread.ts'
import type { DesignBody } from './design.ts'
import type { Pace } from './labour-pace.ts'
import type { Learned } from './learned.ts'

/**
 * What a design is read with: the tables of forms, threads and needles; the workshop's calibrations
 * by slot letter (the table's figures serve for the rest); its pace, its cull rates by form and its
 * use of thread (else the tables').
 */
export type ReadOptions = BeadTables &
  Partial<Learned> &
  Readonly<{
    calibrations?: Readonly<Record<string, Calibration>>
    /** Asked many times a second, within parts as well: true gives up and refuses with `cancelled`. */
    isCancelled?: () => boolean
  }>

/** What every part of a design is read with, resolved once. */
export type ReadContext = Readonly<{
  body: DesignBody
  options: ReadOptions
  thread: Thread
  /** Strands of thread in every pass. */
  strands: 1 | 2
  needle: Needle
  pace: Pace
  /** Thread used over thread reckoned. */
  threadUse: Spread
  /** Called between and within long pieces of work; throws when the reading is no longer wanted. */
  checkpoint: Checkpoint
  /** The form a slot takes, by slot index; the fallback where the palette has none. */
  formOfSlot: (slot: number, fallback: BeadForm) => BeadForm
}>
