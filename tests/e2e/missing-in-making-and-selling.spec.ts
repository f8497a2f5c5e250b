import { expect, type Page, test } from '@playwright/test'

import { latestStep } from './ask.ts'
import { goTo } from './go-to.ts'
import { openRoom, pick, press, write } from './journey/controls.ts'
import { type LackingForm, labelled, list, provesLack } from './missing-fields.ts'
import { studioOfFile } from './studio-of-file.ts'

// What an order, a piece to be made and a sale still need.

const studio = studioOfFile()

async function openAtBench(page: Page, button: string) {
  await openRoom(page, 'Bench')
  await press(page, button)
}

async function openOrder(page: Page) {
  await goTo(page, '#/orders/new')
  await write(page, 'For', 'Ferry House Gifts')
}

const forms: readonly LackingForm[] = [
  {
    name: 'an order of nothing',
    open: openOrder,
    button: 'Promise it',
    field: list('Design'),
    says: 'Choose what is ordered.',
  },
  {
    name: 'a make of nothing chosen',
    open: (page) => openAtBench(page, 'Log a make'),
    button: 'Made 1 unit',
    field: list('Design'),
    says: 'Choose what is made.',
  },
  {
    name: 'a start of nothing chosen',
    open: (page) => openAtBench(page, 'Start a piece'),
    button: /^Begin/,
    field: list('Design'),
    says: 'Choose what is made.',
  },
  {
    name: 'a sale without its price',
    open: async (page) => {
      await openRoom(page, 'Shelf')
      await page
        .getByRole('button', { name: /^Sell / })
        .first()
        .click()
      await write(page, 'The buyer pays', '')
    },
    button: 'Sold',
    field: labelled('The buyer pays'),
    says: 'Say what the buyer pays.',
  },
]

for (const form of forms) {
  test(`${form.name}: the button leads to what is missing and says so`, () =>
    provesLack(studio().page, form))
}

test('an order of a design without its number leads to how many', async () => {
  const { page } = studio()
  const before = await latestStep(page)
  await goTo(page, '#/today')
  await openOrder(page)
  await pick(page, 'Design', 'Sluice cuff')
  const many = page.getByLabel(/^How many/)
  await many.fill('')
  await press(page, 'Promise it')
  await expect(many).toBeFocused()
  await expect(many).toHaveAccessibleDescription(/still missing/)
  expect(await latestStep(page)).toBe(before)
})
