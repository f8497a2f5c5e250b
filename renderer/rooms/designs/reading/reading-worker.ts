import { ok } from '../../../../shared-core/result.ts'
import { plainReading } from './plain-reading.ts'
import { type ReadingAnswer, type ReadingQuestion, readQuestion } from './reading-question.ts'

/** Reads giant designs beside the page, so that it stays quick. */
addEventListener('message', ({ data }: MessageEvent<ReadingQuestion>) => {
  const read = readQuestion(data)
  const answer: ReadingAnswer = read.ok ? ok(plainReading(read.value)) : read
  postMessage(answer)
})
