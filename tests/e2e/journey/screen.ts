import type { Locator, Page } from '@playwright/test'

import { ask } from '../ask.ts'

// What a person reads off the screen, found by what is written beside it.

/** The figure that stands under a label: `€ 24,80`. Waits until there is one. */
export async function figure(where: Page | Locator, label: string): Promise<string> {
  await settle(where)
  const term = where.getByRole('term').filter({ hasText: new RegExp(`^${escaped(label)}$`) })
  const value = term.locator('xpath=following-sibling::dd').first()
  await value.filter({ hasNotText: '…' }).waitFor()
  return firstLine(await seenText(value))
}

/** A table as rows of text by column head. Waits until the table stands. */
export async function table(
  where: Page | Locator,
  caption: string,
): Promise<readonly Readonly<Record<string, string>>[]> {
  const found = where.getByRole('table', { name: caption })
  await found.first().waitFor()
  await settle(where)
  const rows = await found.first().evaluate((element) => {
    // biome-ignore lint/performance/useDomNodeTextContent: what is hidden is not read
    const text = (cell: Element) => (cell instanceof HTMLElement ? cell.innerText : '')
    return [...element.querySelectorAll('tr')].map((row) => [...row.children].map(text))
  })
  const [heads = [], ...others] = rows.map((cells) => cells.map(plain))
  return others.map((cells) => Object.fromEntries(heads.map((head, at) => [head, cells[at] ?? ''])))
}

/** The row of a table whose first column begins with a name. */
export async function tableRow(
  where: Page | Locator,
  caption: string,
  name: string,
): Promise<Readonly<Record<string, string>>> {
  const rows = await table(where, caption)
  const row = rows.find((cells) => Object.values(cells)[0]?.startsWith(name))
  if (row === undefined) {
    const names = rows.map((cells) => Object.values(cells)[0]).join(', ')
    throw new Error(`The table “${caption}” has no row that begins with ${name}, but ${names}.`)
  }
  return row
}

/**
 * Lets the screen catch up: a room shows what it knew at once and then what is true now.
 *
 * The service answers in turn, so an answer to us means the room has had its own.
 */
async function settle(where: Page | Locator): Promise<void> {
  const page = 'page' in where ? where.page() : where
  for (let round = 0; round < 2; round += 1) {
    await ask(page, 'workshop.read', {})
    await page.evaluate(
      () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))),
    )
  }
}

/** What was just done, as the newest toast says it. */
export async function lastToast(page: Page, beginsWith: string): Promise<string> {
  const toast = page.getByLabel('What was just done').getByText(beginsWith).last()
  await toast.waitFor()
  return read(toast)
}

/** What an element shows, without what is hidden. */
export async function read(what: Locator): Promise<string> {
  return plain(await seenText(what))
}

function seenText(what: Locator): Promise<string> {
  // biome-ignore lint/performance/useDomNodeTextContent: what is hidden is not read
  return what.innerText()
}

/** Text as it is read: no-break spaces and line breaks are spaces. */
export function plain(text: string): string {
  return text.replace(/\s+/gu, ' ').trim()
}

function firstLine(text: string): string {
  return plain(text.trim().split('\n')[0] ?? '')
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')
}
