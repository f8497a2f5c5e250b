import type { Page } from '@playwright/test'

import { ask } from '../ask.ts'
import { press, take, write } from './controls.ts'
import type { Finding } from './finding.ts'
import { job } from './job.ts'
import { read } from './screen.ts'

/** The first screen: an empty workshop of her own that writes its numbers with a comma. */
export async function beginEmpty(page: Page): Promise<readonly Finding[]> {
  await write(page, 'Your workshop’s name', job.workshop)
  await take(page, '12,5 g')
  await press(page, 'Begin with empty drawers')
  const rail = page.getByRole('navigation', { name: 'Rooms' })
  await rail.waitFor()
  const { workshop } = await ask(page, 'workshop.read', {})
  return [
    {
      what: 'Workshop',
      screen: await read(rail.getByText(job.workshop)),
      store: workshop?.name ?? '',
    },
    {
      what: 'Rooms',
      screen: String(await rail.getByRole('listitem').count()),
      core: '10',
    },
  ]
}
