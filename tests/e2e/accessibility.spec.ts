import AxeBuilder from '@axe-core/playwright'
import { expect, type Page, test } from '@playwright/test'
import { menuRooms } from '../../shared-core/contract/shell-commands.ts'
import { openStudio, type Studio } from './studio.ts'

/** What axe finds wrong on the page now, as `rule: element`, so that a failure says where to look. */
async function faults(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).analyze()
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target }) => `${id}: ${target.join(' ')}`),
  )
}

async function choose(page: Page, theme: 'light' | 'dark'): Promise<void> {
  await page.evaluate((chosen) => {
    document.documentElement.dataset['theme'] = chosen
  }, theme)
}

async function enter(page: Page, room: string): Promise<void> {
  await page.evaluate((name) => {
    location.hash = `#/${name}`
  }, room)
  await page.getByRole('heading', { level: 1 }).waitFor()
  await expect(page.locator('[aria-busy="true"]')).toHaveCount(0)
}

test('the first screen has no fault that axe knows, by day and by lamplight', async () => {
  const { page, close } = await openStudio()
  await page.getByRole('heading', { level: 1, name: 'Tallystrand' }).waitFor()
  for (const theme of ['light', 'dark'] as const) {
    await choose(page, theme)
    expect(await faults(page)).toEqual([])
  }
  await close()
})

test.describe('with the sample', () => {
  let studio: Studio
  test.beforeAll(async () => {
    studio = await openStudio({ sample: true })
  })
  test.afterAll(() => studio.close())

  for (const theme of ['light', 'dark'] as const) {
    test(`every room is free of faults that axe knows, ${theme}`, async () => {
      test.slow()
      const { page } = studio
      await page.getByRole('navigation', { name: 'Rooms' }).waitFor()
      await choose(page, theme)
      const found: string[] = []
      for (const room of menuRooms) {
        await enter(page, room)
        for (const fault of await faults(page)) found.push(`${room}: ${fault}`)
      }
      expect(found).toEqual([])
    })
  }

  test('the finder and the keys are free of faults that axe knows', async () => {
    const { page } = studio
    await enter(page, 'today')
    await page.keyboard.press('Control+k')
    await page.getByRole('combobox', { name: 'Find anything' }).waitFor()
    expect(await faults(page)).toEqual([])
    await page.keyboard.press('Escape')
    await page.keyboard.press('?')
    await page.getByRole('dialog', { name: 'Keys' }).waitFor()
    expect(await faults(page)).toEqual([])
    await page.keyboard.press('Escape')
  })
})
