import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'

import { expect, test } from '@playwright/test'
import { ask } from './ask.ts'
import { beginEmpty } from './journey/begin.ts'
import { blank, kept, keys, lay, newBlank, rowsOf, told } from './on-the-table.ts'
import { openStudio } from './studio.ts'

test('beads from another design and the slots they bring are one step, also after the app was closed', async () => {
  test.slow()
  const userDataDir = mkdtempSync(join(tmpdir(), 'tallystrand-paste-'))
  let studio = await openStudio({ userDataDir })
  await beginEmpty(studio.page)
  let { page } = studio
  await newBlank(page, 'Sandpiper drop')
  await keys(page, [' ', 'ArrowRight', '2', ' '])
  await keys(page, ['Control+a', 'Control+c'])
  const [sand] = blank.palette
  if (sand === undefined) throw new Error('expected a slot')
  const palette = [{ ...sand, name: 'sand', colourHex: '#d9c7a8' }]
  const body = { ...blank, palette }
  const { id } = await ask(page, 'designs.save', { name: 'Dunlin drop', tags: [], body, note: '' })
  const before = (await ask(page, 'designs.read', { id })).body
  await lay(page, id)
  await page.keyboard.press('Control+v')
  await expect(told(page)).toHaveText('Paste')
  await expect.poll(async () => (await kept(page, id)).position).toBe(1)
  const pasted = (await kept(page, id)).body
  expect(rowsOf(pasted)).toEqual(['1B 1C'])
  expect(pasted.palette.map(({ label, name }) => `${label} ${name}`)).toEqual([
    'A sand',
    'B slate',
    'C sea',
  ])
  const slots = page.locator('.table-palette .table-slot')
  await expect(slots).toHaveCount(3)
  await page.keyboard.press('Control+z')
  await expect(slots).toHaveCount(1)
  await expect.poll(async () => (await kept(page, id)).body).toEqual(before)
  await page.keyboard.press('Control+y')
  await expect(slots).toHaveCount(3)
  await expect.poll(async () => (await kept(page, id)).body).toEqual(pasted)
  await studio.close()

  studio = await openStudio({ userDataDir })
  page = studio.page
  await lay(page, id)
  await page.keyboard.press('Control+z')
  await expect.poll(async () => (await kept(page, id)).body).toEqual(before)
  await expect(page.getByRole('button', { name: 'Nothing to undo' })).toBeDisabled()
  await page.keyboard.press('Control+y')
  await expect.poll(async () => (await kept(page, id)).body).toEqual(pasted)
  await studio.close()
  rmSync(userDataDir, { recursive: true, force: true })
})
