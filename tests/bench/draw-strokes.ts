import type { Page } from '@playwright/test'

const A_FRAME = 100
const SLOTS = 6

/** Draws on the table until so many strokes are kept: short ones, several in every frame, slot after slot. */
export async function drawStrokes(
  page: Page,
  wanted: number,
  kept: () => Promise<number>,
): Promise<void> {
  let frame = 0
  for (let position = await kept(); position < wanted; position = await kept()) {
    const frames = Math.ceil((wanted - position) / A_FRAME)
    await page.evaluate(strokeFrames, { first: frame, frames, aFrame: A_FRAME, slots: SLOTS })
    frame += frames
    await page.waitForTimeout(300)
  }
}

/** Runs in the page. */
async function strokeFrames({
  first,
  frames,
  aFrame,
  slots,
}: Readonly<{ first: number; frames: number; aFrame: number; slots: number }>): Promise<void> {
  const picture = document.querySelector<HTMLElement>('.bead-picture-frame')
  if (picture === null) throw new Error('expected a bead picture on the page')
  picture.focus()
  const { left, top, width, height } = picture.getBoundingClientRect()
  const send = (type: string, x: number, y: number) =>
    picture.dispatchEvent(
      new PointerEvent(type, {
        bubbles: true,
        pointerId: 1,
        pointerType: 'mouse',
        isPrimary: true,
        button: type === 'pointermove' ? -1 : 0,
        buttons: type === 'pointerup' ? 0 : 1,
        clientX: left + x * width,
        clientY: top + y * height,
      }),
    )
  for (let frame = first; frame < first + frames; frame += 1) {
    const key = String((frame % slots) + 1)
    picture.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }))
    for (let stroke = 0; stroke < aFrame; stroke += 1) {
      // Steps that share no factor with the picture's sides meet ever other beads.
      const turn = frame * aFrame + stroke
      const [x, y] = [0.2 + 0.6 * ((turn * 0.618_034) % 1), 0.3 + 0.4 * ((turn * 0.754_878) % 1)]
      send('pointerdown', x, y)
      send('pointermove', x + 0.02, y + 0.01)
      send('pointerup', x + 0.02, y + 0.01)
    }
    await new Promise((done) => requestAnimationFrame(done))
  }
}
