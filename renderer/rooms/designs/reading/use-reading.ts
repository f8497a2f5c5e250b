import { useEffect, useMemo, useState } from 'react'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { type ReadingAnswer, type ReadingQuestion, readQuestion } from './reading-question.ts'

/** Above this many beads a design is read in a worker. */
export const GIANT_BEADS = 20_000

/** A design's reading; `undefined` while a giant is being read. Keep the question stable. */
export function useReading(question: ReadingQuestion | undefined): ReadingAnswer | undefined {
  const isGiant = question !== undefined && roughBeads(question.body) > GIANT_BEADS
  const atOnce = useMemo(
    () => (question === undefined || isGiant ? undefined : readQuestion(question)),
    [question, isGiant],
  )
  const later = useWorker(isGiant ? question : undefined)
  return atOnce ?? later
}

type Read = Readonly<{ question: ReadingQuestion; answer: ReadingAnswer }>

function useWorker(question: ReadingQuestion | undefined): ReadingAnswer | undefined {
  const [read, setRead] = useState<Read>()
  useEffect(() => {
    if (question === undefined) return
    const worker = new Worker(new URL('./reading-worker.ts', import.meta.url), { type: 'module' })
    worker.addEventListener('message', ({ data }: MessageEvent<ReadingAnswer>) => {
      setRead({ question, answer: data })
      worker.terminate()
    })
    worker.addEventListener('error', () => setRead({ question, answer: workerLost }))
    worker.postMessage(question)
    return () => worker.terminate()
  }, [question])
  // While the same chart is read with other weighings, the figures before stay in their place.
  return read?.question.body === question?.body ? read?.answer : undefined
}

const workerLost: ReadingAnswer = {
  ok: false,
  error: {
    code: 'reading-lost',
    message: 'This design was too large to be read beside the page.',
    next: 'Close other windows and open the design again, or split it into smaller panels.',
  },
}

/** Cells of all charts by their runs, without unpacking them. */
export function roughBeads(body: DesignBody): number {
  let beads = 0
  for (const part of body.parts) {
    const texts = part.kind === 'strand' ? [part.beads] : part.chart.rows.map(({ cells }) => cells)
    for (const text of texts) {
      for (const [, count, slot] of text.matchAll(/(\d+)([A-Z]+|-)/g)) {
        if (slot !== '-') beads += Number(count)
      }
    }
  }
  return beads
}
