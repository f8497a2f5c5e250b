import { describe, expect, it } from 'vitest'
import type { CallInput } from '../../../../shared-core/contract/calls.ts'
import { openSmallWorkshop, type SmallWorkshop } from '../small-workshop.ts'
import { bare, begin, ending } from './bench-work.ts'
import { what } from './what-is-made.ts'

describe('what finished work teaches', () => {
  const finishOne = async (shop: SmallWorkshop, more: object) => {
    const id = await begin(shop, 1)
    const finish = { ...bare(id, 1), ...more, ...ending(shop) }
    return shop.studio.ask('bench.finish', finish as CallInput<'bench.finish'>)
  }

  it('is the workshop’s pace, in every plan and price', async () => {
    const shop = await openSmallWorkshop()
    const { studio } = shop
    const planned = async () =>
      (await studio.ask('makes.plan', { ...what(shop), units: 1 })).labourS
    const priced = async () => (await studio.ask('prices.sheet', what(shop))).inputs.labourS
    const before = await planned()
    const { makeId } = await finishOne(shop, { benchS: Math.round(before.value * 2) })
    const after = await planned()
    expect(after.value).toBeGreaterThan(before.value)
    expect(after.value).toBeLessThan(2 * before.value)
    expect(after.basis).toBe('measured')
    expect(await priced()).toEqual(after)
    const taught = await studio.ask('workshop.pace', {})
    expect(taught.sessions.time).toBe(1)
    expect(taught.makes).toMatchObject([{ makeId, leftOut: false }])

    await studio.ask('pace.leaveOut', { makeIds: [makeId], leftOut: true })
    expect(await planned()).toEqual(before)
    await studio.ask('history.undo', {})
    expect(await planned()).toEqual(after)
    await studio.close()
  })

  it('is its share of culls, in every need', async () => {
    const shop = await openSmallWorkshop()
    const { studio, materials } = shop
    const need = async () => {
      const { draws } = await studio.ask('makes.plan', { ...what(shop), units: 10 })
      return draws.find(({ materialId }) => materialId === materials.slate)?.quantity ?? 0
    }
    const before = await need()
    for (let time = 0; time < 3; time += 1) await finishOne(shop, { culls: { A: 24, B: 20 } })
    expect(await need()).toBeGreaterThan(before)
    const { cullCounts, learned } = await studio.ask('workshop.pace', {})
    expect(cullCounts).toMatchObject([{ formId: 'cylinder-11/0', culled: 132 }])
    expect(learned.cullRates['cylinder-11/0']?.value).toBeGreaterThan(0.1)
    await studio.close()
  })

  it('is its use of thread, from the ends that were left', async () => {
    const shop = await openSmallWorkshop()
    const { studio, materials } = shop
    const need = async () => {
      const { draws } = await studio.ask('makes.plan', { ...what(shop), units: 1 })
      return draws.find(({ materialId }) => materialId === materials.thread)?.quantity ?? 0
    }
    const cut = await need()
    const { figures } = await studio.ask('bench.reckon', bare(await begin(shop, 1), 1))
    await studio.ask('history.undo', {})
    const used = Math.round(figures.threadMm.planned * 1.1)
    await finishOne(shop, { threadLeftMm: cut - used })
    const { learned, sessions } = await studio.ask('workshop.pace', {})
    expect(sessions.thread).toBe(1)
    expect(learned.threadUse.value).toBeGreaterThan(1)
    expect(learned.threadUse.value).toBeLessThan(1.1)
    expect(await need()).toBeGreaterThan(cut)
    await studio.close()
  })

  it('comes from makes logged without the bench too, where their time was kept', async () => {
    const shop = await openSmallWorkshop()
    const { studio } = shop
    const make = { ...what(shop), units: 1, ...ending(shop) }
    await studio.ask('makes.finish', make)
    expect((await studio.ask('workshop.pace', {})).sessions.time).toBe(0)
    await studio.ask('makes.finish', { ...make, benchS: 4_000 })
    expect((await studio.ask('workshop.pace', {})).sessions.time).toBe(1)
    await studio.close()
  })
})
