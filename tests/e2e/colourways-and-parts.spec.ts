import { expect, type Page, test } from '@playwright/test'
import { ask } from './ask.ts'
import { axeFaults, contrastFaults } from './axe-faults.ts'
import { goTo } from './go-to.ts'
import { beginEmpty } from './journey/begin.ts'
import { openStudio } from './studio.ts'

async function openDesign(page: Page, name: string, sub: string): Promise<string> {
  const { designs } = await ask(page, 'designs.list', { search: name })
  const id = designs[0]?.id ?? ''
  await goTo(page, `#/designs/${id}/${sub}`)
  await page.getByRole('heading', { level: 1, name: designs[0]?.name ?? name }).waitFor()
  return id
}

/** Whether anything has been drawn on a canvas. */
async function isPainted(page: Page, selector: string): Promise<boolean> {
  return page
    .locator(selector)
    .first()
    .evaluate((element) => {
      const canvas = element as HTMLCanvasElement
      const brush = canvas.getContext('2d')
      if (brush === null || canvas.width === 0) return false
      return brush.getImageData(0, 0, canvas.width, canvas.height).data.some((byte) => byte > 0)
    })
}

async function noFaults(page: Page): Promise<void> {
  expect(await axeFaults(page)).toEqual([])
  await page.evaluate(() => {
    document.documentElement.dataset['theme'] = 'dark'
  })
  expect(await contrastFaults(page)).toEqual([])
  await page.evaluate(() => {
    document.documentElement.dataset['theme'] = 'light'
  })
}

test('parts are hung, typed, undone, taken away only when said, and saved as a version to compare', async () => {
  test.slow()
  const studio = await openStudio({ sample: true })
  const { page } = studio
  const id = await openDesign(page, 'Tidewrack', 'parts')
  const parts = page.getByRole('region', { name: 'Parts' })
  const beads = page.getByLabel('Its beads, from the panel outwards')
  await expect(parts.getByRole('listitem')).toHaveCount(2)
  await expect.poll(() => isPainted(page, '.parts-picture canvas')).toBe(true)

  await parts.getByRole('button', { name: 'Fringe', exact: true }).click()
  await expect(parts.getByRole('listitem')).toHaveCount(3)
  await beads.fill('5a, 2z')
  await expect(page.getByText('The palette has no slot Z.')).toBeVisible()
  await beads.press('Escape')
  await expect(beads).toHaveValue('8A')
  await beads.fill('5a, 2b')
  await beads.press('Enter')
  await expect(beads).toHaveValue('5A 2B')
  await page.getByLabel('Strands side by side').fill('2')
  await page.getByLabel('Strands side by side').press('Enter')

  await page.keyboard.press('Tab')
  await page.getByRole('button', { name: /^Undo/ }).click()
  await expect(page.getByLabel('Strands side by side')).toHaveValue('1')
  await page.getByRole('button', { name: /^Redo/ }).click()
  await expect(page.getByLabel('Strands side by side')).toHaveValue('2')

  await parts.getByRole('button', { name: /^Diamond/ }).click()
  await page.getByRole('button', { name: 'Remove Diamond' }).click()
  await expect(page.getByText('Diamond holds Ear loop and Fringe.')).toBeVisible()
  await page.getByRole('button', { name: 'Keep' }).click()
  await expect(parts.getByRole('listitem')).toHaveCount(3)
  await page.getByRole('radio', { name: 'Mirrored' }).check()
  await noFaults(page)

  await page.getByRole('button', { name: 'Save a version' }).click()
  await page.getByRole('button', { name: 'Save as version 2' }).click()
  await expect(page.getByRole('dialog')).toHaveCount(0)
  await page.getByRole('button', { name: 'Save a version' }).click()
  await expect(page.getByText('What lies on the table is version 2 as it stands.')).toBeVisible()
  await expect(page.getByRole('button', { name: 'Save as version 3' })).toBeDisabled()
  await page.keyboard.press('Escape')
  const saved = await ask(page, 'designs.read', { id })
  expect(saved.version).toBe(2)
  expect(saved.body.parts.map((part) => [part.name, part.copies])).toEqual([
    ['Diamond', 2],
    ['Ear loop', 1],
    ['Fringe', 2],
  ])
  expect(saved.body.parts[0]).toMatchObject({ mirrored: true })

  await goTo(page, `#/designs/${id}/versions`)
  await expect(page.getByText('Fringe is new')).toBeVisible()
  await expect(page.getByText('Diamond: every second copy is mirrored now')).toBeVisible()
  await expect(page.locator('figcaption').last()).toContainText('14 beads of it ringed')
  await noFaults(page)
  await page.getByRole('button', { name: 'Bring version 1 back' }).click()
  await expect(page.getByText('Version 1 is back as version 3')).toBeVisible()
  const back = await ask(page, 'designs.read', { id })
  const first = await ask(page, 'designs.read', { id, version: 1 })
  expect(back.version).toBe(3)
  expect(back.body).toEqual(first.body)
  await studio.close()
})

test('colourways are copied, filled from what is near, swapped, compared and removed', async () => {
  test.slow()
  const studio = await openStudio({ sample: true })
  const { page } = studio
  const id = await openDesign(page, 'Tidewrack', 'colourways')
  const card = (name: string) => page.getByRole('listitem', { name, exact: true })
  await expect(card('Wet slate and brine').getByText('makeable now')).toBeVisible()
  await expect.poll(() => isPainted(page, '.colourway-card canvas')).toBe(true)
  await noFaults(page)

  await page.getByRole('button', { name: 'Copy Wet slate and brine' }).click()
  const copy = 'Wet slate and brine copy'
  await card(copy).waitFor()
  await page.getByRole('button', { name: `Choose beads of ${copy}` }).click()
  const sheet = page.getByRole('dialog', { name: 'Beads of this colourway' })
  await sheet.getByLabel('Name').fill('Turned tide')
  await sheet.getByText('Beads like wet slate').click()
  const near = sheet.getByRole('list', { name: 'Nearest to slot A' }).getByRole('button').first()
  const chosen = await near.locator('.near-name').textContent()
  await near.click()
  await sheet.getByRole('button', { name: 'Swap' }).click()
  await noFaults(page)
  await sheet.getByRole('button', { name: 'Save the colourway' }).click()
  await card('Turned tide').waitFor()

  const { colourways } = await ask(page, 'colourways.list', { designId: id })
  const turned = colourways.find(({ name }) => name === 'Turned tide')
  const bead = (key: string) => turned?.lines.find((line) => line.key === key)?.materialName
  expect([bead('slot:A'), bead('slot:B')]).toEqual(['brine', chosen])
  await expect(card('Turned tide')).toContainText(chosen ?? '')

  await page.getByRole('button', { name: 'Compare two' }).click()
  await expect(page.getByRole('table', { name: 'What a pair takes otherwise' })).toBeVisible()
  await noFaults(page)
  await page.getByRole('button', { name: 'Show all', exact: true }).click()

  await page.getByRole('button', { name: 'Remove Turned tide' }).click()
  await expect(card('Turned tide')).toHaveCount(0)
  await page.keyboard.press('Control+z')
  await card('Turned tide').waitFor()
  await studio.close()
})

test('the gallery draws whole pieces, puts the newest first and brings back what was put away', async () => {
  const studio = await openStudio({ sample: true })
  const { page } = studio
  await goTo(page, '#/designs')
  await expect.poll(() => isPainted(page, '.design-card canvas')).toBe(true)
  await page.getByRole('button', { name: 'Put away Mudflat band' }).click()
  await expect(page.getByRole('link', { name: 'Mudflat band' })).toHaveCount(0)
  await page.getByRole('radio', { name: 'Put away' }).check()
  await page.getByRole('button', { name: 'Bring back Mudflat band' }).click()
  await page.getByRole('radio', { name: 'In use' }).check()
  await page.getByRole('link', { name: 'Mudflat band' }).waitFor()
  await page.getByRole('button', { name: 'Duplicate Sluice cuff' }).click()
  await page.getByRole('heading', { level: 1, name: 'Sluice cuff copy' }).waitFor()
  await goTo(page, '#/designs')
  await page.getByRole('combobox', { name: 'Order' }).click()
  await page.getByRole('option', { name: 'Newest first' }).click()
  await expect(page.locator('.design-card-name').first()).toHaveText('Sluice cuff copy')
  await noFaults(page)
  await studio.close()
})

test('without stock every colourway says what is missing', async () => {
  const studio = await openStudio()
  const { page } = studio
  await beginEmpty(page)
  const { id } = await ask(page, 'designs.save', {
    name: 'First drop',
    tags: [],
    body: {
      unitName: 'piece',
      palette: [
        {
          label: 'A',
          name: 'slate',
          formId: 'cylinder-11/0',
          colourHex: '#4b5a63',
          finish: 'matte',
        },
      ],
      parts: [],
      extras: [],
      threadId: 'braided-6lb',
      needleSize: '12',
    },
    note: '',
  })
  await goTo(page, `#/designs/${id}/parts`)
  await page.getByText('Nothing to draw yet.').waitFor()
  await noFaults(page)
  await page.getByRole('button', { name: 'Panel', exact: true }).click()
  await expect.poll(() => isPainted(page, '.parts-picture canvas')).toBe(true)
  await goTo(page, `#/designs/${id}/colourways`)
  await page.getByText('First colourway').first().waitFor()
  await noFaults(page)
  await goTo(page, `#/designs/${id}/versions`)
  await page.getByText('There is one version so far.').waitFor()
  await noFaults(page)
  await studio.close()
})
