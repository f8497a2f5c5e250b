import type { Page } from '@playwright/test'

import { ask } from '../ask.ts'
import { choose, openRoom, write } from './controls.ts'
import type { Finding } from './finding.ts'
import { format, job } from './job.ts'
import { type MakeByCore, makeByCore } from './make-by-core.ts'
import { figure, lastToast, table } from './screen.ts'
import { type StockFacts, stockFacts } from './stock-facts.ts'

/** Four pairs for the order: what leaves which drawer, then four pieces with codes on the Shelf. */
export async function makePairs(page: Page): Promise<readonly Finding[]> {
  const before = await stockFacts(page)
  const { workshop } = await ask(page, 'workshop.read', {})
  if (workshop === null) throw new Error('There is no workshop.')
  const expected = makeByCore(before, workshop)
  await openRoom(page, 'Bench')
  const waiting = page.getByRole('table', { name: 'Promised and not made yet' })
  await waiting
    .getByRole('row', { name: job.design })
    .getByRole('button', { name: 'Log a make' })
    .click()
  await write(page, 'How many', String(job.made))
  await choose(page, 'They go to', job.marketBox)
  const made = page.getByRole('button', { name: `Made ${job.made} pairs` })
  await made.and(page.locator(':enabled')).waitFor()
  const planned = await planOnScreen(page, expected, before)
  await made.click()
  const toast = await lastToast(page, 'Made')
  return [
    ...planned,
    { what: 'Then', screen: toast, core: `Made ${job.made}: ${expected.codes.join(', ')}` },
    ...(await shelfAfter(page, expected)),
    ...(await stockAfter(page, { before, expected })),
  ]
}

async function planOnScreen(
  page: Page,
  { movements, costMinor, benchS }: MakeByCore,
  { materials }: StockFacts,
): Promise<readonly Finding[]> {
  const drawn = await table(page, 'From the drawers')
  const wordsOf = (materialId: string, quantity: number) => {
    const material = materials.find(({ id }) => id === materialId)
    return `${material?.name} ${format.quantity(-quantity, material?.unit ?? 'piece')}`
  }
  return [
    {
      what: `${job.made} pairs cost`,
      screen: await figure(page, 'Costs'),
      core: format.money(costMinor),
    },
    {
      what: `${job.made} pairs take`,
      screen: await figure(page, 'Takes'),
      core: format.duration(benchS),
    },
    {
      what: 'From the drawers',
      screen: drawn
        .map((row) => `${row['Material']} ${row['Quantity']}`)
        .toSorted()
        .join(', '),
      core: movements
        .map(({ materialId, quantity }) => wordsOf(materialId, quantity))
        .toSorted()
        .join(', '),
    },
  ]
}

async function shelfAfter(page: Page, { codes, pieces }: MakeByCore): Promise<readonly Finding[]> {
  await page.getByRole('heading', { level: 1, name: 'Shelf' }).waitFor()
  const rows = await table(page, 'Pieces')
  const stored = (await ask(page, 'pieces.list', { state: 'here' })).pieces
  return [
    {
      what: 'Pieces on the Shelf, and what each cost',
      screen: rows
        .map((row) => `${row['Piece']} ${row['Cost']}`)
        .toSorted()
        .join(', '),
      core: codes
        .map((code, at) => `${code} ${format.money(pieces[at]?.costMinor ?? 0)}`)
        .toSorted()
        .join(', '),
      store: stored
        .map(({ code, costMinor }) => `${code} ${format.money(costMinor)}`)
        .toSorted()
        .join(', '),
    },
    {
      what: 'They stand in',
      screen: [...new Set(rows.map((row) => row['Where']))].join(', '),
      core: job.marketBox,
      store: [...new Set(stored.map(({ placeName }) => placeName))].join(', '),
    },
  ]
}

async function stockAfter(
  page: Page,
  { before, expected }: Readonly<{ before: StockFacts; expected: MakeByCore }>,
): Promise<readonly Finding[]> {
  await openRoom(page, 'Stock')
  const rows = await table(page, 'Materials')
  const after = await stockFacts(page)
  const taken = Map.groupBy(expected.movements, ({ materialId }) => materialId)
  const used = before.materials.filter(({ id }) => taken.has(id))
  const leftOf = (id: string) =>
    (before.materials.find((one) => one.id === id)?.onHand ?? 0) +
    (taken.get(id) ?? []).reduce((sum, { quantity }) => sum + quantity, 0)
  const words = (name: string, quantity: number, unit: 'mg' | 'mm' | 'piece') =>
    `${name} ${format.quantity(quantity, unit)}`
  return [
    {
      what: 'Left in the drawers',
      screen: used
        .map(
          ({ name }) =>
            `${name} ${rows.find((row) => row['Material']?.startsWith(name))?.['On hand']}`,
        )
        .join(', '),
      core: used.map(({ id, name, unit }) => words(name, leftOf(id), unit)).join(', '),
      store: used
        .map(({ id, name, unit }) =>
          words(name, after.materials.find((one) => one.id === id)?.onHand ?? 0, unit),
        )
        .join(', '),
    },
    {
      what: 'Stock is worth at cost',
      screen: await figure(page, 'Worth at cost'),
      core: format.money(before.worthMinor - expected.materialsMinor),
      store: format.money(after.worthMinor),
    },
  ]
}
