import type { Calibration } from '../../../../shared-core/beads/calibration.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { Learned } from '../../../../shared-core/design/learned.ts'
import type { Refusal } from '../../../../shared-core/refusal.ts'
import type { Result } from '../../../../shared-core/result.ts'
import type { PlainReading } from './plain-reading.ts'

/** What is read, with which weighings, and with what this workshop has learnt of itself. */
export type ReadingQuestion = Readonly<{
  body: DesignBody
  calibrations: Readonly<Record<string, Calibration>>
  /** Absent while it is not known yet: the tables' own figures. */
  learned?: Learned | undefined
}>

export type ReadingAnswer = Result<PlainReading, Refusal>
