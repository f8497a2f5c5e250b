import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import BetterSqlite from 'better-sqlite3'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { observe } from './observe.ts'
import { openEmptyStudio, openStudio } from './open-studio.ts'
import { anyWishes, callOf, type Wish } from './random-acts.ts'
import { openSmallWorkshop, orderFor, type SmallWorkshop } from './small-workshop.ts'

/** Does what can be done of the wishes; after each step that was kept, what could be seen before it. */
async function act(shop: SmallWorkshop, wishes: readonly Wish[]): Promise<unknown[]> {
  const before: unknown[] = []
  for (const wish of wishes) {
    const call = await callOf(shop, wish)
    if (call === undefined) continue
    const [state, steps] = [await observe(shop.studio), await stepsOf(shop)]
    const [name, input] = call
    const answer = await shop.studio.answer(name, input)
    if (!answer.ok) {
      expect(answer.error.code).not.toBe('internal')
      expect(await observe(shop.studio)).toEqual(state)
    }
    if ((await stepsOf(shop)) > steps) before.push(state)
  }
  return before
}

async function stepsOf({ studio }: SmallWorkshop): Promise<number> {
  return (await studio.ask('history.list', { limit: 500 })).entries.length
}

describe('history', () => {
  it('undoes every step to exactly what was before, and does each again', {
    timeout: 120_000,
  }, async () => {
    await fc.assert(
      fc.asyncProperty(anyWishes(12), async (wishes) => {
        const shop = await openSmallWorkshop()
        const before = await act(shop, wishes)
        const after: unknown[] = []
        for (const state of before.toReversed()) {
          after.push(await observe(shop.studio))
          await shop.studio.ask('history.undo', {})
          expect(await observe(shop.studio)).toEqual(state)
        }
        for (const state of after.toReversed()) {
          await shop.studio.ask('history.redo', {})
          expect(await observe(shop.studio)).toEqual(state)
        }
        expect((await shop.studio.ask('history.list', { limit: 1 })).canRedo).toBe(false)
        await shop.studio.close()
      }),
      { numRuns: 8 },
    )
  })

  it('undoes a step time after time', async () => {
    const shop = await openSmallWorkshop()
    const { studio, designId, colourwayId, placeId } = shop
    const make = { designId, colourwayId, units: 2, placeId, madeOn: '2026-11-25', note: '' }
    const before = await observe(studio)
    await studio.ask('makes.finish', make)
    const after = await observe(studio)
    for (let time = 0; time < 3; time++) {
      await studio.ask('history.undo', {})
      expect(await observe(studio)).toEqual(before)
      await studio.ask('history.redo', {})
      expect(await observe(studio)).toEqual(after)
    }
    const { movements } = await studio.ask('materials.read', { id: shop.materials.slate })
    expect(movements.map(({ kind }) => kind)).toEqual([
      ...Array.from({ length: 6 }, () => 'reversed'),
      'made',
      'received',
    ])
    await studio.close()
  })

  it('does not do again what a new step has replaced', async () => {
    const shop = await openSmallWorkshop()
    await shop.studio.ask('orders.save', { order: orderFor(shop, 2) })
    await shop.studio.ask('history.undo', {})
    await shop.studio.ask('orders.save', { order: orderFor(shop, 3) })
    expect(await shop.studio.refused('history.redo', {})).toMatchObject({ code: 'nothing-to-redo' })
    const { entries, canUndo, canRedo } = await shop.studio.ask('history.list', { limit: 2 })
    expect(entries.map(({ label, state }) => [label, state])).toEqual([
      ['Entered order OR-0002 for Ferry House Gifts', 'done'],
      ['Entered order OR-0001 for Ferry House Gifts', 'undone'],
    ])
    expect([canUndo, canRedo]).toEqual([true, false])
    await shop.studio.close()
  })

  it('turns nothing back that something else has changed since, and leaves all as it is', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'tallystrand-history-'))
    const file = join(folder, 'workshop.tally')
    const shop = await openSmallWorkshop(file)
    await shop.studio.ask('designs.archive', { id: shop.designId, archived: true })
    const other = new BetterSqlite(file)
    other.exec('update design set archived = 0')
    other.close()
    const before = await observe(shop.studio)
    expect(await shop.studio.refused('history.undo', {})).toMatchObject({ code: 'changed-since' })
    expect(await observe(shop.studio)).toEqual(before)
    await shop.studio.close()
    rmSync(folder, { recursive: true, force: true })
  })

  it('keeps no step that changed nothing', async () => {
    const studio = await openEmptyStudio()
    const { workshop } = await studio.ask('workshop.read', {})
    if (workshop === null) throw new Error('expected a workshop')
    const { currency: _, ...figures } = workshop
    await studio.ask('workshop.save', { workshop: figures })
    expect((await studio.ask('history.list', { limit: 9 })).entries).toHaveLength(1)
    await studio.close()
  })

  it('cannot undo the beginning, nor anything in an empty file', async () => {
    const studio = await openStudio()
    expect(await studio.refused('history.undo', {})).toMatchObject({ code: 'nothing-to-undo' })
    expect(await studio.refused('history.redo', {})).toMatchObject({ code: 'nothing-to-redo' })
    await studio.close()
    const begun = await openEmptyStudio()
    expect(await begun.refused('history.undo', {})).toMatchObject({ code: 'nothing-to-undo' })
    await begun.close()
  })
})
