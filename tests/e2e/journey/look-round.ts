import type { Page } from '@playwright/test'

import { openRoom } from './controls.ts'
import type { Finding } from './finding.ts'
import { read } from './screen.ts'

const rooms = ['Today', 'Designs', 'Stock', 'Orders', 'Bench', 'Shelf', 'Prices'] as const

/** What every room that holds something shows, as text. */
export async function lookRound(page: Page): Promise<ReadonlyMap<string, string>> {
  const seen = new Map<string, string>()
  for (const room of rooms) {
    await openRoom(page, room)
    seen.set(room, await settledText(page))
  }
  return seen
}

/** The closed and opened studio against what stood there before. */
export function sameRooms(
  before: ReadonlyMap<string, string>,
  after: ReadonlyMap<string, string>,
): readonly Finding[] {
  return [...before].map(([room, text]) => ({
    what: `${room} as it was`,
    screen: after.get(room) === text ? 'yes' : `no: ${after.get(room)}`,
    core: after.get(room) === text ? 'yes' : text,
  }))
}

/** The room's text once it stays the same. */
async function settledText(page: Page): Promise<string> {
  const main = page.getByRole('main')
  let before = ''
  for (;;) {
    const now = await read(main)
    if (now === before && !now.includes('…')) return now
    before = now
    await page.waitForTimeout(150)
  }
}
