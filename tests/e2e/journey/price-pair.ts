import type { Page } from '@playwright/test'

import {
  type PriceInputs,
  type PriceSheet,
  priceSheet,
} from '../../../shared-core/pricing/price-sheet.ts'
import { ask } from '../ask.ts'
import { openRoom, pick, press, write } from './controls.ts'
import type { Finding } from './finding.ts'
import { format, job } from './job.ts'
import { figure, table } from './screen.ts'

/** What a pair costs and should sell for; then her hour at € 20,00, tried out and let go again. */
export async function pricePair(page: Page): Promise<readonly Finding[]> {
  await openRoom(page, 'Prices')
  await pick(page, 'Design', job.design)
  await page.getByRole('table', { name: 'Cost sheet' }).waitFor()
  const { inputs, sheet } = await readSheet(page)
  const asKept = await sheetOnScreen(page, { core: priceSheet(inputs), store: sheet })
  await write(page, 'An hour of yours', '20')
  const dearer = { ...inputs, workshop: { ...inputs.workshop, hourlyRateMinor: 2_000 } }
  const tried = await sheetOnScreen(page, { core: priceSheet(dearer) })
  await press(page, 'Back to the workshop’s figures')
  const after = await figure(page, 'One pair costs')
  return [
    ...asKept,
    ...tried.map((finding) => ({ ...finding, what: `With an hour at € 20,00, ${finding.what}` })),
    {
      what: 'Let go again, one pair costs',
      screen: after,
      core: format.money(priceSheet(inputs).costMinor),
    },
  ]
}

/** The price sheet of the journey's design, as the store gives it. */
export async function readSheet(
  page: Page,
): Promise<Readonly<{ inputs: PriceInputs; sheet: PriceSheet }>> {
  const { designs } = await ask(page, 'designs.list', { search: job.design })
  const designId = designs[0]?.id ?? ''
  const { colourways } = await ask(page, 'designs.read', { id: designId })
  return ask(page, 'prices.sheet', { designId, colourwayId: colourways[0]?.id ?? '' })
}

type Sheets = Readonly<{ core: PriceSheet; store?: PriceSheet }>

async function sheetOnScreen(page: Page, { core, store }: Sheets): Promise<readonly Finding[]> {
  const stored = (write: (sheet: PriceSheet) => string) =>
    store === undefined ? {} : { store: write(store) }
  const cost = await table(page, 'Cost sheet')
  const channels = await table(page, 'Prices by channel')
  const lines = cost.filter((row) => row['What'] !== 'All')
  return [
    {
      what: 'one pair costs',
      screen: await figure(page, 'One pair costs'),
      core: costWords(core),
      ...stored(costWords),
    },
    {
      what: 'of that',
      screen: lines.map((row) => `${row['What']} ${row['Cost']}`).join(', '),
      core: lineWords(core),
      ...stored(lineWords),
    },
    ...core.channels.map((channel, at) => {
      const row = channels[at] ?? {}
      const words = (sheet: PriceSheet) => channelWords(sheet.channels[at])
      return {
        what: `${channel.channelName}: price, floor, tax, fees, leaves, margin, an hour earns`,
        screen: [
          row['Price'],
          row['Floor'],
          row['Tax'],
          row['Fees'],
          row['Leaves'],
          row['Margin'],
          row['An hour earns'],
        ].join(', '),
        core: words(core),
        ...stored(words),
      }
    }),
  ]
}

function costWords(sheet: PriceSheet): string {
  return format.money(sheet.costMinor)
}

function lineWords(sheet: PriceSheet): string {
  return sheet.cost
    .map(
      ({ label, amountMinor, known }) =>
        `${label} ${known ? format.money(amountMinor) : 'not known'}`,
    )
    .join(', ')
}

function channelWords(channel: PriceSheet['channels'][number] | undefined): string {
  if (channel === undefined) return 'no channel'
  const { priceMinor, floorMinor, taxMinor, feesMinor, profitMinor, earningsPerHourMinor } = channel
  return [
    format.money(priceMinor),
    floorMinor === null ? 'none' : format.money(floorMinor),
    ...[taxMinor, feesMinor, profitMinor].map(format.money),
    format.percent(channel.marginPercent),
    earningsPerHourMinor === null ? '' : format.money(earningsPerHourMinor),
  ].join(', ')
}
