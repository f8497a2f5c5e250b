import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

import { expect, type Page, test } from '@playwright/test'
import { ask } from './ask.ts'
import { axeFaults, contrastFaults } from './axe-faults.ts'
import { goTo } from './go-to.ts'
import { beginEmpty } from './journey/begin.ts'
import { bringInCharts } from './journey/bring-in-charts.ts'
import { bringInStock } from './journey/bring-in-stock.ts'
import { choose, openRoom, press, take, write } from './journey/controls.ts'
import { readByCore, tidewrack } from './journey/design-by-core.ts'
import { format } from './journey/job.ts'
import { figure, lastToast, table } from './journey/screen.ts'
import { openStudio, type Studio } from './studio.ts'

const views = ['beads', 'thread', 'passes', 'holes', 'words', 'steps'] as const

async function openDesign(page: Page, name: string, view: string = 'beads'): Promise<string> {
  const { designs } = await ask(page, 'designs.list', { search: name })
  const id = designs[0]?.id ?? ''
  await goTo(page, `#/designs/${id}/${view}`)
  await page.getByRole('heading', { level: 1, name: designs[0]?.name ?? name }).waitFor()
  return id
}

/** How many pixels of the beads' canvas are painted. */
function paintedPixels(page: Page): Promise<number> {
  return page
    .locator('.bead-picture canvas')
    .first()
    .evaluate((element) => {
      const canvas = element as HTMLCanvasElement
      const { data } =
        canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height) ?? {}
      let painted = 0
      for (let at = 3; at < (data?.length ?? 0); at += 4) if (data?.[at] !== 0) painted += 1
      return painted
    })
}

test('two charts come in as the core reads them, take beads from stock, and are there again', async () => {
  test.slow()
  const userDataDir = mkdtempSync(join(tmpdir(), 'tallystrand-designs-'))
  let studio = await openStudio({ userDataDir })
  await beginEmpty(studio.page)
  await bringInStock(studio)
  const findings = await bringInCharts(studio)
  expect(findings.length).toBeGreaterThan(10)
  for (const { what, screen, core, store } of findings) {
    if (core !== undefined) expect(screen, what).toBe(core)
    if (store !== undefined) expect(screen, what).toBe(store)
  }
  await openDesign(studio.page, tidewrack.name)
  const before = await table(studio.page, 'Beads by slot')
  await studio.close()

  studio = await openStudio({ userDataDir })
  const { page } = studio
  await openDesign(page, tidewrack.name)
  const reading = readByCore(tidewrack)
  expect(await figure(page, 'Beads a pair')).toBe(format.count(reading.beads))
  expect(await figure(page, 'Thread in it')).toBe(format.thread(reading.thread.inPieceMm.value))
  expect(await figure(page, 'Time at the bench')).toBe(format.duration(reading.labour.totalS.value))
  expect(await table(page, 'Beads by slot')).toEqual(before)
  await expect.poll(() => paintedPixels(page)).toBeGreaterThan(10_000)
  await studio.close()
  rmSync(userDataDir, { recursive: true, force: true })
})

test('a chart that cannot be read is refused line by line, and nothing is written', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'tallystrand-chart-'))
  const file = join(folder, 'torn-chart.csv')
  writeFileSync(file, '# brick; offset in half beads; slots\n0;A,A\n1;A,?,A\n0;A,9\n')
  const { page, answerDialogs, close } = await openStudio({ sample: true })
  const { designs } = await ask(page, 'designs.list', {})
  await goTo(page, '#/designs/bring-in')
  answerDialogs(file)
  await press(page, 'Choose a file')
  await expect(page.getByText('Line 3', { exact: true })).toBeVisible()
  await expect(page.getByText('Line 4', { exact: true })).toBeVisible()
  await expect(page.getByRole('button', { name: 'Add this design' })).toHaveCount(0)
  expect((await ask(page, 'designs.list', {})).designs.length).toBe(designs.length)
  await close()
  rmSync(folder, { recursive: true, force: true })
})

test.describe('with the sample', () => {
  let studio: Studio
  test.beforeAll(async () => {
    studio = await openStudio({ sample: true })
    await studio.page.getByRole('navigation', { name: 'Rooms' }).waitFor()
  })
  test.afterAll(() => studio.close())

  test('the gallery finds, orders, puts away, brings back and copies designs', async () => {
    const { page } = studio
    await openRoom(page, 'Designs')
    const names = () => page.locator('.design-card-name').allInnerTexts()
    await choose(page, 'Order', 'Most earned')
    const { designs } = await ask(page, 'designs.list', {})
    const byTaken = designs.toSorted(
      (a, b) => b.takenMinor - a.takenMinor || a.name.localeCompare(b.name),
    )
    await expect.poll(names).toEqual(byTaken.map(({ name }) => name))
    await page.getByLabel('Find a design').fill('samphire')
    await expect.poll(names).toEqual(['Samphire studs'])
    await page.getByLabel('Find a design').fill('')
    await choose(page, 'Tag', 'bracelet')
    await expect
      .poll(async () => (await names()).toSorted())
      .toEqual(['Mudflat band', 'Sluice cuff'])
    await choose(page, 'Tag', 'Every tag')

    await press(page, 'Put away Sluice cuff')
    await expect.poll(names).not.toContain('Sluice cuff')
    await take(page, 'Put away')
    await press(page, 'Bring back Sluice cuff')
    await take(page, 'In use')
    await expect.poll(names).toContain('Sluice cuff')

    await press(page, 'Duplicate Lantern drop earrings')
    await page.getByRole('heading', { level: 1, name: 'Lantern drop earrings copy' }).waitFor()
    const [original, copy] = (await ask(page, 'designs.list', { search: 'Lantern' })).designs
    const [a, b] = await Promise.all(
      [original, copy].map((one) => ask(page, 'designs.read', { id: one?.id ?? '' })),
    )
    expect(b?.body).toEqual(a?.body)
    expect(b?.colourways.map(({ name, materials }) => ({ name, materials }))).toEqual(
      a?.colourways.map(({ name, materials }) => ({ name, materials })),
    )
  })

  test('the thread is stepped and scrubbed by keys, and each step is told in words', async () => {
    const { page } = studio
    await openDesign(page, 'Tidewrack', 'steps')
    const steps = await table(page, 'Steps for the bench')
    await page.getByRole('link', { name: 'Thread’s route' }).click()
    const slider = page.getByRole('slider', { name: 'How far the thread is laid' })
    await slider.focus()
    await page.keyboard.press('Home')
    await expect(page.getByText('Before the first step')).toBeVisible()
    await page.locator('.bead-picture-frame').focus()
    for (let at = 0; at < 3; at += 1) {
      await page.keyboard.press('.')
      await expect(page.locator('.thread-strip-words')).toContainText(`Step ${at + 1} of`)
      await expect(page.locator('.thread-strip-words')).toContainText(
        steps[at]?.['What to do'] ?? '',
      )
    }
    await page.keyboard.press(',')
    await expect(page.locator('.thread-strip-words')).toContainText('Step 2 of')
    await page.keyboard.press(' ')
    await expect(page.getByRole('button', { name: 'Pause' })).toBeVisible()
    // It plays on by itself, so any later step will do: a busy machine may look past the next one.
    await expect(page.locator('.thread-strip-words')).toContainText(/Step ([3-9]|\d{2,}) of/)
    await page.keyboard.press(' ')
    await expect(page.getByRole('button', { name: 'Play' })).toBeVisible()
  })

  test('passes and holes are told for each bead, as the core counts them', async () => {
    const { page } = studio
    const id = await openDesign(page, 'Tidewrack', 'passes')
    const { body } = await ask(page, 'designs.read', { id })
    const read = await ask(page, 'engine.read', { body })
    const counts = new Map<number, number>()
    for (const passes of read.parts.flatMap((part) => part.passes)) {
      counts.set(passes, (counts.get(passes) ?? 0) + 1)
    }
    const legend = page.getByRole('list', { name: 'Passes of the thread through a bead' })
    for (const [passes, beads] of counts) {
      await expect(
        legend.getByRole('listitem').filter({ hasText: new RegExp(`^${passes}`) }),
      ).toContainText(format.counted(beads, 'bead'))
    }
    await page.locator('.bead-picture-frame').focus()
    await page.keyboard.press('n')
    await expect(page.locator('.design-told')).toContainText(
      `Row 1, bead 1: A wet slate: ${format.counted(read.parts[0]?.passes[0] ?? 0, 'pass', 'passes')}`,
    )
  })

  test('another start row makes a new version, and the one before can be taken up again', async () => {
    const { page } = studio
    const id = await openDesign(page, 'Samphire')
    await press(page, 'Working')
    await write(page, 'Start row if you like', '4')
    await press(page, 'Save as a new version')
    await lastToast(page, 'Saved version 2')
    const saved = await ask(page, 'designs.read', { id })
    expect(saved.version).toBe(2)
    expect(saved.body.parts[0]).toMatchObject({ route: { startRow: 3 } })
    await press(page, 'Version 2')
    await press(page, 'Look at version 1')
    await page.keyboard.press('Escape')
    await expect(page.getByText('You are looking at version 1')).toBeVisible()
    await press(page, 'Take this one up again')
    await expect(page.getByRole('button', { name: 'Version 3' })).toBeVisible()
    expect((await ask(page, 'designs.read', { id })).body.parts[0]).toMatchObject({ route: {} })
  })

  for (const theme of ['light', 'dark'] as const) {
    test(`every page of the room is free of faults that axe knows, ${theme}`, async () => {
      test.slow()
      const { page } = studio
      await page.evaluate((chosen) => {
        document.documentElement.dataset['theme'] = chosen
      }, theme)
      // The theme changes colours only.
      const faults = theme === 'light' ? axeFaults : contrastFaults
      const found: string[] = []
      const look = async (where: string) => {
        for (const fault of await faults(page)) found.push(`${where}: ${fault}`)
      }
      for (const id of ['', '/new', '/bring-in']) {
        await goTo(page, `#/designs${id}`)
        await expect(page.locator('[aria-busy="true"]')).toHaveCount(0)
        await look(`designs${id}`)
      }
      for (const view of views) {
        await openDesign(page, 'Reedbed', view)
        await look(view)
      }
      for (const sheet of ['Choose beads', 'Working', 'Details', 'Version 1']) {
        await press(page, sheet)
        await page.getByRole('dialog').waitFor()
        await look(sheet)
        await page.keyboard.press('Escape')
        await expect(page.getByRole('dialog')).toHaveCount(0)
      }
      expect(found).toEqual([])
    })
  }
})
