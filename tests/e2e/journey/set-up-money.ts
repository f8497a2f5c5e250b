import type { Page } from '@playwright/test'

import { ask } from '../ask.ts'
import { choose, openRoom, press, take, write } from './controls.ts'
import type { Finding } from './finding.ts'
import { format, job } from './job.ts'
import { lastToast, table, tableRow } from './screen.ts'

/** Her own hour, overhead and margin; where she sells and what that costs; where pieces stand. */
export async function setUpMoney(page: Page): Promise<readonly Finding[]> {
  await openRoom(page, 'Settings')
  await write(page, 'What an hour of yours costs', '16')
  await take(page, 'as a share of labour')
  await write(page, 'Share of labour', '12')
  await write(page, 'Margin wanted, of the price without tax', '15')
  await write(page, 'Round prices up to a whole multiple of', '1,00')
  await press(page, 'Save')
  await lastToast(page, 'Saved the workshop')
  const findings: Finding[] = []
  await openTab(page, 'Channels')
  for (const channel of channels) findings.push(await addChannel(page, channel))
  await openTab(page, 'Places')
  await addPlace(page, job.marketBox, job.market)
  const { places } = await ask(page, 'workshop.read', {})
  const box = await tableRow(page, 'Places', job.marketBox)
  const standing = await table(page, 'Places')
  await openTab(page, 'Workshop')
  return [
    await ownFigures(page),
    ...findings,
    {
      what: 'Places',
      screen: standing.map((row) => row['Place']).join(', '),
      core: `${job.drawer}, ${job.marketBox}`,
      store: places.map(({ name }) => name).join(', '),
    },
    {
      what: `Pieces in the ${job.marketBox} are sold through`,
      screen: box['Pieces there are sold through'] ?? '',
      core: job.market,
    },
  ]
}

/** What the Saturday market, the web shop and the gallery take, as typed and as it is kept. */
const channels = [
  {
    name: job.market,
    kind: 'Market',
    keeps: '0',
    eachTime: '0',
    payment: '1,7',
    eachPayment: '0',
    tax: '20',
    shown: 'nothing; 1,7 %; 20 % in the price',
  },
  {
    name: 'Web shop',
    kind: 'Online',
    keeps: '6,5',
    eachTime: '0,20',
    payment: '2,9',
    eachPayment: '0,30',
    tax: '20',
    shown: '6,5 % + € 0,20; 2,9 % + € 0,30; 20 % in the price',
  },
  {
    name: 'Gull Lane Gallery',
    kind: 'Consignment',
    keeps: '40',
    eachTime: '0',
    payment: '0',
    eachPayment: '0',
    tax: '0',
    shown: '40 %; nothing; 0 % in the price',
  },
] as const

async function addChannel(page: Page, channel: (typeof channels)[number]): Promise<Finding> {
  await press(page, 'Add a channel')
  await write(page, 'Name', channel.name)
  await choose(page, 'Kind', channel.kind)
  await write(page, 'It keeps', channel.keeps)
  await write(page, 'and each time', channel.eachTime)
  await write(page, 'Payment costs', channel.payment)
  await write(page, 'and each payment', channel.eachPayment)
  await write(page, 'Tax', channel.tax)
  await press(page, 'Save')
  await lastToast(page, `Saved ${channel.name}`)
  const row = await tableRow(page, 'Channels', channel.name)
  return {
    what: `${channel.name}: it keeps, payment, tax`,
    screen: [row['Keeps'], row['Payment'], row['Tax']].join('; '),
    core: channel.shown,
  }
}

async function addPlace(page: Page, name: string, channel: string): Promise<void> {
  await press(page, 'Add a place')
  await write(page, 'Name', name)
  await choose(page, 'Pieces there are sold through', channel)
  await press(page, 'Save')
  await lastToast(page, `Saved ${name}`)
}

async function ownFigures(page: Page): Promise<Finding> {
  const { workshop } = await ask(page, 'workshop.read', {})
  if (workshop === null) throw new Error('There is no workshop.')
  const written = (label: string) => page.getByLabel(label, { exact: true }).inputValue()
  const { hourlyRateMinor, marginPercent, overhead } = workshop
  return {
    what: 'An hour, overhead, margin',
    screen: [
      await written('What an hour of yours costs'),
      `${await written('Share of labour')} of labour`,
      await written('Margin wanted, of the price without tax'),
    ].join(', '),
    core: '€ 16,00, 12 % of labour, 15 %',
    store: [
      format.money(hourlyRateMinor),
      overhead.kind === 'percent-of-labour' ? `${format.percent(overhead.percent)} of labour` : '',
      format.percent(marginPercent),
    ].join(', '),
  }
}

async function openTab(page: Page, name: string): Promise<void> {
  await page.getByRole('tab', { name }).click()
}
