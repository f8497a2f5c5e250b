import { expect, test } from '@playwright/test'

import { ask } from './ask.ts'
import { axeFaults } from './axe-faults.ts'
import { goTo } from './go-to.ts'
import { openRoom, press, write } from './journey/controls.ts'
import { studioOfFile } from './studio-of-file.ts'

// A bead form or a thread that no table knows, added from the form of the material that is of it.

const studio = studioOfFile()

test('a bead form of her own is added in the middle of a new material, and nothing typed is lost', async () => {
  const { page } = studio()
  await openRoom(page, 'Stock')
  await press(page, 'New material')
  await write(page, 'Name', 'Harbour drops')
  await write(page, 'Code', 'HD-35')
  await page.getByLabel(/^Drawer/).fill('7')
  await press(page, 'Add a form of your own')
  const sheet = page.getByRole('dialog', { name: 'New bead form' })
  await sheet.getByLabel('Name', { exact: true }).fill('Harbour drop 3,5 mm')
  for (const [label, text] of [
    ['Across its hole', '3,5'],
    ['Along its hole', '3,3 to 3,6'],
    ['The hole', '0,8'],
    ['Beads in a gram', '15 (14 to 16)'],
    ['Put aside as misshapen', '3 %'],
  ] as const) {
    await sheet.getByLabel(label, { exact: true }).fill(text)
  }
  expect(await axeFaults(page)).toEqual([])
  await sheet.getByRole('button', { name: 'Save', exact: true }).click()
  await expect(sheet).toHaveCount(0)
  await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Harbour drops')
  await expect(page.getByLabel('Code', { exact: true })).toHaveValue('HD-35')
  await expect(page.getByRole('combobox', { name: 'Bead form' })).toHaveValue('Harbour drop 3,5 mm')
  await press(page, 'Save')
  await page.getByRole('heading', { level: 1, name: 'Harbour drops' }).waitFor()
  const { materials } = await ask(page, 'materials.list', {})
  expect(materials.find(({ code }) => code === 'HD-35')).toMatchObject({
    formId: 'harbour-drop-3-5-mm',
    drawer: '7',
  })
})

test('Escape leaves the form of her own only, and a thread is added in place too', async () => {
  const { page } = studio()
  await goTo(page, '#/today')
  await openRoom(page, 'Stock')
  await press(page, 'New material')
  await page.getByRole('dialog').getByRole('radio', { name: 'Thread' }).check()
  await write(page, 'Name', 'Salt cord, grey')
  await press(page, 'Add a thread of your own')
  const sheet = page.getByRole('dialog', { name: 'New thread' })
  await sheet.waitFor()
  await page.keyboard.press('Escape')
  await expect(sheet).toHaveCount(0)
  await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Salt cord, grey')
  await press(page, 'Add a thread of your own')
  await sheet.getByLabel('Name', { exact: true }).fill('Salt cord')
  await sheet.getByLabel('How thick it lies in a hole').fill('0,2–0,25')
  await sheet.getByRole('button', { name: 'Save', exact: true }).click()
  await expect(page.getByRole('combobox', { name: 'Thread', exact: true })).toHaveValue('Salt cord')
  await expect(page.getByLabel('Name', { exact: true })).toHaveValue('Salt cord, grey')
  const { threads } = await ask(page, 'tables.own', {})
  expect(threads.map(({ name }) => name)).toEqual(['Salt cord'])
  await page.keyboard.press('Escape')
})
