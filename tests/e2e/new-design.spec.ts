import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

import { expect, type Page, test } from '@playwright/test'
import { SAMPLE_WORDS } from '../../renderer/rooms/designs/new/sample-words.ts'
import { ways } from '../../renderer/rooms/designs/new/ways.ts'
import { toChartJson } from '../../shared-core/chart/chart-json.ts'
import { blankChart } from '../../shared-core/chart/outlines/blank-chart.ts'
import { fringeLengths } from '../../shared-core/chart/outlines/fringe-fan.ts'
import { readStrandBeads } from '../../shared-core/stitches/strand/strand-beads.ts'
import { parseWordChart } from '../../shared-core/words/parse-word-chart.ts'
import { png, pngHeaderBytes } from '../shared-core/colour/picture/file/picture-bytes.ts'
import { ask, latestStep } from './ask.ts'
import { axeFaults, contrastFaults } from './axe-faults.ts'
import { badPictures, LAMP, lamp, NIGHT, strangePictures } from './bad-pictures.ts'
import { goTo } from './go-to.ts'
import { choose, press, take, write } from './journey/controls.ts'
import { openStudio, type Studio } from './studio.ts'

// Every way to begin a design, in the real app: what is shown is what is saved, and nothing bad gets in.

test.describe.configure({ mode: 'default' })

let studio: Studio
test.beforeAll(async () => {
  studio = await openStudio({ sample: true })
  await studio.page.getByRole('navigation', { name: 'Rooms' }).waitFor()
})
test.afterAll(() => studio.close())

/** Opens a way from the page that shows them all. */
async function begin(page: Page, title: string): Promise<void> {
  await goTo(page, '#/designs/new')
  await page.getByRole('heading', { level: 1, name: 'New design' }).waitFor()
  await page.getByRole('link', { name: title, exact: true }).click()
  await expect(page.getByRole('heading', { level: 1 })).not.toHaveText('New design')
}

/** Names the design, adds it and gives it as it was saved. */
async function add(page: Page, name: string) {
  await write(page, 'Name', name)
  await press(page, 'Add this design')
  await expect.poll(() => saved(page, name)).toHaveLength(1)
  const [row] = await saved(page, name)
  return ask(page, 'designs.read', { id: row?.id ?? '' })
}

async function saved(page: Page, search: string) {
  return (await ask(page, 'designs.list', { search })).designs
}

function fileOf(name: string, bytes: Uint8Array | string): string {
  const folder = test.info().outputPath('files')
  mkdirSync(folder, { recursive: true })
  const file = join(folder, name)
  writeFileSync(file, bytes)
  return file
}

async function chooseFile(file: string): Promise<void> {
  studio.answerDialogs(file)
  await press(studio.page, /^Choose (a|another) file$/)
}

test('a blank chart is as large as was typed, and opens where it is drawn', async () => {
  const { page } = studio
  await begin(page, 'Blank')
  await write(page, 'Width', 'as wide as my hand')
  await press(page, 'Add this design')
  await expect(page.getByLabel('Width', { exact: true })).toBeFocused()
  await write(page, 'Width', '1,5 in')
  await expect(page.getByText('= 38,1 mm')).toBeVisible()
  await write(page, 'Height', '24 rows')
  await expect(page.getByText('24 beads across and 24 rows down')).toBeVisible()
  await take(page, 'Stepped to the right')
  const design = await add(page, 'Ebb blank')
  const core = blankChart({ stitch: 'brick', columns: 24, rows: 24, edge: 'stepped' })
  expect(core.ok && toChartJson(core.value)).toEqual(panelOf(design).chart)
  await expect(page).toHaveURL(new RegExp(`#/designs/${design.id}/draw$`))
})

type Design = Awaited<ReturnType<typeof add>>

function panelOf({ body }: Design) {
  const [panel] = body.parts
  if (panel?.kind !== 'panel') throw new Error('The design has no panel.')
  return panel
}

test('a fringe hangs from the last row, graded as the core grades it', async () => {
  const { page } = studio
  await begin(page, 'Outline')
  await choose(page, 'Shape', 'Fringe fan')
  await write(page, 'Beads across', '9')
  await page.getByRole('slider', { name: 'Rows of the top' }).focus()
  await page.keyboard.press('Home')
  for (let at = 0; at < 4; at += 1) await page.keyboard.press('ArrowRight')
  await expect(page.getByLabel('Rows of the top', { exact: true })).toHaveValue('5')
  await write(page, 'Longest strand, beads', '14')
  await write(page, 'Shortest strand, beads', '5')
  await write(page, 'Longest strand, beads', '900')
  await expect(page.getByText('Give a whole number from 1 to 120.')).toBeVisible()
  await write(page, 'Longest strand, beads', '14')
  const { body } = await add(page, 'Ebb fringe')
  const strands = body.parts.flatMap((part) => (part.kind === 'strand' ? [part] : []))
  const lengths = strands.flatMap(({ beads, copies }) =>
    Array.from({ length: copies }, () => readStrandBeads(beads)?.length),
  )
  const order = { places: 9, shortest: 5, longest: 14, grade: 'point', tip: 1 } as const
  expect(lengths).toEqual(fringeLengths(order))
  expect(new Set(strands.map(({ anchor }) => anchor?.row))).toEqual(new Set([4]))
})

test('a picture is cropped, seen in beads of stock, and fills its slots with them', async () => {
  test.slow()
  const { page } = studio
  await begin(page, 'Picture')
  await chooseFile(fileOf('harbour-lamp.png', lamp))
  const told = page.getByText(/^Mean colour difference/)
  await expect(told).toBeVisible()
  const before = await told.textContent()
  await page.getByRole('button', { name: 'The part that is used' }).focus()
  await page.keyboard.press('Control+Shift+ArrowLeft')
  await expect(page.getByLabel('Crop width', { exact: true })).toHaveValue('50')
  await write(page, 'Beads at most', '1')
  await expect(told).not.toHaveText(before ?? '')
  await write(page, 'Beads at most', '3')
  await write(page, 'Width', '24 beads')
  await take(page, 'Scattered')
  await expect(page.getByRole('button', { name: 'Add this design' })).toBeEnabled()
  await expect(page.getByRole('columnheader', { name: 'Free in stock' })).toBeVisible()
  const design = await add(page, 'Harbour lamp picture')
  const { materials } = await ask(page, 'materials.list', { kind: 'bead' })
  const filled = design.colourways[0]?.materials ?? {}
  expect(design.body.palette.length).toBeGreaterThan(1)
  for (const { label, name, colourHex } of design.body.palette) {
    const bead = materials.find(({ id }) => id === filled[`slot:${label}`])
    expect(bead).toMatchObject({ name, colourHex })
  }
  expect(panelOf(design).chart.rows.length).toBeGreaterThan(10)
  await ask(page, 'history.undo', {})
  expect(await saved(page, 'Harbour lamp picture')).toEqual([])
})

test('a picture that is dropped is taken too, and a part of it is drawn by mouse', async () => {
  const { page } = studio
  await begin(page, 'Picture')
  await page.evaluate((bytes) => {
    const carried = new DataTransfer()
    carried.items.add(new File([Uint8Array.from(bytes)], 'dropped.png', { type: 'image/png' }))
    const drop = new DragEvent('drop', { bubbles: true, cancelable: true, dataTransfer: carried })
    document.querySelector('.file-place')?.dispatchEvent(drop)
  }, Array.from(lamp))
  await expect(page.getByText('From dropped.png')).toBeVisible()
  await expect(page.getByText(/^Mean colour difference/)).toBeVisible()
  const {
    x = 0,
    y = 0,
    width = 0,
    height = 0,
  } = (await page.locator('.crop-frame').boundingBox()) ?? {}
  await page.mouse.move(x + 0.205 * width, y + 0.255 * height)
  await page.mouse.down()
  await page.mouse.move(x + 0.695 * width, y + 0.745 * height, { steps: 3 })
  await page.mouse.up()
  // Of 60 by 40 pixels: from inside the 13th column and 11th row to inside the 42nd and 30th.
  const sides = ['Crop from left', 'Crop from top', 'Crop width', 'Crop height']
  for (const [at, value] of [12, 10, 30, 20].entries()) {
    await expect(page.getByLabel(sides[at] ?? '', { exact: true })).toHaveValue(String(value))
  }
  await press(page, /^Whole picture/)
  await expect(page.getByLabel('Crop width', { exact: true })).toHaveValue('60')
})

test('a PNG of one pixel a bead becomes that chart, its colours snapped to stock when asked', async () => {
  const { page } = studio
  await begin(page, 'Grid file')
  const pixels = png({ width: 3, height: 3 }, (x, y) => {
    if (x === 2 && y === 0) return [0, 0, 0, 0]
    return x === y ? LAMP : NIGHT
  })
  await chooseFile(fileOf('crossing.png', pixels))
  await choose(page, 'Stitch', 'Square stitch')
  await expect(page.getByText('read as square stitch: 8 beads in 2 colours')).toBeVisible()
  await page.getByLabel('Take the nearest beads from stock').check()
  await expect(page.getByText('2 slots filled from stock already.')).toBeVisible()
  const design = await add(page, 'Crossing grid')
  expect(panelOf(design).chart).toEqual({
    stitch: 'square',
    rows: [
      { start: 0, cells: '1B 1A' },
      { start: 0, cells: '1A 1B 1A' },
      { start: 0, cells: '2A 1B' },
    ],
  })
  expect(Object.keys(design.colourways[0]?.materials ?? {})).toEqual(['slot:A', 'slot:B'])
})

test('a word chart tells the line it cannot read, and is drawn once that is mended', async () => {
  const { page } = studio
  await begin(page, 'Word chart')
  const text = page.getByLabel('Rows in words', { exact: true })
  await expect(page.getByText('This is the sample text, drawn.')).toBeVisible()
  await press(page, 'Add this design')
  await expect(text).toBeFocused()
  await expect(text).toHaveAccessibleDescription(/Write or paste the first row\.$/)
  await text.pressSequentially('1: 2A 1B')
  await expect(page.getByText(/^Read as brick stitch/)).toBeVisible()
  await expect(text).toBeFocused()
  await text.fill(SAMPLE_WORDS.replace('Row 5 (L) [decrease ½ at both ends]: (1)A', 'Row 5: (1)A*'))
  await expect(page.getByText(/“\(1\)A\*”/)).toBeVisible()
  await expect(page.locator('.lined-marked')).toHaveText('! 5')
  await press(page, 'Line 5')
  await expect(text).toBeFocused()
  expect(
    await text.evaluate((area: HTMLTextAreaElement) =>
      area.value.slice(area.selectionStart, area.selectionEnd),
    ),
  ).toContain('Row 5: (1)A*')
  await text.fill(SAMPLE_WORDS)
  await expect(page.locator('.lined-marked')).toHaveCount(0)
  await expect(page.getByText('Read as brick stitch: 49 beads in 13 rows.')).toBeVisible()
  await write(page, 'Name of slot B', 'sea foam')
  const design = await add(page, 'Ebb words')
  expect(design.body.palette.map(({ name }) => name)).toContain('sea foam')
  const core = parseWordChart(SAMPLE_WORDS, { stitch: 'brick' })
  expect(core.ok && toChartJson(core.value.chart)).toEqual(panelOf(design).chart)
})

test('every bad picture gets a sentence, and nothing is written', async () => {
  const { page } = studio
  const before = await latestStep(page)
  await begin(page, 'Picture')
  for (const [name, bytes, says] of badPictures) {
    await chooseFile(fileOf(name, bytes))
    await expect(page.getByRole('alert')).toContainText(name)
    await expect(page.getByRole('alert'), name).toContainText(says)
    await expect(page.getByRole('button', { name: 'Add this design' })).toHaveCount(0)
  }
  for (const [name, bytes, says] of strangePictures) {
    await chooseFile(fileOf(name, bytes))
    // Two that are alike stand one after the other: what is said must be said of this one.
    await expect(page.getByText(`From ${name}.`)).toBeVisible()
    await expect(page.getByText(says), name).toBeVisible()
    await expect(page.getByText(/^Mean colour difference/)).toBeVisible()
  }
  const clear = png({ width: 8, height: 6 }, () => [0, 0, 0, 0])
  await chooseFile(fileOf('clear.png', clear))
  await expect(page.getByText('Everything in this part is see-through')).toBeVisible()
  await begin(page, 'Grid file')
  const colourful = png({ width: 90, height: 2 }, (x, y) => [x, 200 - x, y * 90, 255])
  await chooseFile(fileOf('photo.png', colourful))
  await expect(page.getByRole('alert')).toContainText('is not one pixel a bead')
  await chooseFile(fileOf('large.png', pngHeaderBytes({ width: 6_000, height: 6_000 })))
  await expect(page.getByRole('alert')).toContainText('A grid of 6000 by 6000 pixels')
  await chooseFile(fileOf('bytes.csv', Uint8Array.of(0, 1, 2, 3, 44, 65)))
  await expect(page.getByText('bytes.csv cannot be taken as it is')).toBeVisible()
  await expect(page.locator('.chart-faults li')).toHaveCount(1)
  expect(await latestStep(page)).toBe(before)
})

for (const theme of ['light', 'dark'] as const) {
  test(`every way is free of faults that axe knows, ${theme}`, async () => {
    test.slow()
    const { page } = studio
    await page.evaluate((chosen) => {
      document.documentElement.dataset['theme'] = chosen
    }, theme)
    const faults = theme === 'light' ? axeFaults : contrastFaults
    const found: string[] = []
    const look = async (where: string) => {
      for (const fault of await faults(page)) found.push(`${where}: ${fault}`)
    }
    await goTo(page, '#/designs/new')
    await page.getByRole('heading', { level: 1, name: 'New design' }).waitFor()
    await look('all')
    for (const { title } of ways) {
      await begin(page, title)
      await look(title)
    }
    await page.getByLabel('Rows in words', { exact: true }).fill('Row 1: what')
    await page.locator('.lined-marked').waitFor()
    await look('words with a fault')
    await begin(page, 'Picture')
    await chooseFile(fileOf('harbour-lamp.png', lamp))
    await page.getByText(/^Mean colour difference/).waitFor()
    await look('picture in beads')
    expect(found).toEqual([])
  })
}
