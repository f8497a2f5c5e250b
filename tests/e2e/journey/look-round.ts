import type { Page } from '@playwright/test'

import { openRoom } from './controls.ts'
import type { Finding } from './finding.ts'
import { read } from './screen.ts'

const rooms = ['Today', 'Designs', 'Stock', 'Orders', 'Bench', 'Shelf', 'Prices'] as const

/** What every room that holds something shows, as text; `before` is what is hoped to be seen again. */
export async function lookRound(
  page: Page,
  before?: ReadonlyMap<string, string>,
): Promise<ReadonlyMap<string, string>> {
  const seen = new Map<string, string>()
  for (const room of rooms) {
    await openRoom(page, room)
    seen.set(room, await settledText(page, before?.get(room)))
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

/** The room's text once it stays the same; where a certain text is hoped for it gets more time to come. */
async function settledText(page: Page, hoped?: string): Promise<string> {
  const main = page.getByRole('main')
  const enough = hoped === undefined ? 5 : 30
  let before = ''
  let alike = 0
  while (alike < enough) {
    const now = await read(main)
    if (now === hoped) return now
    alike = now === before && !now.includes('…') ? alike + 1 : 0
    before = now
    await page.waitForTimeout(100)
  }
  return before
}
