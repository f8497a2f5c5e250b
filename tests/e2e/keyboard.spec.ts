import { expect, type Page, test } from '@playwright/test'
import { menuRooms } from '../../shared-core/contract/shell-commands.ts'
import { goTo } from './go-to.ts'
import { openStudio, type Studio } from './studio.ts'

test.describe.configure({ mode: 'default' })

let studio: Studio
test.beforeAll(async () => {
  studio = await openStudio({ sample: true })
  await studio.page.getByRole('navigation', { name: 'Rooms' }).waitFor()
})
test.afterAll(() => studio.close())

const titleOf = (room: string) => room.charAt(0).toUpperCase() + room.slice(1)
const heading = (page: Page, name: string) => page.getByRole('heading', { level: 1, name })

test('a digit with Ctrl or Alt opens a room and puts the focus on its title', async () => {
  const { page } = studio
  for (const [index, title] of menuRooms.map(titleOf).entries()) {
    const held = index % 2 === 0 ? 'Control' : 'Alt'
    await page.keyboard.press(`${held}+Digit${(index + 1) % 10}`)
    await expect(heading(page, title)).toBeFocused()
    await expect(page.getByRole('link', { name: title, exact: true })).toHaveAttribute(
      'aria-current',
      'page',
    )
  }
})

test('a design is found by a part of its name and opened, with keys alone', async () => {
  const { page } = studio
  await page.keyboard.press('Control+k')
  await page.getByRole('combobox', { name: 'Find anything' }).fill('sluice')
  await expect(page.getByRole('option').first()).toContainText('Sluice cuff')
  await page.keyboard.press('Enter')
  await expect(heading(page, 'Sluice cuff')).toBeVisible()
  expect(new URL(page.url()).hash).toMatch(/^#\/designs\/[a-z]+_/)
})

test('the finder says when nothing has that name, and Escape gives the focus back', async () => {
  const { page } = studio
  await page.keyboard.press('Control+k')
  await page.getByRole('combobox', { name: 'Find anything' }).fill('zzzz')
  await expect(page.getByText('Nothing of that name')).toBeVisible()
  await page.keyboard.press('Escape')
  await expect(page.getByRole('combobox', { name: 'Find anything' })).toHaveCount(0)
})

test('the keys of the studio are on one sheet', async () => {
  const { page } = studio
  await page.keyboard.press('Control+1')
  await expect(heading(page, 'Today')).toBeFocused()
  await page.keyboard.press('?')
  const sheet = page.getByRole('dialog', { name: 'Keys' })
  await expect(sheet).toContainText('Find anything')
  await page.keyboard.press('Escape')
  await expect(sheet).toHaveCount(0)
})

test('the first Tab leads past the rail into the room', async () => {
  const { page } = studio
  await page.reload()
  // The room takes the focus to its title as it opens, which may be after the rail is there.
  await expect(page.getByRole('heading', { level: 1 })).toBeFocused()
  // Tab goes on from where the focus was last: from the very start of the page, here.
  await page.evaluate(() => {
    document.body.tabIndex = -1
    document.body.focus()
    document.body.removeAttribute('tabindex')
  })
  await page.keyboard.press('Tab')
  const skip = page.getByRole('button', { name: 'Skip to the room' })
  await expect(skip).toBeFocused()
  await page.keyboard.press('Enter')
  await expect(page.locator('#main')).toBeFocused()
})

test('an act is undone and done again by keys, and a text field keeps its own undo', async () => {
  const { page } = studio
  await goTo(page, '#/settings/suppliers')
  await page.getByRole('button', { name: 'Add a supplier' }).click()
  const name = page.getByRole('textbox', { name: 'Name' })
  await name.fill('Estuary Beads')
  await page.getByRole('button', { name: 'Save' }).click()
  const row = page.getByRole('row', { name: /Estuary Beads/ })
  await expect(row).toBeVisible()
  await page.locator('body').press('Control+z')
  await expect(row).toHaveCount(0)
  await page.locator('body').press('Control+Shift+z')
  await expect(row).toBeVisible()
})

test('the focus is kept when what has it goes away', async () => {
  const { page } = studio
  await page.keyboard.press('Control+4')
  await page.getByRole('link', { name: 'New order' }).press('Enter')
  await page.getByRole('button', { name: 'Another design' }).press('Enter')
  await page.getByRole('button', { name: 'Remove this line' }).last().press('Enter')
  await expect(page.getByRole('button', { name: 'Remove this line' })).toHaveCount(0)
  await expect(page.getByRole('listitem').getByRole('combobox', { name: 'Design' })).toBeFocused()
  await page.getByLabel('For', { exact: true }).fill('Ferry House Gifts')
  await page.getByRole('combobox', { name: 'Design', exact: true }).fill('Sluice')
  await page.getByRole('option', { name: 'Sluice cuff' }).click()
  const promise = page.getByRole('button', { name: 'Promise it' })
  await expect(promise).toBeEnabled()
  await promise.press('Enter')
  await expect(heading(page, 'Ferry House Gifts')).toBeFocused()
  const toast = page.getByRole('region', { name: 'What was just done' })
  await toast.getByRole('button', { name: 'Undo' }).press('Enter')
  // The order is gone with its undo: nothing of it stands on the page any more.
  await expect(page.getByText('There is no order')).toBeVisible()
  await expect(page.getByRole('button', { name: 'Cancel the order' })).toHaveCount(0)
  await expect(heading(page, 'Order')).toBeFocused()
})

test('a sheet begins in its first field, and Escape closes the list before the sheet', async () => {
  const { page } = studio
  await page.keyboard.press('Control+3')
  const opens = page.getByRole('button', { name: 'New material' })
  await opens.press('Enter')
  const sheet = page.getByRole('dialog')
  await expect(sheet.getByRole('radio', { name: 'Beads' })).toBeFocused()
  const list = sheet.getByRole('combobox').first()
  await list.press('ArrowDown')
  await expect(page.getByRole('listbox')).toBeVisible()
  await page.keyboard.press('Escape')
  await expect(page.getByRole('listbox')).toHaveCount(0)
  await expect(sheet).toBeVisible()
  // The choice stays as it was: closing is no choosing.
  await expect(list).toHaveValue('Cylinder bead 11/0')
  await page.keyboard.press('Escape')
  await expect(sheet).toHaveCount(0)
  await expect(opens).toBeFocused()
})

test('the chosen theme stays when the page opens again', async () => {
  const { page } = studio
  await goTo(page, '#/today')
  await page.keyboard.press('Control+k')
  await page.getByRole('combobox', { name: 'Find anything' }).fill('lamplight')
  await page.keyboard.press('Enter')
  const theme = () => page.evaluate(() => document.documentElement.dataset['theme'])
  await expect.poll(theme).toBe('dark')
  await page.reload()
  await page.getByRole('navigation', { name: 'Rooms' }).waitFor()
  expect(await theme()).toBe('dark')
})

test('a toast waits while the focus goes from one of its buttons to the next', async () => {
  const { page } = studio
  await page.clock.install()
  await goTo(page, '#/settings/workshop')
  await page.getByLabel('Workshop’s name', { exact: true }).fill('Saltmarsh at low tide')
  await page.getByRole('button', { name: 'Save', exact: true }).press('Enter')
  const toast = page.getByRole('region', { name: 'What was just done' })
  const close = toast.getByRole('button', { name: 'Close' })
  await toast.getByRole('button', { name: 'Undo' }).focus()
  await page.clock.fastForward(60_000)
  await page.keyboard.press('Tab')
  await expect(close).toBeFocused()
  await page.keyboard.press('Enter')
  await expect(close).toHaveCount(0)
})
