import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

import { expect, type Page, test } from '@playwright/test'
import { fromChartJson } from '../../shared-core/chart/chart-json.ts'
import { readGridFile } from '../../shared-core/chart/read-grid-file.ts'
import { ask } from './ask.ts'
import { axeFaults, contrastFaults } from './axe-faults.ts'
import { goTo } from './go-to.ts'
import { press, take } from './journey/controls.ts'
import { openStudio, type Studio } from './studio.ts'

let studio: Studio
let page: Page
let folder: string

test.beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'tallystrand-print-'))
  studio = await openStudio({ sample: true })
  page = studio.page
})

test.afterAll(async () => {
  await studio.close()
  rmSync(folder, { recursive: true, force: true })
})

/** Opens a design's page on its way out by the button on its own page. */
async function openPrint(name: string): Promise<string> {
  const { designs } = await ask(page, 'designs.list', { search: name })
  const id = designs[0]?.id ?? ''
  await goTo(page, `#/designs/${id}`)
  await page.getByRole('link', { name: 'Print and export' }).click()
  // The first sheet begins the thread that makes it and opens its fonts.
  await expect(page.getByRole('img', { name: /^Page 1 of / })).toBeVisible({ timeout: 60_000 })
  return id
}

/** Presses a button that saves a file, answers its dialog, and gives the file. */
async function saved(button: string, fileName: string): Promise<Buffer> {
  const path = join(folder, fileName)
  studio.answerDialogs(path)
  await press(page, button)
  await expect(page.getByText(`Saved ${fileName} in`)).toBeVisible({ timeout: 60_000 })
  expect(studio.unusedAnswers()).toEqual([])
  return readFileSync(path)
}

/** Pages as painted: how many pixels of the first are neither white nor the picture's ground. */
function inkedPixels(): Promise<number> {
  return page
    .locator('canvas.print-paper')
    .first()
    .evaluate((element) => {
      const canvas = element as HTMLCanvasElement
      const brush = canvas.getContext('2d') as CanvasRenderingContext2D
      const { data } = brush.getImageData(0, 0, canvas.width, canvas.height)
      let inked = 0
      for (let at = 0; at < data.length; at += 4) if ((data[at] ?? 255) < 160) inked += 1
      return inked
    })
}

test.describe.configure({ mode: 'serial' })

test('a pattern sheet is seen page by page and saved as the PDF of those pages', async () => {
  await openPrint('Sluice cuff')
  const pages = await page
    .getByRole('listitem')
    .filter({ hasText: /^Page \d+ of / })
    .count()
  await expect.poll(inkedPixels).toBeGreaterThan(5_000)
  const pdf = (await saved('Save PDF', 'cuff.pdf')).toString('latin1')
  expect(pdf.startsWith('%PDF-')).toBe(true)
  expect(pdf.match(/\/Type \/Page\b/g)).toHaveLength(pages)
})

test('terms for buyers are asked for and change the sheet; the maker’s own sheet has none', async () => {
  await expect(page.getByLabel('What the reader may do with it')).toHaveCount(0)
  await take(page, 'For sale')
  await page.getByLabel('What the reader may do with it').fill('Sell up to 50 pieces.')
  await take(page, 'Letter')
  const shape = page.locator('canvas.print-paper').first()
  await expect
    .poll(() =>
      shape.evaluate(({ offsetHeight, offsetWidth }: HTMLElement) => offsetHeight / offsetWidth),
    )
    .toBeCloseTo(279.4 / 215.9, 1)
  await page.getByLabel('What the reader may do with it').fill('x'.repeat(501))
  await expect(page.getByText('the sheet has room for 500')).toBeVisible()
  // Nothing is made while a field is at fault.
  await page.getByLabel('What the reader may do with it').fill('Sell up to 50 pieces.')
})

test('the beads are saved as a PNG of the size that was promised', async () => {
  await take(page, 'Small')
  const words = (await page.getByText(/^8 pixels a bead, /).textContent()) ?? ''
  const [, width, height] = /([\d\u00a0]+) × ([\d\u00a0]+) in all/.exec(words) ?? []
  const png = await saved('Picture of the beads (PNG)', 'cuff.png')
  expect(png.subarray(0, 8).toString('hex')).toBe('89504e470d0a1a0a')
  expect(png.readUInt32BE(16)).toBe(Number(width?.replace('\u00a0', '')))
  expect(png.readUInt32BE(20)).toBe(Number(height?.replace('\u00a0', '')))
})

test('the chart is saved as an SVG that a browser draws', async () => {
  const svg = (await saved('Chart to scale up (SVG)', 'cuff.svg')).toString('utf8')
  const parsed = await page.evaluate((text) => {
    const { documentElement: root } = new DOMParser().parseFromString(text, 'image/svg+xml')
    return {
      name: root.nodeName,
      beads: root.querySelectorAll('use').length,
      faults: root.querySelectorAll('parsererror').length,
    }
  }, svg)
  expect(parsed).toMatchObject({ name: 'svg', faults: 0 })
  // Every bead once, and its symbol.
  expect(parsed.beads).toBeGreaterThanOrEqual(2 * 2112)
})

test('the grid that is saved is read back as the same chart', async () => {
  const { designs } = await ask(page, 'designs.list', { search: 'Sluice cuff' })
  const { body } = await ask(page, 'designs.read', { id: designs[0]?.id ?? '' })
  const text = (await saved('Chart as a grid (CSV)', 'cuff.csv')).toString('utf8')
  const read = readGridFile(text, { fileName: 'cuff.csv' })
  const panel = body.parts.find((part) => part.kind === 'panel')
  if (!read.ok || panel === undefined) throw new Error('the grid was not read back')
  expect(read.value.chart).toEqual(fromChartJson(panel.chart))
})

test('words and counts are saved as plain text and as a table', async () => {
  const words = (await saved('Word chart (text)', 'cuff.txt')).toString('utf8')
  expect(words).toContain('Sluice cuff')
  expect(words).toMatch(/Row 96 /)
  const counts = (await saved('Counts and grams (CSV)', 'counts.csv')).toString('utf8')
  const lines = counts.trim().split('\r\n')
  expect(lines[0]).toContain('"Slot"')
  const beads = lines.slice(1).map((line) => Number(/"(\d+)"[;,]"[\d.,]+"$/.exec(line)?.[1]))
  expect(beads.reduce((sum, count) => sum + count, 0)).toBe(2112)
})

test('a closed dialog saves nothing and says nothing', async () => {
  studio.answerDialogs(null)
  await press(page, 'Save PDF')
  await expect(page.getByText('Making the sheet…')).toHaveCount(0)
  await expect.poll(() => studio.unusedAnswers()).toEqual([])
  await expect(page.getByRole('alert')).toHaveCount(0)
})

test('axe finds nothing wrong, by day and by lamplight', async () => {
  expect(await axeFaults(page)).toEqual([])
  await page.evaluate(() => {
    document.documentElement.dataset['theme'] = 'dark'
  })
  expect(await contrastFaults(page)).toEqual([])
})
