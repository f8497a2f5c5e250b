import type { Page } from '@playwright/test'

import { ask } from '../ask.ts'
import { openRoom } from './controls.ts'
import type { Finding } from './finding.ts'
import { format, job, today } from './job.ts'
import { figure, lastToast, read } from './screen.ts'

/** The sale undone by its key: the piece is back, the money too. */
export async function takeBackTheSale(page: Page): Promise<readonly Finding[]> {
  await openRoom(page, 'Shelf')
  await page.keyboard.press('Control+z')
  const toast = await lastToast(page, 'Undone')
  const nothing = 'Nothing was sold in these days.'
  const takingsSaid = await read(page.getByText(nothing))
  const { pieces } = await ask(page, 'pieces.list', { state: 'here' })
  const takings = await ask(page, 'takings.read', { from: today, to: today })
  const [code = ''] = /[A-Z]{2}-\d{4}[A-Z]/.exec(toast) ?? []
  return [
    { what: 'Then', screen: toast, core: `Undone: Sold ${code} at ${job.market}` },
    {
      what: 'Pieces here again',
      screen: await figure(page, 'Pieces here'),
      core: String(job.made),
      store: String(pieces.length),
    },
    {
      what: 'Takings',
      screen: takingsSaid,
      store: takings.priceMinor === 0 ? nothing : format.money(takings.priceMinor),
    },
  ]
}
