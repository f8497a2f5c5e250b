import { expect, type Locator, type Page, test } from '@playwright/test'

import { ask } from './ask.ts'
import { axeFaults } from './axe-faults.ts'
import { choose, openRoom, pick, press, write } from './journey/controls.ts'
import { sampleFile } from './journey/sample-file.ts'
import { openStudio, type Studio } from './studio.ts'

// What a form still needs: its button can be pressed, leads there and says so in a sentence.

test.describe.configure({ mode: 'default' })

let studio: Studio
test.beforeAll(async () => {
  studio = await openStudio({ sample: true })
})
test.afterAll(() => studio.close())

const latest = async (page: Page) => (await ask(page, 'history.list', { limit: 1 })).entries[0]?.id

async function goTo(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to
  }, hash)
}

/** Presses the button, and expects to be led to the field with the sentence that it lacks something. */
async function isLedTo(page: Page, button: string | RegExp, field: Locator, says: string | RegExp) {
  await expect(field).not.toHaveAttribute('aria-invalid', 'true')
  const sheet = page.getByRole('dialog')
  const form = (await sheet.count()) > 0 ? sheet : page.locator('#main')
  await form.getByRole('button', { name: button, exact: true }).click()
  await expect(field).toBeFocused()
  await expect(field).toHaveAttribute('aria-invalid', 'true')
  // After its hint, where it has one.
  const error = page.locator(`[id="${await field.getAttribute('id')}-error"]`)
  await expect(error).toHaveText(says)
}

/** Opens the sheet of a button in the material’s page. */
async function inStock(page: Page, button: string | RegExp) {
  await goTo(page, '#/today')
  await openRoom(page, 'Stock')
  await page.getByRole('button', { name: /^wet slate/ }).click()
  await page.getByRole('button', { name: button }).first().click()
  await page.getByRole('dialog').waitFor()
}

const labelled = (page: Page, name: string | RegExp) =>
  page.getByLabel(name, typeof name === 'string' ? { exact: true } : {})

/** Every form that keeps something: how it is opened, its button, what is emptied, what is said of it. */
const forms: readonly Readonly<{
  name: string
  open: (page: Page) => Promise<void>
  empty?: readonly (string | RegExp)[]
  button: string | RegExp
  field: (page: Page) => Locator
  says: string | RegExp
}>[] = [
  {
    name: 'a lot taken in',
    open: (page) => inStock(page, 'Take in a lot'),
    button: 'Take it in',
    field: (page) => labelled(page, 'How much'),
    says: 'Say how much came in.',
  },
  {
    name: 'a lot weighed',
    open: (page) => inStock(page, /^Weigh$/),
    button: 'Set what is on hand',
    field: (page) => labelled(page, 'The scale shows'),
    says: 'Type what the scale shows.',
  },
  {
    name: 'counted beads weighed',
    open: (page) => inStock(page, /counted/i),
    button: 'Keep this weighing',
    field: (page) => labelled(page, 'Beads counted'),
    says: 'Say how many beads you counted.',
  },
  {
    name: 'a pack of a supplier',
    open: (page) => inStock(page, /pack/i),
    button: 'Save',
    field: (page) => page.getByRole('combobox', { name: 'Supplier' }),
    says: 'Choose who sells it.',
  },
  {
    name: 'a new material',
    open: async (page) => {
      await openRoom(page, 'Stock')
      await press(page, 'New material')
    },
    button: 'Save',
    field: (page) => labelled(page, 'Name'),
    says: 'Give it a name you will know it by.',
  },
  {
    name: 'an order of nothing',
    open: async (page) => {
      await goTo(page, '#/orders/new')
      await write(page, 'For', 'Ferry House Gifts')
    },
    button: 'Promise it',
    field: (page) => page.getByRole('combobox', { name: 'Design', exact: true }),
    says: 'Choose what is ordered.',
  },
  {
    name: 'the workshop’s hour',
    open: (page) => goTo(page, '#/settings/workshop'),
    empty: ['What an hour of yours costs'],
    button: 'Save',
    field: (page) => labelled(page, 'What an hour of yours costs'),
    says: 'This figure is still missing. Type it here.',
  },
  {
    name: 'a channel’s share',
    open: async (page) => {
      await goTo(page, '#/settings/channels')
      await press(page, 'Add a channel')
      await write(page, 'Name', 'Quay shop')
    },
    empty: ['It keeps'],
    button: 'Save',
    field: (page) => labelled(page, 'It keeps'),
    says: 'This figure is still missing. Type it here.',
  },
  {
    name: 'a supplier’s days',
    open: async (page) => {
      await goTo(page, '#/settings/suppliers')
      await press(page, 'Add a supplier')
      await write(page, 'Name', 'Estuary Glass')
    },
    empty: ['From order to your door'],
    button: 'Save',
    field: (page) => labelled(page, 'From order to your door'),
    says: 'Say how many days it takes; a guess will do.',
  },
  {
    name: 'a place without a name',
    open: async (page) => {
      await goTo(page, '#/settings/places')
      await press(page, 'Add a place')
    },
    button: 'Save',
    field: (page) => labelled(page, 'Name'),
    says: 'Give the place a name, such as Market box.',
  },
  {
    name: 'a bead form without its figures',
    open: async (page) => {
      await goTo(page, '#/settings/beads')
      await press(page, 'Add a bead form')
      await write(page, 'Name', 'Tide drop')
    },
    button: 'Save',
    field: (page) => labelled(page, 'Across its hole'),
    says: /This figure is still missing/,
  },
  {
    name: 'a make of nothing chosen',
    open: async (page) => {
      await openRoom(page, 'Bench')
      await press(page, 'Log a make')
    },
    button: 'Made 1 unit',
    field: (page) => page.getByRole('combobox', { name: 'Design', exact: true }),
    says: 'Choose what is made.',
  },
  {
    name: 'a start of nothing chosen',
    open: async (page) => {
      await openRoom(page, 'Bench')
      await press(page, 'Start a piece')
    },
    button: /^Begin/,
    field: (page) => page.getByRole('combobox', { name: 'Design', exact: true }),
    says: 'Choose what is made.',
  },
]

for (const { name, open, empty = [], button, field, says } of forms) {
  test(`${name}: the button leads to what is missing and says so`, async () => {
    const { page } = studio
    const before = await latest(page)
    await goTo(page, '#/today')
    await open(page)
    for (const label of empty) await labelled(page, label).fill('')
    await isLedTo(page, button, field(page), says)
    expect(await axeFaults(page)).toEqual([])
    await page.keyboard.press('Escape')
    expect(await latest(page)).toBe(before)
  })
}

test('what the service refuses is led to as well', async () => {
  const { page } = studio
  const [known] = (await ask(page, 'materials.list', {})).materials
  await openRoom(page, 'Stock')
  await press(page, 'New material')
  await write(page, 'Name', 'Twice the same')
  await write(page, 'Code', known?.code ?? '')
  await press(page, 'Save')
  const code = page.getByLabel('Code', { exact: true })
  await expect(code).toBeFocused()
  await expect(code).toHaveAccessibleDescription(/already|taken|stands/)
  await code.fill('TWICE-1')
  await expect(code).not.toHaveAttribute('aria-invalid', 'true')
  await page.keyboard.press('Escape')
})

test('a bead form of her own is added in the middle of a new material, and nothing typed is lost', async () => {
  const { page } = studio
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
  const { page } = studio
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
  await page.keyboard.press('Escape')
})

test('a design’s new version leads to the figure that is refused', async () => {
  const { page } = studio
  const { designs } = await ask(page, 'designs.list', {})
  const before = await latest(page)
  await goTo(page, `#/designs/${designs[0]?.id}`)
  await press(page, 'Working')
  const loop = page.getByLabel(/^Times round a loop/)
  await loop.fill('many')
  await press(page, 'Save as a new version')
  await expect(loop).toBeFocused()
  await expect(loop).toHaveAttribute('aria-invalid', 'true')
  expect(await latest(page)).toBe(before)
  await loop.fill('4')
  await press(page, 'Save as a new version')
  await expect(page.getByRole('dialog')).toHaveCount(0)
  await page
    .getByRole('button', { name: /^Details/ })
    .first()
    .click()
  await page.getByLabel('What one unit is called', { exact: true }).fill('')
  await press(page, 'Save the details')
  await expect(page.getByLabel('What one unit is called', { exact: true })).toBeFocused()
  await expect(page.getByText('Pair, band or piece: tags need a word.')).toBeVisible()
  await page.keyboard.press('Escape')
})

test('a sale without a price, and an order of a design without its number', async () => {
  const { page } = studio
  await goTo(page, '#/orders/new')
  await write(page, 'For', 'Ferry House Gifts')
  await pick(page, 'Design', 'Sluice cuff')
  const many = page.getByLabel(/^How many/)
  await many.fill('')
  await press(page, 'Promise it')
  await expect(many).toBeFocused()
  await expect(many).toHaveAccessibleDescription(/still missing/)
})

test('a version of changed parts is not saved over a figure that is refused', async () => {
  const { page } = studio
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
  await page.keyboard.press('Escape')
  expect((await ask(page, 'designs.read', { id })).version).toBe(version)
})

test('a stock list without its column of codes leads to the columns', async () => {
  const { page, answerDialogs } = studio
  const before = await latest(page)
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
  expect(await latest(page)).toBe(before)
})
