import type { Picture } from '../../../../../shared-core/colour/picture/picture.ts'
import { checkPictureRequest } from '../../../../../shared-core/colour/picture/picture-request.ts'
import { pictureToChart } from '../../../../../shared-core/colour/picture/picture-to-chart.ts'
import type { FromWorker, ToWorker } from './worker-talk.ts'

// Turns a picture into beads beside the page, a little at a time, so that a newer wish ends an older one.

/** How long it works before it looks for news, ms. */
const SLICE_MS = 40

let picture: Picture | undefined
let latest = 0

addEventListener('message', ({ data }: MessageEvent<ToWorker>) => {
  if (data.kind === 'picture') picture = data.picture
  else if (data.kind === 'stop') latest = 0
  else void work(data)
})

async function work({ turn, asked }: Extract<ToWorker, { kind: 'ask' }>): Promise<void> {
  latest = turn
  // Wishes that are waiting already are heard first.
  await aMoment()
  if (picture === undefined || latest !== turn) return
  const checked = checkPictureRequest({ ...asked, picture })
  if (!checked.ok) return say({ kind: 'refused', turn, refusals: checked.error })
  const steps = pictureToChart(checked.value)
  let spokeMs = performance.now()
  for (;;) {
    const step = steps.next()
    if (step.done) return say({ kind: 'done', turn, made: step.value })
    if (performance.now() - spokeMs < SLICE_MS) continue
    say({ kind: 'progress', turn, progress: step.value })
    await aMoment()
    if (latest !== turn) return
    spokeMs = performance.now()
  }
}

function say(answer: FromWorker): void {
  postMessage(answer)
}

function aMoment(): Promise<void> {
  return new Promise((done) => setTimeout(done))
}
