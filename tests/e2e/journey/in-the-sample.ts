import type { Page } from '@playwright/test'

import { priceSheet } from '../../../shared-core/pricing/price-sheet.ts'
import { ask } from '../ask.ts'
import type { Studio } from '../studio.ts'
import { choose, openRoom, pick, press, write } from './controls.ts'
import type { Finding } from './finding.ts'
import { format, job, today } from './job.ts'
import { figure, lastToast, read, table } from './screen.ts'

/** The way in short, where there is a past already: cover, price, one made, sold, taken back. */
export async function inTheSample({ page }: Studio): Promise<readonly Finding[]> {
  return [
    ...(await coverOfOneMore(page)),
    ...(await priceOfThePair(page)),
    ...(await makeAndSell(page)),
  ]
}

async function coverOfOneMore(page: Page): Promise<readonly Finding[]> {
  await openRoom(page, 'Orders')
  await page.getByRole('link', { name: 'New order' }).first().click()
  await write(page, 'For', job.market)
  await pick(page, 'Design', job.design)
  await page.getByLabel(/^How many \(/).fill(String(job.pairs))
  const cover = page.getByRole('region', { name: 'Cover' })
  await cover.getByRole('heading', { name: job.design }).waitFor()
  await cover.getByText(`of ${job.pairs} pairs`).waitFor()
  const { designId, colourwayId } = await designOf(page)
  const line = { designId, colourwayId, units: job.pairs, priceMinor: null }
  const draft = { customer: 'x', dueOn: today, promisedOn: today, note: '', lines: [line] }
  const asked = await ask(page, 'orders.cover', { today, order: { draft } })
  return [
    {
      what: 'Beside the other orders, stock covers',
      screen: await read(cover.getByText('can be made now')),
      store: `${asked.lines[0]?.coveredUnits} of ${job.pairs} pairs can be made now`,
    },
  ]
}

async function priceOfThePair(page: Page): Promise<readonly Finding[]> {
  await openRoom(page, 'Prices')
  await pick(page, 'Design', job.design)
  await page.getByRole('heading', { level: 1, name: 'Prices' }).waitFor()
  const { inputs, sheet } = await ask(page, 'prices.sheet', await designOf(page))
  const words = (prices: typeof sheet) =>
    prices.channels
      .map(({ channelName, priceMinor }) => `${channelName} ${format.money(priceMinor)}`)
      .join(', ')
  await page.getByText('One pair costs').waitFor()
  const rows = await table(page, 'Prices by channel')
  return [
    {
      what: 'One pair costs',
      screen: await figure(page, 'One pair costs'),
      core: format.money(priceSheet(inputs).costMinor),
      store: format.money(sheet.costMinor),
    },
    {
      what: 'Prices',
      screen: rows
        .map((row) => `${row['Channel']} ${row['Price']?.replace(/ ?yours$/, '')}`)
        .join(', '),
      core: words(priceSheet(inputs)),
      store: words(sheet),
    },
  ]
}

async function makeAndSell(page: Page): Promise<readonly Finding[]> {
  const before = (await ask(page, 'pieces.list', { state: 'here' })).pieces.length
  await openRoom(page, 'Bench')
  await page.getByRole('button', { name: 'Log a make' }).first().click()
  await pick(page, 'Design', job.design)
  await write(page, 'How many', '1')
  await choose(page, 'They go to', job.marketBox)
  const made = page.getByRole('button', { name: 'Made 1 pair' })
  await made.and(page.locator(':enabled')).waitFor()
  await made.click()
  const code = (await lastToast(page, 'Made 1')).replace('Made 1: ', '')
  await press(page, `Sell ${code}`)
  await press(page, 'Sold')
  await lastToast(page, `Sold ${code}`)
  await page.keyboard.press('Control+z')
  const undone = await lastToast(page, 'Undone')
  const { pieces } = await ask(page, 'pieces.list', { state: 'here' })
  return [
    { what: 'Then', screen: undone, core: `Undone: Sold ${code} at ${job.market}` },
    {
      what: 'Pieces here',
      screen: await figure(page, 'Pieces here'),
      core: String(before + 1),
      store: String(pieces.length),
    },
  ]
}

async function designOf(page: Page) {
  const { designs } = await ask(page, 'designs.list', { search: job.design })
  const designId = designs[0]?.id ?? ''
  const { colourways } = await ask(page, 'designs.read', { id: designId })
  return { designId, colourwayId: colourways[0]?.id ?? '' }
}
