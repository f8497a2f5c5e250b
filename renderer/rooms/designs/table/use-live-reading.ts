import { useEffect, useMemo, useRef, useState } from 'react'
import { sharedChart } from '../../../../shared-core/chart/shared-rows.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import {
  type ReadingAnswer,
  type ReadingQuestion,
  readQuestion,
} from '../reading/reading-question.ts'

/** Up to so many places a design is read within a frame, while the brush moves. */
const AT_ONCE = 600
/** Larger ones are read beside the page, once the hand has rested so long. */
const RESTS_MS = 180

/** Whether the figures can follow the brush itself and not only its strokes. */
export function isReadAtOnce(body: DesignBody): boolean {
  return placesOf(body) <= AT_ONCE
}

/**
 * The reading of a drawing: at once where it is small, else by a worker that always reads the latest.
 * The figures before stay until new ones come; `isLate` says so.
 */
export function useLiveReading(
  question: ReadingQuestion | undefined,
): Readonly<{ answer: ReadingAnswer | undefined; isLate: boolean }> {
  const body = question?.body
  const isSmall = useMemo(() => body !== undefined && isReadAtOnce(body), [body])
  const atOnce = useMemo(
    () => (question !== undefined && isSmall ? readQuestion(question) : undefined),
    [question, isSmall],
  )
  const later = useLatestOnly(isSmall ? undefined : question)
  const last = useRef<ReadingAnswer>(undefined)
  const answer = atOnce ?? later?.answer ?? last.current
  last.current = answer
  return { answer, isLate: !isSmall && later?.question !== question }
}

function placesOf({ parts }: DesignBody): number {
  let places = 0
  for (const part of parts) {
    if (part.kind === 'strand') places += part.beads.length
    else for (const { cells } of sharedChart(part.chart).rows) places += cells.length
  }
  return places
}

type Read = Readonly<{ question: ReadingQuestion; answer: ReadingAnswer }>

/** One worker, one question at a time; of those that wait only the last is asked. */
function useLatestOnly(question: ReadingQuestion | undefined): Read | undefined {
  const [read, setRead] = useState<Read>()
  const desk = useRef<ReturnType<typeof openDesk>>(undefined)
  useEffect(() => () => desk.current?.close(), [])
  useEffect(() => {
    if (question === undefined) return
    desk.current ??= openDesk(setRead)
    const { ask } = desk.current
    const timer = setTimeout(() => ask(question), RESTS_MS)
    return () => clearTimeout(timer)
  }, [question])
  return read
}

function openDesk(onRead: (read: Read) => void) {
  let worker: Worker | undefined
  let asked: ReadingQuestion | undefined
  let waiting: ReadingQuestion | undefined
  function send(question: ReadingQuestion): void {
    asked = question
    worker ??= start()
    worker.postMessage(question)
  }
  function answered(answer: ReadingAnswer): void {
    const question = asked
    asked = undefined
    if (question !== undefined) onRead({ question, answer })
    const next = waiting
    waiting = undefined
    if (next !== undefined) send(next)
  }
  function start(): Worker {
    const made = new Worker(new URL('../reading/reading-worker.ts', import.meta.url), {
      type: 'module',
    })
    made.addEventListener('message', ({ data }: MessageEvent<ReadingAnswer>) => answered(data))
    made.addEventListener('error', () => {
      worker = undefined
      answered(workerLost)
    })
    return made
  }
  return {
    ask: (question: ReadingQuestion) => {
      if (asked === undefined) send(question)
      else waiting = question
    },
    close: () => worker?.terminate(),
  }
}

const workerLost: ReadingAnswer = {
  ok: false,
  error: {
    code: 'reading-lost',
    message: 'This drawing was too large to be read beside the page.',
    next: 'Draw on; the figures come back with the next stroke, or split it into smaller panels.',
  },
}
