import type { Page } from '@playwright/test'
import { buildStudio } from '../../scripts/build.ts'
import { openDisplay } from '../../scripts/display.ts'
import { ask } from '../e2e/ask.ts'
import { openStudio, type Studio } from '../e2e/studio.ts'
import { drawStrokes } from './draw-strokes.ts'
import { loomPanel } from './loom-panel.ts'
import { proportionalMemoryMiB } from './proportional-memory.ts'
import { medianOf, type Row } from './row.ts'

export const name = 'Memory after 10,000 strokes beside the same table before'

const STROKES = 10_000
const WARM_UP = 200
const SETTLES_MS = 4_000
const READINGS = 5
const target = 1.2

/** Strokes drawn on the real table, each kept in the store; then all of them taken back. */
export async function run(): Promise<Row[]> {
  await buildStudio()
  const display = await openDisplay()
  if (display.name !== undefined) process.env['DISPLAY'] = display.name
  const studio = await openStudio({ sample: true })
  try {
    return await measure(studio)
  } finally {
    await studio.close()
    display.close()
  }
}

async function measure(studio: Studio): Promise<Row[]> {
  const { page } = studio
  const { id } = await ask(page, 'designs.save', loomPanel(25_000, 200))
  await page.evaluate((place) => {
    location.hash = place
  }, `#/designs/${id}/draw`)
  await page.locator('.bead-picture-frame').waitFor()
  const first = await ask(page, 'drafts.open', { designId: id })
  const kept = async () => (await ask(page, 'drafts.open', { designId: id })).position
  await drawStrokes(page, WARM_UP, kept)
  const before = await memoryOf(studio)
  const drawing = await timed(() => drawStrokes(page, WARM_UP + STROKES, kept))
  const after = await memoryOf(studio)
  const undoing = await timed(() => undoAll(page, kept))
  const last = await ask(page, 'drafts.open', { designId: id })
  if (JSON.stringify(last.body) !== JSON.stringify(first.body)) {
    throw new Error('All strokes were taken back, and the drawing is not what it was')
  }
  const baseline = 'table of 25,000 beads: memory (PSS)'
  return [
    { measure: baseline, n: READINGS, ...medianOf(before, 'MiB') },
    {
      measure: 'the same after 10,000 strokes: memory (PSS)',
      n: READINGS,
      ...medianOf(after, 'MiB'),
      baseline,
      target,
    },
    { measure: '10,000 strokes drawn and kept', n: 1, ...medianOf([drawing]) },
    { measure: '10,200 strokes taken back, one by one', n: 1, ...medianOf([undoing]) },
  ]
}

/** Memory of the whole app, after garbage was collected and things have settled. */
async function memoryOf({ app, page }: Studio): Promise<readonly number[]> {
  const session = await page.context().newCDPSession(page)
  const readings: number[] = []
  for (let reading = 0; reading < READINGS; reading += 1) {
    await session.send('HeapProfiler.collectGarbage')
    await page.waitForTimeout(SETTLES_MS / READINGS)
    readings.push(proportionalMemoryMiB(app.process().pid ?? 0))
  }
  await session.detach()
  return readings
}

async function undoAll(page: Page, kept: () => Promise<number>): Promise<void> {
  await page.locator('.bead-picture-frame').focus()
  for (let position = await kept(); position > 0; position = await kept()) {
    await page.evaluate(async (presses) => {
      for (let press = 0; press < presses; press += 1) {
        const key = { key: 'z', code: 'KeyZ', ctrlKey: true, bubbles: true, cancelable: true }
        document.activeElement?.dispatchEvent(new KeyboardEvent('keydown', key))
        if (press % 100 === 0) await new Promise((done) => requestAnimationFrame(done))
      }
    }, position)
    await page.waitForTimeout(300)
  }
}

async function timed(act: () => Promise<void>): Promise<number> {
  const start = performance.now()
  await act()
  return performance.now() - start
}
