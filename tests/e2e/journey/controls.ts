import type { Page } from '@playwright/test'

// What a person does with the screen, by the names she sees.

/** Goes to a room by its bead on the rail. */
export async function openRoom(page: Page, title: string): Promise<void> {
  await page.getByRole('navigation', { name: 'Rooms' }).getByRole('link', { name: title }).click()
  await page.getByRole('heading', { level: 1, name: title }).waitFor()
}

/** Writes into the field of a label. */
export async function write(page: Page, label: string, text: string): Promise<void> {
  await page.getByLabel(label, { exact: true }).fill(text)
}

/** Chooses from a short list. */
export async function choose(page: Page, label: string, option: string): Promise<void> {
  await page.getByRole('combobox', { name: label, exact: true }).click()
  await page.getByRole('option', { name: option }).first().click()
}

/** Chooses from a long list by typing. */
export async function pick(page: Page, label: string | RegExp, option: string): Promise<void> {
  await page.getByRole('combobox', { name: label, exact: true }).fill(option)
  await page.getByRole('option', { name: option }).first().click()
}

/** Presses a button; where the same act stands twice, the first. */
export async function press(page: Page, name: string | RegExp): Promise<void> {
  await page.getByRole('button', { name, exact: true }).first().click()
}

/** Takes one of a few choices that are all in sight. */
export async function take(page: Page, option: string): Promise<void> {
  await page.getByRole('radio', { name: option, exact: true }).check()
}
