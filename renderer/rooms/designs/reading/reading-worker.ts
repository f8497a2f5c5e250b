import { referenceTables } from '../../../../shared-core/beads/bead-tables.ts'
import { readDesign } from '../../../../shared-core/design/read-design.ts'
import { ok } from '../../../../shared-core/result.ts'
import { plainReading } from './plain-reading.ts'
import type { ReadingAnswer, ReadingQuestion } from './reading-question.ts'

/** Reads giant designs beside the page, so that it stays quick. */
addEventListener('message', ({ data }: MessageEvent<ReadingQuestion>) => {
  const { body, calibrations, learned } = data
  const read = readDesign(body, { ...referenceTables, ...learned, calibrations })
  const answer: ReadingAnswer = read.ok ? ok(plainReading(read.value)) : read
  postMessage(answer)
})
