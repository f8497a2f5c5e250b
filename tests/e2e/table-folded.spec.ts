import { expect, type Page, test } from '@playwright/test'
import { ask } from './ask.ts'
import { goTo } from './go-to.ts'
import { kept, keys, lay, newBlank, picture } from './on-the-table.ts'
import { studioOfFile } from './studio-of-file.ts'

// Palette and figures folded away: what is refused is seen all the same.

const studio = studioOfFile()

const folding = (page: Page) => ({
  fold: page.getByRole('button', { name: 'Fold palette and figures away (W)' }),
  show: page.getByRole('button', { name: 'Show palette and figures (W)' }),
  aside: page.getByRole('complementary', { name: 'Palette and figures' }),
})

test('a slot’s name that is refused stays as it is typed while the palette goes', async () => {
  const { page } = studio()
  const { show, aside } = folding(page)
  const id = await newBlank(page, 'Curlew drop')
  await page.getByRole('button', { name: 'Name or colour slot A' }).click()
  const name = page.getByRole('textbox', { name: 'Name', exact: true })
  await name.fill('x'.repeat(121))
  await picture(page).focus()
  await page.keyboard.press('w')
  await expect(aside).toHaveCount(0)
  await expect(name).toHaveAttribute('aria-invalid', 'true')
  await expect(page.getByText(/121 characters/)).toBeVisible()
  await page.getByRole('button', { name: 'Keep' }).click()
  await expect(name).toBeFocused()
  await name.fill('pebble')
  await page.getByRole('button', { name: 'Keep' }).click()
  await expect.poll(async () => (await kept(page, id)).body.palette[0]?.name).toBe('pebble')
  await show.click()
})

test('a name among the parts that is refused keeps the palette, and is led to', async () => {
  const { page } = studio()
  const { fold, show, aside } = folding(page)
  await newBlank(page, 'Dunlin drop')
  await page.getByText('Parts, strands and findings').click()
  const part = page.getByRole('textbox', { name: 'Name of the panel' })
  await part.fill(' ')
  await fold.click()
  await expect(part).toBeFocused()
  await picture(page).focus()
  await page.keyboard.press('w')
  await expect(part).toBeFocused()
  // Saving goes the same way, by its button and by its key.
  await page.getByRole('button', { name: 'Save a version' }).click()
  await expect(part).toBeFocused()
  await picture(page).focus()
  await page.keyboard.press('Control+s')
  await expect(part).toBeFocused()
  await expect(page.getByRole('dialog')).toHaveCount(0)
  await page.keyboard.press('Escape')
  await fold.click()
  await expect(aside).toHaveCount(0)
  await show.click()
})

test('a design that cannot be read says so beside the button that brings its figures back', async () => {
  const { page } = studio()
  const { fold, show, aside } = folding(page)
  const id = await newBlank(page, 'Avocet drop')
  const { body, position } = await kept(page, id)
  const strand = {
    kind: 'strand',
    id: 'fringe',
    name: 'Fringe',
    shape: 'fringe',
    copies: 1_000,
    beads: '9999A',
  } as const
  const order = [...body.parts.map((one) => one.id), 'fringe']
  await goTo(page, '#/designs')
  await ask(page, 'drafts.stroke', {
    designId: id,
    position,
    strokes: [
      {
        label: 'Fringe',
        redo: [{ kind: 'pieces', order, parts: [strand] }],
        undo: [{ kind: 'pieces', order: order.slice(0, -1) }],
      },
    ],
  })
  await lay(page, id)
  const refused = page.getByRole('alert').filter({ hasText: 'strands of the design hold' })
  await expect(aside.getByRole('alert')).toHaveCount(1)
  await page.keyboard.press('w')
  await expect(aside).toHaveCount(0)
  await expect(refused).toBeVisible()
  await page.getByRole('button', { name: 'Show palette and figures', exact: true }).click()
  await expect(aside.getByRole('alert')).toHaveCount(1)
  await expect(refused).toHaveCount(1)
  await expect(fold).toBeFocused()
  await picture(page).focus()
  await keys(page, ['w', 'Control+z'])
  await expect(refused).toHaveCount(0)
  await show.click()
})
