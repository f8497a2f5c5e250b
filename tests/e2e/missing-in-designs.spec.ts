import { expect, type Page, test } from '@playwright/test'

import { ask, latestStep } from './ask.ts'
import { goTo } from './go-to.ts'
import { press } from './journey/controls.ts'
import { errorOf } from './missing-fields.ts'
import { studioOfFile } from './studio-of-file.ts'

// What a design still needs before a version of it or its details are saved.

const studio = studioOfFile()

/** The design that the list begins with. */
async function firstDesign(page: Page) {
  const [first] = (await ask(page, 'designs.list', {})).designs
  if (first === undefined) throw new Error('expected a design')
  return first
}

test('a design’s new version leads to the figure that is refused', async () => {
  const { page } = studio()
  const { id } = await firstDesign(page)
  const { version } = await ask(page, 'designs.read', { id })
  await goTo(page, `#/designs/${id}`)
  await press(page, 'Working')
  const loop = page.getByLabel(/^Times round a loop/)
  await loop.fill('many')
  await press(page, 'Save as a new version')
  await expect(loop).toBeFocused()
  await expect(loop).toHaveAttribute('aria-invalid', 'true')
  expect((await ask(page, 'designs.read', { id })).version).toBe(version)
  await loop.fill('4')
  await press(page, 'Save as a new version')
  await expect(page.getByRole('dialog')).toHaveCount(0)
  expect((await ask(page, 'designs.read', { id })).version).toBe(version + 1)
})

test('a design’s details lead to the word its tags need', async () => {
  const { page } = studio()
  const before = await latestStep(page)
  await goTo(page, `#/designs/${(await firstDesign(page)).id}`)
  await press(page, /^Details/)
  const unit = page.getByLabel('What one unit is called', { exact: true })
  await unit.fill('')
  await press(page, 'Save the details')
  await expect(unit).toBeFocused()
  await expect(await errorOf(page, unit)).toHaveText('Pair, band or piece: tags need a word.')
  await page.keyboard.press('Escape')
  expect(await latestStep(page)).toBe(before)
})

test('a version of changed parts is not saved over a figure that is refused', async () => {
  const { page } = studio()
  const { designs } = await ask(page, 'designs.list', {})
  const id = designs.find(({ name }) => name === 'Samphire studs')?.id ?? ''
  const { version } = await ask(page, 'designs.read', { id })
  await goTo(page, `#/designs/${id}/parts`)
  const name = page.getByLabel('Name of the panel', { exact: true })
  await name.fill('Stud in brick stitch')
  await name.press('Enter')
  await expect(page.getByRole('button', { name: 'Save a version' })).toBeEnabled()
  const copies = page.getByLabel('How many in one unit', { exact: true })
  await copies.fill('many')
  await press(page, 'Save a version')
  await expect(copies).toBeFocused()
  await expect(page.getByRole('dialog')).toHaveCount(0)
  await copies.fill('2')
  await press(page, 'Save a version')
  await page.getByRole('dialog', { name: 'Save a version' }).waitFor()
  const note = page.getByLabel('What is new in it')
  await note.fill('x'.repeat(501))
  await note.press('Enter')
  await expect(note).toHaveAttribute('aria-invalid', 'true')
  await expect(page.getByRole('dialog', { name: 'Save a version' })).toBeVisible()
  expect((await ask(page, 'designs.read', { id })).version).toBe(version)
  await note.fill('Two studs')
  await note.press('Enter')
  await expect(page.getByRole('dialog')).toHaveCount(0)
  expect((await ask(page, 'designs.read', { id })).version).toBe(version + 1)

  // Nothing is left to save, and what is refused is still led to.
  await copies.fill('many')
  await press(page, 'Save a version')
  await expect(copies).toBeFocused()
  await expect(page.getByRole('dialog')).toHaveCount(0)
  await copies.press('Escape')
})
