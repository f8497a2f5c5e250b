import { expect, type Page, test } from '@playwright/test'

import { menuRooms } from '../../shared-core/contract/shell-commands.ts'
import { ask } from './ask.ts'
import { axeFaults, contrastFaults } from './axe-faults.ts'
import { goTo } from './go-to.ts'
import { openStudio, type Studio } from './studio.ts'

test.describe.configure({ mode: 'default' })

async function choose(page: Page, theme: 'light' | 'dark'): Promise<void> {
  await page.evaluate((chosen) => {
    document.documentElement.dataset['theme'] = chosen
  }, theme)
}

async function enter(page: Page, place: string): Promise<void> {
  // By way of nowhere, so that a place entered twice is entered anew.
  for (const hash of ['#/reports', `#/${place}`]) {
    await goTo(page, hash)
    await page.getByRole('heading', { level: 1 }).waitFor()
  }
  await expect(page.locator('[aria-busy="true"]')).toHaveCount(0)
}

/** Faults by day, and what is too faint by lamplight. */
async function faultsInBothLights(page: Page, part?: string): Promise<readonly string[]> {
  await choose(page, 'light')
  const byDay = await axeFaults(page, part)
  await choose(page, 'dark')
  const byLamp = await contrastFaults(page, part)
  return [...byDay, ...byLamp.map((fault) => `by lamplight, ${fault}`)]
}

async function faultsOfRooms(page: Page): Promise<readonly string[]> {
  const all: string[] = []
  for (const room of menuRooms) {
    await enter(page, room)
    for (const fault of await faultsInBothLights(page)) all.push(`${room}: ${fault}`)
  }
  return all
}

test('the first screen and ten rooms with nothing in them have no fault that axe knows', async () => {
  test.slow()
  const { page, close } = await openStudio()
  await page.getByRole('heading', { level: 1, name: 'Tallystrand' }).waitFor()
  expect(await faultsInBothLights(page)).toEqual([])
  await ask(page, 'workshop.begin', {
    with: 'empty',
    name: 'Estuary Beads',
    currency: 'EUR',
    decimalMark: ',',
    today: '2026-11-25',
  })
  await page.reload()
  await page.getByRole('navigation', { name: 'Rooms' }).waitFor()
  expect(await faultsOfRooms(page)).toEqual([])
  await close()
})

test.describe('with the sample', () => {
  let studio: Studio
  test.beforeAll(async () => {
    studio = await openStudio({ sample: true })
    await studio.page.getByRole('navigation', { name: 'Rooms' }).waitFor()
  })
  test.afterAll(() => studio.close())

  test('no room has a fault that axe knows', async () => {
    test.slow()
    expect(await faultsOfRooms(studio.page)).toEqual([])
  })

  test('every side sheet is free of faults, and Escape puts it away', async () => {
    test.slow()
    const { page } = studio
    const all: string[] = []
    for (const { place, opener } of await sheetsOf(page)) {
      await enter(page, place)
      if (opener === 'Print 1 tag')
        await page
          .getByRole('checkbox', { name: /^Choose [A-Z]/ })
          .first()
          .check()
      await page.getByRole('main').getByRole('button', { name: opener }).first().click()
      await page.getByRole('dialog').waitFor()
      const faults = await faultsInBothLights(page, '[role="dialog"]')
      for (const fault of faults) all.push(`${opener}: ${fault}`)
      await page.keyboard.press('Escape')
      await expect(page.getByRole('dialog'), `${opener} is put away`).toHaveCount(0)
    }
    expect(all).toEqual([])
  })

  test('the finder and the keys are free of faults that axe knows', async () => {
    const { page } = studio
    await enter(page, 'today')
    await page.keyboard.press('Control+k')
    await page.getByRole('combobox', { name: 'Find anything' }).waitFor()
    expect(await faultsInBothLights(page)).toEqual([])
    await page.keyboard.press('Escape')
    await page.keyboard.press('?')
    await page.getByRole('dialog', { name: 'Keys' }).waitFor()
    expect(await faultsInBothLights(page)).toEqual([])
    await page.keyboard.press('Escape')
  })

  test('Tab reaches every control of every room', async () => {
    test.slow()
    const { page } = studio
    const missed: string[] = []
    for (const room of menuRooms) {
      await enter(page, room)
      for (const name of await missedByTab(page)) missed.push(`${room}: ${name}`)
    }
    expect(missed).toEqual([])
  })

  test('no state is told by colour alone', async () => {
    const { page } = studio
    for (const room of ['today', 'stock', 'orders', 'shelf'] as const) {
      await enter(page, room)
      const badges = page.locator('.badge')
      await badges.first().waitFor()
      const told = await badges.evaluateAll((all) =>
        all.map((badge) => ({
          words: badge.textContent?.trim() ?? '',
          tone: /badge-(\w+)/.exec(badge.className)?.[1],
          shape: badge.querySelector('path')?.getAttribute('d'),
        })),
      )
      for (const { words } of told) expect(words, room).not.toBe('')
      const tones = new Map(told.map(({ tone, shape }) => [tone, shape]))
      expect(new Set(tones.values()).size, `${room}: a shape for each tone`).toBe(tones.size)
    }
  })
})

/** Where each side sheet opens, and the button that opens it. */
async function sheetsOf(page: Page) {
  const { materials } = await ask(page, 'materials.list', { kind: 'bead' })
  const { designs } = await ask(page, 'designs.list', {})
  const material = `stock/${materials[0]?.id}`
  const design = `designs/${designs[0]?.id}`
  return [
    { place: 'stock', opener: 'New material' },
    { place: material, opener: 'Change' },
    { place: material, opener: 'Take in a lot' },
    { place: material, opener: 'Weigh counted beads' },
    { place: material, opener: 'Weigh' },
    { place: design, opener: 'Choose beads' },
    { place: design, opener: 'Details' },
    { place: design, opener: 'Working' },
    { place: 'bench', opener: 'Log a make' },
    { place: 'shelf', opener: /^Sell / },
    { place: 'shelf', opener: /^[A-Z]{2}-\d{4}/ },
    { place: 'shelf', opener: 'Print 1 tag' },
    { place: 'prices', opener: /^Set the price at/ },
    { place: 'settings/channels', opener: 'Add a channel' },
    { place: 'settings/places', opener: 'Add a place' },
    { place: 'settings/suppliers', opener: 'Add a supplier' },
  ]
}

/** Controls that can be pressed or filled and that Tab never comes to, by name. */
async function missedByTab(page: Page): Promise<readonly string[]> {
  const waiting = await page.evaluate(() => {
    const wanted = 'a[href], button, input, select, textarea, summary, [tabindex="0"]'
    const all = [...document.querySelectorAll<HTMLElement>(wanted)].filter((element) => {
      if (element.matches(':disabled') || element.tabIndex < 0) return false
      if (element.closest('[aria-hidden="true"], [inert]') !== null) return false
      // Of radio buttons Tab comes to the chosen one; arrows go on from there.
      if (element.matches('input[type="radio"]:not(:checked)')) return false
      return element.checkVisibility()
    })
    for (const [at, element] of all.entries()) element.dataset['tabTest'] = String(at)
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur()
    return all.length
  })
  // Rows may still come while they are counted, and each has controls of its own.
  for (let press = 0; press < waiting + 200; press += 1) {
    await page.keyboard.press('Tab')
    const left = await page.evaluate(() => {
      if (document.activeElement instanceof HTMLElement) {
        delete document.activeElement.dataset['tabTest']
      }
      return document.querySelectorAll('[data-tab-test]').length
    })
    if (left === 0) return []
  }
  return page
    .locator('[data-tab-test]')
    .evaluateAll((all) => all.map((one) => one.outerHTML.slice(0, 120)))
}
