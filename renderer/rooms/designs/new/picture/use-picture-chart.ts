import { useCallback, useEffect, useRef, useState } from 'react'
import type { Picture, PictureProgress } from '../../../../../shared-core/colour/picture/picture.ts'
import type { PictureChart } from '../../../../../shared-core/colour/picture/picture-to-chart.ts'
import type { Refusal } from '../../../../../shared-core/refusal.ts'
import type { PictureJob } from './picture-job.ts'
import type { FromWorker, ToWorker } from './worker-talk.ts'

/** A job and what came of it. */
export type MadePicture = Readonly<{ job: PictureJob; made: PictureChart }>

type Standing =
  | Readonly<{ kind: 'working'; progress?: PictureProgress }>
  | Readonly<{ kind: 'done' }>
  | Readonly<{ kind: 'stopped' }>
  | Readonly<{ kind: 'refused'; refusals: readonly Refusal[] }>

/** How a picture's chart stands: the last that was made, and what is going on now. */
export type PictureWork = Readonly<{
  last: MadePicture | undefined
  standing: Standing
  stop: () => void
  /** Works the same wish out again, after it was stopped. */
  again: () => void
}>

/** Settings that follow each other this fast are one wish, ms. */
const PAUSE_MS = 160

/** Works a picture out in a worker; the last wish wins. Keep `picture` and `job` the same until they change. */
export function usePictureChart(picture: Picture, job: PictureJob | undefined): PictureWork {
  const worker = useRef<Worker>(undefined)
  const turn = useRef(0)
  const jobs = useRef(new Map<number, PictureJob>())
  const [last, setLast] = useState<MadePicture>()
  const [standing, setStanding] = useState<Standing>({ kind: 'working' })
  const [attempt, setAttempt] = useState(0)

  useEffect(() => {
    const made = new Worker(new URL('./picture-worker.ts', import.meta.url), { type: 'module' })
    worker.current = made
    tell(made, { kind: 'picture', picture })
    made.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => {
      const asked = jobs.current.get(data.turn)
      if (data.turn !== turn.current || asked === undefined) return
      if (data.kind === 'progress') setStanding({ kind: 'working', progress: data.progress })
      else if (data.kind === 'refused') setStanding(data)
      else {
        setLast({ job: asked, made: data.made })
        setStanding({ kind: 'done' })
      }
    })
    made.addEventListener('error', () => setStanding({ kind: 'refused', refusals: [workerLost] }))
    return () => made.terminate()
  }, [picture])

  // biome-ignore lint/correctness/useExhaustiveDependencies: a new attempt asks the same job again
  useEffect(() => {
    turn.current += 1
    if (job === undefined) return stopWorker(worker.current)
    const mine = turn.current
    setStanding({ kind: 'working' })
    const timer = setTimeout(() => {
      jobs.current = new Map([[mine, job]])
      if (worker.current) tell(worker.current, { kind: 'ask', turn: mine, asked: job.asked })
    }, PAUSE_MS)
    return () => clearTimeout(timer)
  }, [picture, job, attempt])

  const stop = useCallback(() => {
    turn.current += 1
    stopWorker(worker.current)
    setStanding({ kind: 'stopped' })
  }, [])
  const again = useCallback(() => setAttempt((count) => count + 1), [])
  return { last, standing, stop, again }
}

function tell(worker: Worker, message: ToWorker): void {
  worker.postMessage(message)
}

function stopWorker(worker: Worker | undefined): void {
  if (worker !== undefined) tell(worker, { kind: 'stop' })
}

const workerLost: Refusal = {
  code: 'picture-worker-lost',
  message: 'The picture was too much to be worked out beside the page.',
  next: 'Ask for fewer beads, or crop a smaller part.',
}
