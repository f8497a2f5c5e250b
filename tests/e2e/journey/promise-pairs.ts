import type { Page } from '@playwright/test'

import type { LineCover } from '../../../shared-core/stock/cover.ts'
import { ask } from '../ask.ts'
import { openRoom, pick, press, write } from './controls.ts'
import { coverByCore } from './cover-by-core.ts'
import type { Finding } from './finding.ts'
import { dueOn, format, job, today } from './job.ts'
import { figure, read, table } from './screen.ts'
import { stockFacts } from './stock-facts.ts'

/** A band promised to the gallery first; then ten pairs for the market, and what stock does for them. */
export async function promisePairs(page: Page): Promise<readonly Finding[]> {
  await enterOrder(page, { customer: 'Gull Lane Gallery', design: job.band, units: 1 })
  await press(page, 'Promise it')
  await page.getByRole('heading', { level: 1, name: 'OR-0001' }).waitFor()
  await enterOrder(page, { customer: job.market, design: job.design, units: job.pairs })
  const expected = coverByCore(await stockFacts(page)).pairs
  const findings = await coverOnScreen(page, expected)
  await press(page, 'Promise it')
  await page.getByRole('heading', { level: 1, name: 'OR-0002' }).waitFor()
  const { orders } = await ask(page, 'orders.list', { state: 'open' })
  return [
    ...findings,
    {
      what: 'Due',
      screen: await figure(page, 'Due'),
      core: format.date(dueOn),
      store: format.date(orders.find(({ code }) => code === 'OR-0002')?.dueOn ?? ''),
    },
    ...(await sameInStore(page, expected)),
  ]
}

type Order = Readonly<{ customer: string; design: string; units: number }>

async function enterOrder(page: Page, { customer, design, units }: Order): Promise<void> {
  await openRoom(page, 'Orders')
  await page
    .getByRole('link', { name: /New order|Enter an order/ })
    .first()
    .click()
  await write(page, 'For', customer)
  await write(page, 'Due', dueOn)
  await pick(page, 'Design', design)
  await page.getByLabel(/^How many \(/).fill(String(units))
  await page.getByRole('heading', { level: 3, name: design }).waitFor()
}

async function coverOnScreen(page: Page, expected: LineCover): Promise<readonly Finding[]> {
  const stock = await stockFacts(page)
  const materialOf = (id: string) => stock.materials.find((one) => one.id === id)
  const cover = page.getByRole('region', { name: 'Cover' })
  const now = await read(cover.getByText('can be made now'))
  const words = (quantity: number, id: string) =>
    format.quantity(quantity, materialOf(id)?.unit ?? 'piece')
  const short = await table(cover, 'Short')
  const limits = await table(cover, 'What limits it, most binding first')
  return [
    {
      what: 'Stock covers',
      screen: now,
      core: `${expected.units} of ${format.counted(expected.ordered, 'pair')} can be made now`,
    },
    {
      what: 'Short of',
      screen: short.map((row) => `${row['Material']} ${row['Short']}`).join(', '),
      core: expected.limits
        .map(
          ({ materialId, short: missing }) =>
            `${materialOf(materialId)?.name} ${words(missing, materialId)}`,
        )
        .join(', '),
    },
    {
      what: 'Packs to buy, and what they cost',
      screen: short
        .map((row) => `${row['Packs']?.split(/, (?=[A-Z])/)[0]} ${row['Cost']}`)
        .join(', '),
      core: expected.limits
        .map(({ materialId, purchase }) => {
          const offer = stock.offers.find(({ offerId }) => offerId === purchase?.offerId)
          return `${purchase?.packs} × ${words(offer?.packQuantity ?? 0, materialId)} ${format.money(purchase?.cost.amountMinor ?? 0)}`
        })
        .join(', '),
    },
    {
      what: 'What limits it, and what other orders hold of it',
      screen: limits
        .map(
          (row) =>
            `${row['Material']}: enough for ${row['Enough for']}, others hold ${row['Other orders hold']}`,
        )
        .join(', '),
      core: expected.limits
        .map(
          ({ materialId, units, heldByOthers }) =>
            `${materialOf(materialId)?.name}: enough for ${units}, others hold ${words(heldByOthers, materialId)}`,
        )
        .join(', '),
    },
  ]
}

async function sameInStore(page: Page, expected: LineCover): Promise<readonly Finding[]> {
  const { orders } = await ask(page, 'orders.coverAll', { today })
  const saved = orders.find(({ code }) => code === 'OR-0002')?.cover
  const now = await read(page.getByRole('region', { name: 'Cover' }).getByText('can be made now'))
  const line = saved?.lines[0]
  return [
    {
      what: 'Once promised, stock covers',
      screen: now,
      core: `${expected.units} of ${format.counted(expected.ordered, 'pair')} can be made now`,
      store: `${line?.coveredUnits} of ${format.counted(line?.units ?? 0, 'pair')} can be made now`,
    },
  ]
}
