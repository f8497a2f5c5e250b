import { expect, type Page, test } from '@playwright/test'

import { ask, latestStep } from './ask.ts'
import { axeFaults } from './axe-faults.ts'
import { goTo } from './go-to.ts'
import { choose, openRoom, press, write } from './journey/controls.ts'
import { sampleFile } from './journey/sample-file.ts'
import { errorOf, type LackingForm, labelled, list, provesLack } from './missing-fields.ts'
import { studioOfFile } from './studio-of-file.ts'

// What the forms of the stock room still need, and what the service refuses in them.

const studio = studioOfFile()

/** Opens the sheet of a button on a material’s page. */
async function openSheet(page: Page, button: string | RegExp) {
  await openRoom(page, 'Stock')
  await page.getByRole('button', { name: /^wet slate/ }).click()
  await page.getByRole('button', { name: button }).first().click()
  await page.getByRole('dialog').waitFor()
}

const ofMaterial = [
  ['a lot taken in', 'Take in a lot', 'Take it in', labelled('How much'), 'Say how much came in.'],
  [
    'a lot weighed',
    /^Weigh$/,
    'Set what is on hand',
    labelled('The scale shows'),
    'Type what the scale shows.',
  ],
  [
    'counted beads weighed',
    /counted/i,
    'Keep this weighing',
    labelled('Beads counted'),
    'Say how many beads you counted.',
  ],
  ['a pack of a supplier', /pack/i, 'Save', list('Supplier'), 'Choose who sells it.'],
] as const

const forms: readonly LackingForm[] = [
  ...ofMaterial.map(([name, opens, button, field, says]) => ({
    ...{ name, button, field, says },
    open: (page: Page) => openSheet(page, opens),
  })),
  {
    name: 'a new material',
    open: async (page) => {
      await openRoom(page, 'Stock')
      await press(page, 'New material')
    },
    button: 'Save',
    field: labelled('Name'),
    says: 'Give it a name you will know it by.',
  },
]

for (const form of forms) {
  test(`${form.name}: the button leads to what is missing and says so`, () =>
    provesLack(studio().page, form))
}

test('what the service refuses is led to as well', async () => {
  const { page } = studio()
  const [known] = (await ask(page, 'materials.list', {})).materials
  if (known === undefined) throw new Error('expected a material')
  const before = await latestStep(page)
  await openRoom(page, 'Stock')
  await press(page, 'New material')
  await write(page, 'Name', 'Twice the same')
  await write(page, 'Code', known.code)
  await press(page, 'Save')
  const code = page.getByLabel('Code', { exact: true })
  await expect(code).toBeFocused()
  await expect(await errorOf(page, code)).toContainText(
    `${known.name} has the code ${known.code} already.`,
  )
  await code.fill('TWICE-1')
  await expect(code).not.toHaveAttribute('aria-invalid', 'true')
  await page.keyboard.press('Escape')
  expect(await latestStep(page)).toBe(before)
})

test('a stock list without its column of codes leads to the columns', async () => {
  const { page, answerDialogs } = studio()
  const before = await latestStep(page)
  await goTo(page, '#/stock/bring-in')
  answerDialogs(sampleFile('stock-list.csv'))
  await press(page, 'Choose a file')
  await choose(page, 'What “Artikel-Nr” holds', 'leave out')
  const column = page.getByRole('combobox', { name: 'What “Artikel-Nr” holds' })
  await expect(column).toHaveAttribute('aria-invalid', 'true')
  await press(page, /^Bring in \d+ row/)
  await expect(column).toBeFocused()
  await expect(column).toHaveAccessibleDescription(/No column holds the code/)
  expect(await axeFaults(page)).toEqual([])
  await choose(page, 'What “Artikel-Nr” holds', 'Code')
  await expect(column).not.toHaveAttribute('aria-invalid', 'true')
  expect(await latestStep(page)).toBe(before)
})
