import type { Page } from '@playwright/test'

/** What a run of frames took: one figure a round. */
export type FrameRounds = Readonly<{ medianMs: readonly number[]; slowMs: readonly number[] }>

const ROUNDS = 3
const FRAMES = 40

type Drive =
  | Readonly<{ kind: 'drag'; button: 0 | 1 }>
  | Readonly<{ kind: 'rectangles'; count: number; columns: number }>

/**
 * Frames as they follow each other on the screen while something moves in each of them: a drag over
 * the picture, or a bare canvas of its size that draws plain rectangles.
 */
export async function frameTimes(page: Page, drive: Drive): Promise<FrameRounds> {
  const medianMs: number[] = []
  const slowMs: number[] = []
  for (let round = 0; round <= ROUNDS; round += 1) {
    const times = await page.evaluate(runFrames, { drive, frames: FRAMES })
    const sorted = times.toSorted((a, b) => a - b)
    // The first round warms up.
    if (round === 0) continue
    medianMs.push(sorted[Math.floor(sorted.length / 2)] ?? Number.NaN)
    slowMs.push(sorted[Math.floor(sorted.length * 0.95)] ?? Number.NaN)
  }
  return { medianMs, slowMs }
}

/** Runs in the page. */
async function runFrames({
  drive,
  frames,
}: Readonly<{ drive: Drive; frames: number }>): Promise<number[]> {
  const picture = document.querySelector<HTMLElement>('.bead-picture-frame')
  if (picture === null) throw new Error('expected a bead picture on the page')
  const box = picture.getBoundingClientRect()
  const move = drive.kind === 'drag' ? dragger(picture, box, drive) : rectangles(box, drive)
  const times: number[] = []
  await new Promise<void>((resolve) => {
    let last = performance.now()
    let done = -3
    const frame = () => {
      const now = performance.now()
      if (done > 0) times.push(now - last)
      last = now
      done += 1
      if (done > frames) resolve()
      else {
        move.step(done)
        requestAnimationFrame(frame)
      }
    }
    requestAnimationFrame(frame)
  })
  move.end()
  return times

  function dragger(
    target: HTMLElement,
    { left, top, width, height }: DOMRect,
    { button }: Readonly<{ button: number }>,
  ) {
    const send = (type: string, at: number) =>
      target.dispatchEvent(
        new PointerEvent(type, {
          bubbles: true,
          pointerId: 1,
          pointerType: 'mouse',
          isPrimary: true,
          button: type === 'pointermove' ? -1 : button,
          buttons: type === 'pointerup' ? 0 : button === 1 ? 4 : 1,
          clientX: left + width / 2 + 0.2 * width * Math.sin(at / 9),
          clientY: top + height / 2 + 0.15 * height * Math.cos(at / 7),
        }),
      )
    send('pointerdown', 0)
    return { step: (at: number) => send('pointermove', at), end: () => send('pointerup', 0) }
  }

  function rectangles(
    { width, height }: DOMRect,
    { count, columns }: Readonly<{ count: number; columns: number }>,
  ) {
    const root = document.getElementById('root')
    const canvas = document.createElement('canvas')
    canvas.width = Math.round(width * devicePixelRatio)
    canvas.height = Math.round(height * devicePixelRatio)
    const brush = canvas.getContext('2d')
    if (root === null || brush === null) throw new Error('expected a page with a canvas')
    root.style.setProperty('display', 'none')
    document.body.append(canvas)
    const rows = Math.ceil(count / columns)
    const size = Math.min(canvas.width / columns, canvas.height / rows)
    const colours = ['#465a66', '#2f7d8c', '#e9dfd0', '#d08a2e', '#6a9a55', '#9a4a2b']
    const step = (at: number) => {
      brush.clearRect(0, 0, canvas.width, canvas.height)
      for (let bead = 0; bead < count; bead += 1) {
        const row = Math.floor(bead / columns)
        brush.fillStyle = colours[(bead + row) % colours.length] ?? ''
        brush.fillRect((bead % columns) * size + (at % 3), row * size, size, size)
      }
    }
    const end = () => {
      canvas.remove()
      root.style.removeProperty('display')
    }
    return { step, end }
  }
}
