import { expect, type Locator, type Page } from '@playwright/test'

import { latestStep } from './ask.ts'
import { axeFaults } from './axe-faults.ts'
import { goTo } from './go-to.ts'

/** A form that keeps something, as it is when a field of it holds nothing. */
export type LackingForm = Readonly<{
  name: string
  open: (page: Page) => Promise<void>
  button: string | RegExp
  field: (page: Page) => Locator
  says: string | RegExp
}>

export const labelled = (name: string) => (page: Page) => page.getByLabel(name, { exact: true })

export const list = (name: string) => (page: Page) =>
  page.getByRole('combobox', { name, exact: true })

/** The sentence that stands below a field, after its hint where it has one. */
export async function errorOf(page: Page, field: Locator): Promise<Locator> {
  return page.locator(`[id="${await field.getAttribute('id')}-error"]`)
}

/** Opens the form as it lacks something, and proves that its button leads there and keeps nothing. */
export async function provesLack(
  page: Page,
  { open, button, field, says }: LackingForm,
): Promise<void> {
  const before = await latestStep(page)
  await goTo(page, '#/today')
  await open(page)
  await isLedTo(page, button, field(page), says)
  expect(await axeFaults(page)).toEqual([])
  await page.keyboard.press('Escape')
  expect(await latestStep(page)).toBe(before)
}

/** Presses the button, and expects to be led to the field with the sentence that it lacks something. */
async function isLedTo(
  page: Page,
  button: string | RegExp,
  field: Locator,
  says: string | RegExp,
): Promise<void> {
  await expect(field).not.toHaveAttribute('aria-invalid', 'true')
  const sheet = page.getByRole('dialog')
  const form = (await sheet.count()) > 0 ? sheet : page.locator('#main')
  await form.getByRole('button', { name: button, exact: true }).click()
  await expect(field).toBeFocused()
  await expect(field).toHaveAttribute('aria-invalid', 'true')
  await expect(await errorOf(page, field)).toHaveText(says)
}
