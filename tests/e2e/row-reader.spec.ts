import { expect, type Locator, type Page, test } from '@playwright/test'
import { ask } from './ask.ts'
import { axeFaults, contrastFaults } from './axe-faults.ts'
import { goTo } from './go-to.ts'
import { openStudio, type Studio } from './studio.ts'

test.describe.configure({ mode: 'default' })

let studio: Studio
test.beforeAll(async () => {
  studio = await openStudio({ sample: true })
  await studio.page.getByRole('navigation', { name: 'Rooms' }).waitFor()
})
test.afterAll(() => studio.close())

const rowName = (page: Page) => page.locator('.reader-line-name > span').first()

/** Tab until something has the focus. */
async function tabTo(page: Page, wanted: Locator): Promise<void> {
  await wanted.waitFor()
  for (let presses = 0; presses < 120; presses += 1) {
    if (await wanted.evaluate((element) => element === document.activeElement)) return
    await page.keyboard.press('Tab')
  }
  throw new Error('Tab does not reach it')
}

/** Opens the reader over new work of one design. */
async function openReader(page: Page, design: string, units: number): Promise<void> {
  const { designs } = await ask(page, 'designs.list', {})
  const id = designs.find(({ name }) => name.startsWith(design))?.id ?? ''
  const { colourways } = await ask(page, 'designs.read', { id })
  const work = await ask(page, 'bench.begin', {
    ...{ designId: id, colourwayId: colourways[0]?.id ?? '', units, lots: {}, before: {} },
    begunOn: '2026-11-25',
  })
  await goTo(page, `#/bench/${work.id}/read`)
  await rowName(page).waitFor()
}

test('two pairs are made with the keyboard alone: begun, read row by row, left, taken up again, finished', async () => {
  test.slow()
  const { page } = studio
  await page.keyboard.press('Control+Digit5')
  await tabTo(page, page.getByRole('button', { name: 'Start a piece' }))
  await page.keyboard.press('Enter')
  await tabTo(page, page.getByRole('combobox', { name: 'Design' }))
  await page.keyboard.type('Samphire')
  await page.getByRole('option', { name: 'Samphire studs' }).waitFor()
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('Enter')
  await tabTo(page, page.getByLabel('How many'))
  await page.keyboard.press('Control+a')
  await page.keyboard.type('2')
  await tabTo(page, page.getByRole('button', { name: 'Begin 2 pairs' }))
  await page.keyboard.press('Enter')
  await tabTo(page, page.getByRole('link', { name: 'Begin row by row' }))
  await page.keyboard.press('Enter')

  const reader = page.getByRole('dialog', { name: 'Samphire studs' })
  await expect(reader).toContainText('Pair 1 of 2')
  await expect(rowName(page)).toHaveText('Thread the needle')
  await page.keyboard.press('Space')
  await expect(rowName(page)).toHaveText('Row 1')
  await page.keyboard.press('ArrowRight')
  await expect(rowName(page)).toHaveText('Row 2')
  await page.keyboard.press('Backspace')
  await expect(rowName(page)).toHaveText('Row 1')
  await page.keyboard.press('ArrowDown')
  await page.keyboard.press('Enter')
  await expect(rowName(page)).toHaveText('Row 3')

  await page.keyboard.press('Escape')
  await expect(reader).toHaveCount(0)
  await tabTo(page, page.getByRole('link', { name: 'Go on' }))
  await page.keyboard.press('Enter')
  await expect(rowName(page)).toHaveText('Row 3')

  // A pair is two studs of nine lines: a new thread, seven rows, the ends.
  for (let line = 3; line < 18; line += 1) await page.keyboard.press('Space')
  await expect(reader).toContainText('Pair 1 of 2 is done')
  await expect(reader).toContainText('Pair 2 of 2')
  for (let line = 0; line < 18; line += 1) await page.keyboard.press('Enter')
  await expect(reader.getByRole('heading', { name: '2 pairs made' })).toBeVisible()
  await page.keyboard.press('Enter')

  await tabTo(page, page.getByRole('button', { name: 'Finish 2 pairs' }))
  await page.keyboard.press('Enter')
  await expect(page.getByRole('heading', { level: 1, name: 'Shelf' })).toBeVisible()
  const { works } = await ask(page, 'bench.list', { state: 'finished' })
  const work = works.find(({ designName }) => designName === 'Samphire studs')
  expect(work).toMatchObject({ state: 'done', unitsDone: 2, finished: { units: 2 } })
})

test('a pedal is learnt, works at once, and a key that has a role is told', async () => {
  const { page } = studio
  await openReader(page, 'Tidewrack', 1)
  await page.getByRole('tab', { name: 'Settings' }).click()
  const pedal = page.getByRole('group', { name: 'Pedal that goes on' })
  await pedal.getByRole('button', { name: 'Learn a key' }).click()
  await page.keyboard.press('b')
  await expect(pedal.getByRole('button', { name: 'Take away B' })).toBeVisible()
  await page.keyboard.press('b')
  await expect(rowName(page)).toHaveText('Row 1')
  const back = page.getByRole('group', { name: 'Pedal that goes back' })
  await back.getByRole('button', { name: 'Learn a key' }).click()
  await page.keyboard.press('b')
  await expect(back.getByRole('status')).toContainText('B moves on')
  await expect(rowName(page)).toHaveText('Row 1')
  await page.keyboard.press('Escape')
  await expect(page.getByRole('tab', { name: 'Piece' })).toHaveAttribute('aria-selected', 'true')
  await page.keyboard.press('b')
  await expect(rowName(page)).toHaveText('Row 2')
})

test('a row is gone to by its number, by click and by bead; the words are large enough for a metre', async () => {
  const { page } = studio
  await openReader(page, 'Sluice', 1)
  await page.getByRole('tab', { name: 'Rows' }).click()
  await page.getByLabel('Row number').fill('18')
  await page.keyboard.press('Enter')
  await expect(rowName(page)).toHaveText('Row 18')
  const words = page.locator('.reader-words')
  await expect(words).toContainText('2 oyster shell')
  const px = await words.evaluate((element) =>
    Number.parseFloat(getComputedStyle(element).fontSize),
  )
  expect(px).toBeGreaterThanOrEqual(40)
  await page.locator('.reader-line').click()
  await expect(page.locator('.reader-note-urgent')).toContainText('New thread before row 19')
  await page.getByRole('button', { name: 'Back' }).click()
  await expect(rowName(page)).toHaveText('Row 18')
  await openReader(page, 'Tidewrack', 1)
  await page.getByRole('radio', { name: 'By bead' }).check({ force: true })
  for (let step = 0; step < 3; step += 1) await page.keyboard.press('Space')
  await expect(rowName(page)).toHaveText('Row 2')
  await expect(page.locator('.reader-line-of')).toContainText('step 2 of 2')
  await page.getByRole('radio', { name: 'By row' }).check({ force: true })
})

test('the screen is kept on while the clock runs, and let go when it is paused', async () => {
  const { page, app } = studio
  await openReader(page, 'Mudflat', 1)
  // Blockers are numbered from 0; only the reader makes any.
  const held = () =>
    app.evaluate(({ powerSaveBlocker }) =>
      Array.from({ length: 40 }, (_, id) => id).some((id) => powerSaveBlocker.isStarted(id)),
    )
  await expect.poll(held).toBe(true)
  await page.keyboard.press('p')
  await expect(page.getByText('Paused. The clock goes on with your next step.')).toBeVisible()
  await expect.poll(held).toBe(false)
  await page.keyboard.press('Space')
  await expect.poll(held).toBe(true)
  await page.keyboard.press('Escape')
  await expect.poll(held).toBe(false)
})

test('the timer moves on by itself and waits at a new thread', async () => {
  const { page } = studio
  await page.evaluate(() => localStorage.setItem('tallystrand.reader', '{"beadS":1}'))
  await openReader(page, 'Tidewrack', 1)
  await page.getByRole('button', { name: 'Timer' }).click()
  await page.waitForTimeout(1_500)
  await expect(rowName(page)).toHaveText('Thread the needle')
  await page.keyboard.press('ArrowRight')
  await expect(rowName(page)).toHaveText('Row 1')
  await expect(rowName(page)).toHaveText('Row 2')
  await page.evaluate(() => localStorage.removeItem('tallystrand.reader'))
})

test('the reader has no fault that axe knows, by day and by lamplight, in each of its views', async () => {
  test.slow()
  const { page } = studio
  await openReader(page, 'Reedbed', 2)
  const all: string[] = []
  for (const view of ['Piece', 'Rows', 'Settings']) {
    await page.getByRole('tab', { name: view }).click()
    await page.evaluate(() => {
      document.documentElement.dataset['theme'] = 'light'
    })
    for (const fault of await axeFaults(page)) all.push(`${view}: ${fault}`)
    await page.evaluate(() => {
      document.documentElement.dataset['theme'] = 'dark'
    })
    for (const fault of await contrastFaults(page)) all.push(`${view} by lamplight: ${fault}`)
  }
  expect(all).toEqual([])
})
