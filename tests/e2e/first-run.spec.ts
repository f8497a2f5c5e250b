import { expect, type Page, test } from '@playwright/test'

import { ask } from './ask.ts'
import { pick, take } from './journey/controls.ts'
import { openStudio } from './studio.ts'

const nameField = (page: Page) => page.getByLabel('Your workshop’s name')
const emptyButton = (page: Page) => page.getByRole('button', { name: 'Begin with empty drawers' })
const rail = (page: Page) => page.getByRole('navigation', { name: 'Rooms' })

test('a first start asks whose workshop it is, and begins empty only once it has a name', async () => {
  const { page, close } = await openStudio()
  await expect(page.getByRole('heading', { level: 1, name: 'Tallystrand' })).toBeVisible()
  for (const nameless of ['', '   ']) {
    await nameField(page).fill(nameless)
    await emptyButton(page).click()
    await expect(page.getByText('There is no name yet.')).toBeVisible()
  }
  expect((await ask(page, 'workshop.read', {})).workshop).toBeNull()
  await nameField(page).fill('Estuary Beads')
  await pick(page, 'Currency', 'SEK')
  await take(page, '12,5 g')
  await emptyButton(page).click()
  await expect(rail(page)).toContainText('Estuary Beads')
  const { workshop } = await ask(page, 'workshop.read', {})
  expect(workshop).toMatchObject({ name: 'Estuary Beads', currency: 'SEK', decimalMark: ',' })
  expect((await ask(page, 'materials.list', {})).materials).toEqual([])
  await expect(page.getByRole('link', { name: 'Bring in your stock' })).toBeVisible()
  await close()
})

test('the sample begins without a name and is there after a new start', async () => {
  const userDataDir = test.info().outputPath('user')
  const first = await openStudio({ userDataDir })
  await first.page.getByRole('button', { name: /Saltmarsh sample/ }).click()
  await expect(rail(first.page)).toContainText('Saltmarsh Beadworks')
  const before = await ask(first.page, 'designs.list', {})
  expect(before.designs).toHaveLength(8)
  await first.close()
  const second = await openStudio({ userDataDir })
  await expect(rail(second.page)).toContainText('Saltmarsh Beadworks')
  expect(await ask(second.page, 'designs.list', {})).toEqual(before)
  await second.close()
})
