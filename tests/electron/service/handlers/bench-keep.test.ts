import { copyFileSync, existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { openStudio } from '../open-studio.ts'
import { openSmallWorkshop } from '../small-workshop.ts'
import { bare, begin, ending, kept } from './bench-work.ts'

describe('bench.keep', () => {
  it('keeps place and time outside the history', async () => {
    const shop = await openSmallWorkshop()
    const { studio } = shop
    const id = await begin(shop, 2)
    const before = await studio.ask('history.list', { limit: 50 })
    await studio.ask('bench.keep', kept(id, 4))
    await studio.ask('bench.keep', kept(id, 7, { resting: true, unitsDone: 1 }))
    expect(await studio.ask('history.list', { limit: 50 })).toEqual(before)
    const { works } = await studio.ask('bench.list', { state: 'under-way' })
    expect(works).toMatchObject([
      { state: 'resting', place: { copy: 1, part: 0, step: 7 }, workedS: 420, unitsDone: 1 },
    ])
    await studio.close()
  })

  it('refuses more than was begun, and work that has ended', async () => {
    const shop = await openSmallWorkshop()
    const { studio } = shop
    const id = await begin(shop, 2)
    expect(await studio.refused('bench.keep', kept(id, 1, { unitsDone: 3 }))).toMatchObject({
      code: 'more-than-begun',
      field: 'unitsDone',
    })
    await studio.ask('bench.giveUp', { id, note: '' })
    expect(await studio.refused('bench.keep', kept(id, 2))).toMatchObject({ code: 'not-under-way' })
    await studio.close()
  })

  it('is in the file the moment it is answered: a copy taken then goes on from there', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'tallystrand-bench-'))
    const file = join(folder, 'workshop.tally')
    const shop = await openSmallWorkshop(file)
    const id = await begin(shop, 2)
    for (const step of [1, 2, 3]) {
      await shop.studio.ask('bench.keep', kept(id, step))
      const copy = join(folder, `crash-${step}.tally`)
      for (const end of ['', '-wal']) {
        if (existsSync(file + end)) copyFileSync(file + end, copy + end)
      }
      const again = await openStudio(copy)
      const { work } = await again.ask('bench.read', { id })
      expect(work).toMatchObject({ state: 'begun', place: { step }, workedS: 60 * step })
      await again.ask('bench.finish', { ...bare(id, 2), ...ending(shop) })
      await again.close()
    }
    await shop.studio.close()
    rmSync(folder, { recursive: true, force: true })
  })
})
