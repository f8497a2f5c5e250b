import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

import { expect, type Page, test } from '@playwright/test'

import { ask, latestStep } from './ask.ts'
import { goTo } from './go-to.ts'
import { openRoom, press } from './journey/controls.ts'
import { read } from './journey/screen.ts'
import { openStudio } from './studio.ts'
import { studioOfFile } from './studio-of-file.ts'

// What a tired hand types and what a broken file holds: named in a sentence, and nothing is written.

const studio = studioOfFile()

/** Types into a field and gives the sentence that its error says; none when it was understood. */
async function errorOf(page: Page, label: string, text: string): Promise<string> {
  const field = page.getByLabel(label, { exact: true })
  await field.fill(text)
  if ((await field.getAttribute('aria-invalid')) !== 'true') return ''
  const ids = ((await field.getAttribute('aria-describedby')) ?? '').split(' ')
  const error = ids.find((id) => id.endsWith('-error')) ?? ''
  return read(page.locator(`[id="${error}"]`))
}

/** Fields of each kind of figure, and what is nonsense in them. */
const nonsense = ['zwölf', '12 parsecs', '1,2,3', '-5', '99999999999999999999'] as const

test.describe('a field', () => {
  test('of grams, of a count and of money refuses nonsense by naming it', async () => {
    const { page } = studio()
    const before = await latestStep(page)
    await openRoom(page, 'Stock')
    await page.getByRole('button', { name: /^wet slate/ }).click()
    await press(page, 'Take in a lot')
    await page.getByRole('dialog').waitFor()
    const fields = page.getByRole('dialog').locator('input[inputmode="decimal"]')
    const count = await fields.count()
    expect(count).toBeGreaterThan(0)
    for (let at = 0; at < count; at += 1) {
      for (const text of nonsense) {
        await fields.nth(at).fill(text)
        await expect(fields.nth(at), `field ${at} with ${text}`).toHaveAttribute(
          'aria-invalid',
          'true',
        )
      }
    }
    await page.keyboard.press('Escape')
    expect(await latestStep(page)).toBe(before)
  })

  test('of an hour, a share and a rate says what was typed', async () => {
    const { page } = studio()
    await openRoom(page, 'Prices')
    for (const label of ['An hour of yours', 'Margin wanted', 'Overhead on labour']) {
      expect(await errorOf(page, label, 'zwölf')).toContain('zwölf')
      expect(await errorOf(page, label, '12,5')).toBe('')
    }
  })

  test('takes a comma for the point, and says how it was understood', async () => {
    const { page } = studio()
    await openRoom(page, 'Stock')
    await page.getByRole('button', { name: /^wet slate/ }).click()
    await page.getByRole('button', { name: 'Weigh', exact: true }).first().click()
    expect(await errorOf(page, 'The scale shows', '12,5')).toBe('')
    await expect(page.getByText('= 12,5 g')).toBeVisible()
    expect(await errorOf(page, 'The scale shows', '12,5 m')).toContain('m')
    await page.keyboard.press('Escape')
  })
})

test('a day is typed as it is said, and one that does not exist is named', async () => {
  const { page } = studio()
  await goTo(page, '#/orders/new')
  for (const text of ['31.02.2026', 'zwölf', '🪡', '03/02/2026', 'Mon 4 Dec 2026', '-3', '']) {
    const said = await errorOf(page, 'Due', text)
    expect(said, text).toContain(text === '' ? 'Nothing was typed.' : `“${text}”`)
    expect(said, text).toMatch(/[Tt]ype .+\.$/)
  }
  const due = page.getByLabel('Due', { exact: true })
  for (const text of ['04.12.2026', 'Fri 4 Dec 2026', '2026-12-04']) {
    expect(await errorOf(page, 'Due', text), text).toBe('')
    await due.blur()
    await expect(due).toHaveValue(/^Fri 4 Dec( 2026)?$/)
  }
  await due.fill('in 9 days')
  await expect(page.getByText(/= .*, in 9 days/)).toBeVisible()
})

test('a price that was not understood is never left out in silence', async () => {
  const { page } = studio()
  const before = await latestStep(page)
  await goTo(page, '#/today')
  await goTo(page, '#/orders/new')
  await page.getByLabel('For', { exact: true }).fill('Ferry House Gifts')
  await page.getByRole('combobox', { name: 'Design', exact: true }).fill('Sluice')
  await page.getByRole('option', { name: 'Sluice cuff' }).click()
  const price = page.getByLabel(/^Price of one/)
  await price.fill('zwölf')
  await press(page, 'Promise it')
  await expect(price).toBeFocused()
  const many = page.getByLabel(/^How many/)
  for (const [text, says] of [
    ['0', 'Type 1 or more.'],
    ['10001', 'at most.'],
  ] as const) {
    await many.fill(text)
    await expect(page.getByText(says)).toBeVisible()
  }
  await press(page, 'Promise it')
  await expect(many).toBeFocused()
  expect(await latestStep(page)).toBe(before)
})

test('a text that is too long stays as it was pasted and is refused with its length', async () => {
  const { page } = studio()
  const before = await latestStep(page)
  await goTo(page, '#/settings/workshop')
  const pasted = 'x'.repeat(10_000)
  expect(await errorOf(page, 'Workshop’s name', pasted)).toMatch(/That is 10.000 characters/)
  await expect(page.getByLabel('Workshop’s name', { exact: true })).toHaveValue(pasted)
  await press(page, 'Save')
  await expect(page.getByLabel('Workshop’s name', { exact: true })).toBeFocused()
  expect(await latestStep(page)).toBe(before)
})

test('an order due before it was promised is refused where it is typed, and nothing is saved', async () => {
  const { page } = studio()
  const before = await latestStep(page)
  await goTo(page, '#/orders/new')
  await page.getByLabel('For', { exact: true }).fill('Ferry House Gifts')
  await page.getByLabel('Due', { exact: true }).fill('2001-01-01')
  await page.getByRole('combobox', { name: 'Design', exact: true }).fill('Sluice')
  await page.getByRole('option', { name: 'Sluice cuff' }).click()
  await expect(page.getByRole('alert').first()).toContainText('before')
  await press(page, 'Promise it')
  await expect(page.getByRole('alert').first()).toContainText('Give a due date on or after')
  expect(await latestStep(page)).toBe(before)
})

test.describe('a file', () => {
  const files = {
    'empty.csv': '',
    'picture.csv': Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 0, 0, 13, 255, 254, 1]),
    'no-columns.csv': 'hello\nworld\n',
    'open-quote.csv': 'Code;Name;Grams\nA1;"never closed;12,5\n',
  } as const

  for (const [name, content] of Object.entries(files)) {
    test(`such as ${name} is refused as a stock list and as a chart`, async () => {
      const { page, answerDialogs } = studio()
      const folder = test.info().outputPath()
      mkdirSync(folder, { recursive: true })
      const file = join(folder, name)
      writeFileSync(file, content)
      const before = await latestStep(page)
      for (const way of ['#/stock/bring-in', '#/designs/bring-in']) {
        await goTo(page, '#/today')
        await page.getByRole('heading', { level: 1, name: 'Today' }).waitFor()
        await goTo(page, way)
        answerDialogs(file)
        await press(page, 'Choose a file')
        await expect(
          page.getByText(/cannot be (taken|read)|No row can be taken|Line \d+|The file/).first(),
        ).toBeVisible()
        await expect(page.getByRole('button', { name: 'Add this design' })).toHaveCount(0)
      }
      expect(await latestStep(page)).toBe(before)
    })
  }
})

/** A workshop file made strange: what it is, its bytes, what is said of it. */
function strangers(ours: Buffer) {
  const newer = Buffer.from(ours)
  newer.writeUInt32BE(9_999, 60)
  const other = Buffer.from(ours)
  other.writeUInt32BE(1, 68)
  const diary = Buffer.from('dear diary\n'.repeat(40))
  return [
    [newer, 'saved by a newer version'],
    [other, 'belongs to another program'],
    [diary, 'is not a workshop file'],
  ] as const
}

test('a workshop file that is newer, another program’s or no database is refused and left as it is', async () => {
  test.slow()
  const folder = test.info().outputPath('files')
  mkdirSync(folder, { recursive: true })
  const begun = join(folder, 'begun.tallystrand')
  const first = await openStudio({ dbFile: begun })
  await ask(first.page, 'workshop.begin', {
    with: 'empty',
    name: 'Estuary Beads',
    currency: 'EUR',
    decimalMark: ',',
    today: '2026-11-25',
  })
  await first.close()
  for (const [bytes, says] of strangers(readFileSync(begun))) {
    const file = join(folder, 'strange.tallystrand')
    writeFileSync(file, bytes)
    const second = await openStudio({ dbFile: file })
    await expect(second.page.getByRole('alert')).toContainText(says)
    await expect(second.page.getByRole('alert')).toContainText('left exactly as it is')
    await second.close()
    expect(readFileSync(file).equals(bytes)).toBe(true)
  }
})
