import type { Calibration } from '../../../../shared-core/beads/calibration.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { Refusal } from '../../../../shared-core/refusal.ts'
import type { Result } from '../../../../shared-core/result.ts'
import type { PlainReading } from './plain-reading.ts'

/** What is read, and with which weighings. */
export type ReadingQuestion = Readonly<{
  body: DesignBody
  calibrations: Readonly<Record<string, Calibration>>
}>

export type ReadingAnswer = Result<PlainReading, Refusal>
