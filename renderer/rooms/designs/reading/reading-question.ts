import type { Calibration } from '../../../../shared-core/beads/calibration.ts'
import type { BeadTables } from '../../../../shared-core/beads/user-forms.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { Learned } from '../../../../shared-core/design/learned.ts'
import { readDesign } from '../../../../shared-core/design/read-design.ts'
import type { DesignReading } from '../../../../shared-core/design/reading.ts'
import type { Refusal } from '../../../../shared-core/refusal.ts'
import type { Result } from '../../../../shared-core/result.ts'
import type { PlainReading } from './plain-reading.ts'

/** What is read, with which weighings, and with what this workshop has learnt of itself. */
export type ReadingQuestion = Readonly<{
  body: DesignBody
  calibrations: Readonly<Record<string, Calibration>>
  learned: Learned
  tables: BeadTables
}>

export type ReadingAnswer = Result<PlainReading, Refusal>

/** The one way a window reads a design, beside the page or on it. */
export function readQuestion({
  body,
  calibrations,
  learned,
  tables,
}: ReadingQuestion): Result<DesignReading, Refusal> {
  return readDesign(body, { ...tables, ...learned, calibrations })
}
