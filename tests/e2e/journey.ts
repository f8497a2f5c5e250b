import type { Page } from '@playwright/test'

import { beginEmpty } from './journey/begin.ts'
import { bringInCharts } from './journey/bring-in-charts.ts'
import { bringInStock } from './journey/bring-in-stock.ts'
import type { Finding } from './journey/finding.ts'
import { lookRound, sameRooms } from './journey/look-round.ts'
import { makePairs } from './journey/make-pairs.ts'
import { pricePair } from './journey/price-pair.ts'
import { printTags } from './journey/print-tags.ts'
import { promisePairs } from './journey/promise-pairs.ts'
import { sellOne } from './journey/sell-one.ts'
import { setUpMoney } from './journey/set-up-money.ts'
import { takeBackTheSale } from './journey/take-back.ts'
import type { Studio } from './studio.ts'

/** One stretch of the way: what it is, and how it is gone; gives every figure seen with what it should be. */
export type JourneyStep = Readonly<{
  title: string
  go: (studio: Studio, folder: string) => Promise<readonly Finding[]>
}>

/** One order from the chart to the shelf, as a person does it on the screen, in the open studio. */
export const journey: readonly JourneyStep[] = [
  { title: 'Begin with empty drawers', go: ({ page }) => beginEmpty(page) },
  { title: 'Bring in the stock list', go: bringInStock },
  { title: 'Say what an hour costs and where pieces are sold', go: ({ page }) => setUpMoney(page) },
  { title: 'Bring in two charts and choose their beads', go: bringInCharts },
  { title: 'Promise ten pairs', go: ({ page }) => promisePairs(page) },
  { title: 'Price the pair', go: ({ page }) => pricePair(page) },
  { title: 'Make four pairs', go: ({ page }) => makePairs(page) },
  { title: 'Print their tags', go: printTags },
  { title: 'Sell one at the market', go: ({ page }) => sellOne(page) },
  { title: 'Undo the sale', go: ({ page }) => takeBackTheSale(page) },
]

/** Closes the studio and opens it again on the same folder; every room shows what it showed before. */
export async function closeAndReopen(
  studio: Studio,
  open: () => Promise<Studio>,
): Promise<Readonly<{ studio: Studio; findings: readonly Finding[] }>> {
  const before = await lookRound(studio.page)
  await studio.close()
  const again = await open()
  await railOf(again.page).waitFor()
  return { studio: again, findings: sameRooms(before, await lookRound(again.page, before)) }
}

function railOf(page: Page) {
  return page.getByRole('navigation', { name: 'Rooms' })
}
