import type { Page } from '@playwright/test'
import { buildStudio } from '../../scripts/build.ts'
import { openDisplay } from '../../scripts/display.ts'
import { ask } from '../e2e/ask.ts'
import { openStudio } from '../e2e/studio.ts'
import { frameTimes } from './frame-times.ts'
import { loomPanel } from './loom-panel.ts'
import { medianOf, type Row } from './row.ts'

export const name = 'Frames while panning and painting, beside plain rectangles on a bare canvas'

const target = 1.5
const sizes = [
  { beads: 1_000, columns: 40 },
  { beads: 25_000, columns: 200 },
  { beads: 250_000, columns: 625 },
] as const

/** The drawing table in the real app against a bare canvas in the same window, by turns. */
export async function run(): Promise<Row[]> {
  await buildStudio()
  const display = await openDisplay()
  if (display.name !== undefined) process.env['DISPLAY'] = display.name
  const studio = await openStudio({ sample: true })
  try {
    const rows: Row[] = []
    for (const size of sizes) rows.push(...(await measureSize(studio.page, size)))
    return rows
  } finally {
    await studio.close()
    display.close()
  }
}

type Size = Readonly<{ beads: number; columns: number }>

async function measureSize(page: Page, { beads, columns }: Size): Promise<Row[]> {
  await openTable(page, { beads, columns })
  const bare = await frameTimes(page, { kind: 'rectangles', count: beads, columns })
  const painting = await frameTimes(page, { kind: 'drag', button: 0 })
  const panning = await frameTimes(page, { kind: 'drag', button: 1 })
  const count = beads.toLocaleString('en')
  const baseline = `${count} plain rectangles`
  const rows = (measure: string, { medianMs, slowMs }: typeof bare, against?: string): Row[] =>
    [
      { measure: `${measure}: median frame`, ...medianOf(medianMs) },
      { measure: `${measure}: 95 of 100 frames within`, ...medianOf(slowMs) },
    ].map((row, at) => ({
      n: medianMs.length,
      ...row,
      ...(against === undefined
        ? {}
        : {
            target,
            baseline: `${against}: ${at === 0 ? 'median frame' : '95 of 100 frames within'}`,
          }),
    }))
  return [
    ...rows(baseline, bare),
    ...rows(`panning ${count} beads`, panning, baseline),
    ...rows(`painting ${count} beads`, painting, baseline),
  ]
}

async function openTable(page: Page, { beads, columns }: Size): Promise<void> {
  const { id } = await ask(page, 'designs.save', loomPanel(beads, columns))
  await page.evaluate((place) => {
    location.hash = place
  }, `#/designs/${id}/draw`)
  await page.locator('.bead-picture-frame').waitFor()
  await page.waitForTimeout(1_500)
}
