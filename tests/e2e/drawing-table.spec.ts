import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

import { expect, type Page, test } from '@playwright/test'
import { ask } from './ask.ts'
import { axeFaults, contrastFaults } from './axe-faults.ts'
import { goTo } from './go-to.ts'
import { beginEmpty } from './journey/begin.ts'
import { kept, keys, lay, newBlank, picture, place, rowsOf, told } from './on-the-table.ts'
import { openStudio, type Studio } from './studio.ts'

/** Drags the mouse between two shares of the picture. */
async function drag(page: Page, from: readonly [number, number], to: readonly [number, number]) {
  const box = await picture(page).boundingBox()
  if (box === null) throw new Error('expected the picture on the page')
  const at = ([x, y]: readonly [number, number]) =>
    [box.x + x * box.width, box.y + y * box.height] as const
  await page.mouse.move(...at(from))
  await page.mouse.down()
  await page.mouse.move(...at(to), { steps: 4 })
  await page.mouse.up()
}

test('a design is drawn from nothing, undone to nothing, and is there again after the app was closed', async () => {
  test.slow()
  const userDataDir = mkdtempSync(join(tmpdir(), 'tallystrand-table-'))
  let studio = await openStudio({ userDataDir })
  await beginEmpty(studio.page)
  let { page } = studio
  const id = await newBlank(page, 'Eelgrass leaf')
  const first = (await kept(page, id)).body

  await drag(page, [0.4, 0.4], [0.6, 0.4])
  await keys(page, ['b', '2'])
  await drag(page, [0.45, 0.5], [0.55, 0.62])
  await keys(page, ['l', '1'])
  await drag(page, [0.42, 0.7], [0.58, 0.8])
  await keys(page, ['f', '1'])
  await expect(told(page)).toHaveText('Slot A')
  await expect.poll(async () => (await kept(page, id)).position).toBe(3)
  const last = await kept(page, id)
  expect(rowsOf(last.body).join(' ')).toMatch(/A.*B/)

  for (let step = 0; step < 3; step += 1) await page.keyboard.press('Control+z')
  await expect.poll(async () => (await kept(page, id)).body).toEqual(first)
  for (let step = 0; step < 3; step += 1) await page.keyboard.press('Control+Shift+z')
  await expect.poll(async () => (await kept(page, id)).body).toEqual(last.body)
  await page.keyboard.press('Control+z')
  const oneLess = (await kept(page, id)).body
  await studio.close()

  studio = await openStudio({ userDataDir })
  page = studio.page
  await lay(page, id)
  expect((await kept(page, id)).body).toEqual(oneLess)
  await page.keyboard.press('Control+y')
  await expect.poll(async () => (await kept(page, id)).body).toEqual(last.body)
  for (let step = 0; step < 3; step += 1) await page.keyboard.press('Control+z')
  await expect.poll(async () => (await kept(page, id)).body).toEqual(first)
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled()
  await studio.close()
  rmSync(userDataDir, { recursive: true, force: true })
})

test('a small piece is drawn, mirrored, saved and taken up again with the keyboard alone', async () => {
  test.slow()
  const studio = await openStudio()
  await beginEmpty(studio.page)
  const { page } = studio
  const id = await newBlank(page, 'Sandpiper drop')
  await keys(page, [' ', 'Shift+ArrowRight', 'Shift+ArrowRight', 'ArrowDown', '2', ' '])
  await expect.poll(async () => rowsOf((await kept(page, id)).body)).toEqual(['3A', '1B'])
  await expect(place(page)).toContainText('Row 2')
  await expect(place(page)).toContainText('slot B, sea')
  await keys(page, ['ArrowUp', 'Home', 'e', ' '])
  await expect(place(page)).toHaveText('Row 1, column 1, no bead')
  await keys(page, ['Control+z', 'r', 'End', ' '])
  await expect.poll(async () => rowsOf((await kept(page, id)).body)).toEqual(['3B', '1B'])
  await keys(page, ['g', 'i'])
  await expect.poll(async () => rowsOf((await kept(page, id)).body).length).toBe(3)
  await keys(page, ['Control+a', 'Control+c', 'PageDown', 'Control+v'])
  await expect(told(page)).toHaveText('Paste')
  await page.keyboard.press('Delete')
  await expect(told(page)).toHaveText('Take away')
  await keys(page, ['Control+z', 'Control+z', 'Escape'])
  await expect.poll(async () => rowsOf((await kept(page, id)).body).length).toBe(3)
  const drawn = await kept(page, id)

  await page.keyboard.press('Control+s')
  await page.getByRole('textbox', { name: /What is new in it/ }).fill('First strokes')
  await page.keyboard.press('Enter')
  await expect(page.getByText('As version 2')).toBeVisible()
  const saved = await ask(page, 'designs.read', { id })
  expect(saved.version).toBe(2)
  expect(saved.body).toEqual(drawn.body)
  await picture(page).focus()
  await page.keyboard.press('Control+z')
  await expect(page.getByText('Kept here, in no version yet')).toBeVisible()
  await studio.close()
})

test.describe('with the sample', () => {
  let studio: Studio
  test.beforeAll(async () => {
    studio = await openStudio({ sample: true })
    await studio.page.getByRole('navigation', { name: 'Rooms' }).waitFor()
  })
  test.afterAll(() => studio.close())

  async function layNamed(page: Page, name: string): Promise<string> {
    const { designs } = await ask(page, 'designs.list', { search: name })
    const id = designs[0]?.id ?? ''
    await goTo(page, `#/designs/${id}`)
    await page.getByRole('link', { name: 'Draw', exact: true }).click()
    await page.locator('.table-desk').waitFor()
    await picture(page).focus()
    return id
  }

  test('figures follow the brush, and a slot is added, named and removed', async () => {
    const { page } = studio
    await layNamed(page, 'Tidewrack')
    const beads = page.locator('.figure', { hasText: 'Beads a pair' })
    await expect(beads).toContainText('334')
    await keys(page, ['End', 'ArrowRight', ' '])
    await expect(beads).toContainText('336')
    await page.getByRole('button', { name: 'Add a slot' }).click()
    await page.getByRole('button', { name: 'Name or colour slot E' }).click()
    await page.getByRole('textbox', { name: 'Name' }).fill('sea lavender')
    await page.getByRole('button', { name: 'Keep' }).click()
    await expect(page.getByRole('button', { name: /^E sea lavender/ })).toBeVisible()
    await page.getByRole('button', { name: 'Name or colour slot E' }).click()
    await page.getByRole('button', { name: 'Remove', exact: true }).click()
    await expect(page.getByRole('button', { name: /^E / })).toHaveCount(0)
    await picture(page).focus()
    for (let step = 0; step < 4; step += 1) await page.keyboard.press('Control+z')
    await expect(beads).toContainText('334')
  })

  for (const theme of ['light', 'dark'] as const) {
    test(`the table is free of faults that axe knows, ${theme}`, async () => {
      const { page } = studio
      await page.evaluate((chosen) => {
        document.documentElement.dataset['theme'] = chosen
      }, theme)
      const faults = theme === 'light' ? axeFaults : contrastFaults
      await layNamed(page, 'Reedbed')
      expect(await faults(page)).toEqual([])
      await page.getByRole('button', { name: 'Rows' }).click()
      await page.getByRole('menuitem', { name: /Insert a row above/ }).waitFor()
      expect(await faults(page)).toEqual([])
      await page.keyboard.press('Escape')
      for (const sheet of ['?', 'Control+s']) {
        await picture(page).focus()
        await page.keyboard.press(sheet)
        await page.getByRole('dialog').waitFor()
        expect(await faults(page)).toEqual([])
        await page.keyboard.press('Escape')
        await expect(page.getByRole('dialog')).toHaveCount(0)
      }
    })
  }
})
