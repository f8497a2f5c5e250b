import type { Page } from '@playwright/test'

import { checkChannel } from '../../../shared-core/pricing/channel.ts'
import { type PriceOutcome, priceAt } from '../../../shared-core/pricing/price-at.ts'
import { priceSheet, saleChannel } from '../../../shared-core/pricing/price-sheet.ts'
import { currencyCode } from '../../../shared-core/units/currency.ts'
import { durationS } from '../../../shared-core/units/duration.ts'
import { ask } from '../ask.ts'
import { openRoom, press, take } from './controls.ts'
import type { Finding } from './finding.ts'
import { format, job, today } from './job.ts'
import { readSheet } from './price-pair.ts'
import { figure, lastToast, table } from './screen.ts'
import { stockFacts } from './stock-facts.ts'

/** One pair sold at the market: what it earned; then stock, shelf and takings side by side. */
export async function sellOne(page: Page): Promise<readonly Finding[]> {
  await openRoom(page, 'Shelf')
  const [piece] = (await ask(page, 'pieces.list', { state: 'here' })).pieces.toReversed()
  if (piece === undefined) throw new Error('There is nothing on the shelf.')
  await press(page, `Sell ${piece.code}`)
  const asked = await page.getByLabel('The buyer pays').inputValue()
  await press(page, 'Sold')
  const toast = await lastToast(page, `Sold ${piece.code}`)
  const { inputs } = await readSheet(page)
  const market = inputs.channels.find(({ name }) => name === job.market)
  const price = priceSheet(inputs).channels.find(({ channelName }) => channelName === job.market)
  if (market === undefined || price === undefined) throw new Error('There is no market.')
  const channel = checkChannel(saleChannel(market, currencyCode('EUR')))
  if (!channel.ok) throw new Error(channel.error.message)
  const outcome = priceAt(
    // Labour and time only tell what an hour earned, which a sale does not show.
    {
      currency: currencyCode('EUR'),
      costMinor: piece.costMinor,
      labourMinor: 0,
      benchSeconds: durationS(0),
    },
    channel.value,
    price.priceMinor,
  )
  return [
    { what: 'The market price asked', screen: asked, core: format.money(price.priceMinor) },
    {
      what: 'Then',
      screen: toast,
      core: `Sold ${piece.code}, earned ${format.money(outcome.profitMinor)}`,
    },
    ...(await takingsAfter(page, outcome)),
    ...(await shelfAfter(page, piece.code)),
    ...(await dayAfter(page, outcome)),
  ]
}

async function takingsAfter(page: Page, outcome: PriceOutcome): Promise<readonly Finding[]> {
  const [row = {}] = await table(page, 'Takings by channel')
  const stored = (await ask(page, 'takings.read', { from: today, to: today })).channels[0]
  const words = (
    one: Readonly<{
      pieces: number
      priceMinor: number
      taxMinor: number
      feesMinor: number
      costMinor: number
      profitMinor: number
    }>,
  ) =>
    [
      job.market,
      format.count(one.pieces),
      ...[one.priceMinor, one.taxMinor, one.feesMinor, one.costMinor, one.profitMinor].map(
        format.money,
      ),
    ].join(', ')
  return [
    {
      what: 'Takings: channel, pieces, buyers paid, tax, fees, cost, earned',
      screen: [
        row['Channel'],
        row['Pieces'],
        row['Buyers paid'],
        row['Tax'],
        row['Fees'],
        row['They cost'],
        row['Earned'],
      ].join(', '),
      core: words({ pieces: 1, ...outcome }),
      store: stored === undefined ? 'nothing' : words(stored),
    },
  ]
}

async function shelfAfter(page: Page, sold: string): Promise<readonly Finding[]> {
  const here = await figure(page, 'Pieces here')
  await take(page, 'Sold')
  await page.getByRole('table', { name: 'Pieces' }).getByText(sold).waitFor()
  const rows = await table(page, 'Pieces')
  const { pieces } = await ask(page, 'pieces.list', { state: 'sold' })
  await take(page, 'On the shelf')
  return [
    { what: 'Pieces still here', screen: here, core: String(job.made - 1) },
    {
      what: 'Pieces sold',
      screen: rows.map((row) => row['Piece']).join(', '),
      core: sold,
      store: pieces.map(({ code }) => code).join(', '),
    },
  ]
}

/** Today’s page, where stock, shelf and takings stand together. */
async function dayAfter(page: Page, outcome: PriceOutcome): Promise<readonly Finding[]> {
  await openRoom(page, 'Today')
  const { worthMinor } = await stockFacts(page)
  const day = await ask(page, 'today.read', { today })
  return [
    {
      what: 'Taken this month',
      screen: await figure(page, 'Taken this month'),
      core: format.money(outcome.priceMinor),
      store: format.money(day.takenThisMonthMinor),
    },
    {
      what: 'Pieces on the shelf',
      screen: await figure(page, 'Pieces on the shelf'),
      core: String(job.made - 1),
      store: String(day.piecesHere),
    },
    {
      what: 'Stock at cost',
      screen: await figure(page, 'Stock at cost'),
      core: format.money(worthMinor),
      store: format.money(day.stockValueMinor),
    },
  ]
}
