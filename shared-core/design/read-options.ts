import type { BeadForm } from '../beads/bead-form.ts'
import type { Calibration } from '../beads/calibration.ts'
import type { Needle, Thread } from '../beads/thread.ts'
import type { BeadTables } from '../beads/user-forms.ts'
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
    /** Asked between parts: true gives up and refuses with `cancelled`. */
    isCancelled?: () => boolean
  }>

/** What every part of a design is read with, resolved once. */
export type ReadContext = Readonly<{
  body: DesignBody
  options: ReadOptions
  thread: Thread
  needle: Needle
  pace: Pace
  /** The form a slot takes, by slot index; the fallback where the palette has none. */
  formOfSlot: (slot: number, fallback: BeadForm) => BeadForm
}>
