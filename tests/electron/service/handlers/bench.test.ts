import { copyFileSync, existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { CallInput } from '../../../../shared-core/contract/calls.ts'
import { observe } from '../observe.ts'
import { openStudio, TODAY } from '../open-studio.ts'
import { openSmallWorkshop, orderFor, type SmallWorkshop } from '../small-workshop.ts'

const what = ({ designId, colourwayId }: SmallWorkshop) => ({ designId, colourwayId })

async function begin(shop: SmallWorkshop, units: number, more: object = {}) {
  const input = { ...what(shop), units, begunOn: TODAY, before: {}, ...more }
  return (await shop.studio.ask('bench.begin', input as CallInput<'bench.begin'>)).id
}

const kept = (id: string, step: number, more: object = {}) => ({
  ...{ id, place: { copy: 1, part: 0, step }, workedS: 60 * step, unitsDone: 0, resting: false },
  ...more,
})

const bare = (id: string, units: number) => ({ id, units, culls: {}, weights: [] })

const ending = (shop: SmallWorkshop) => ({ placeId: shop.placeId, madeOn: TODAY, note: '' })

async function orderLine(shop: SmallWorkshop, units: number) {
  const { id } = await shop.studio.ask('orders.save', { order: orderFor(shop, units) })
  const { order } = await shop.studio.ask('orders.read', { id })
  return { id, lineId: order.lines[0]?.id ?? '' }
}

async function stockOf({ studio }: SmallWorkshop, id: string) {
  const { material, movements } = await studio.ask('materials.read', { id })
  return { ...material, movements }
}

describe('bench work', () => {
  it('holds what it takes, so that nothing is promised twice', async () => {
    const shop = await openSmallWorkshop()
    const { studio, materials } = shop
    const id = await begin(shop, 18)
    expect(await stockOf(shop, materials.wire)).toMatchObject({ reserved: 36, available: 4 })
    const { faults } = await studio.ask('makes.plan', { ...what(shop), units: 3 })
    expect(faults.map(({ code }) => code)).toEqual(['not-enough-stock'])
    const draft = { today: TODAY, order: { draft: orderFor(shop, 3) } }
    expect((await studio.ask('orders.cover', draft)).lines[0]?.coveredUnits).toBe(2)
    const { work, held } = await studio.ask('bench.read', { id })
    expect(work).toMatchObject({ state: 'begun', units: 18, workedS: 0, order: null })
    expect(held.find(({ name }) => name === 'ear wire')?.quantity).toBe(36)
    await studio.ask('bench.giveUp', { id, note: 'The cat.' })
    expect(await stockOf(shop, materials.wire)).toMatchObject({ reserved: 0, available: 40 })
    await studio.close()
  })

  it('for an order holds no more than the order does, and is not begun twice', async () => {
    const shop = await openSmallWorkshop()
    const { studio, materials } = shop
    const { lineId } = await orderLine(shop, 5)
    const id = await begin(shop, 3, { orderLineId: lineId })
    expect(await stockOf(shop, materials.wire)).toMatchObject({ reserved: 10 })
    const more = { ...what(shop), units: 3, orderLineId: lineId, begunOn: TODAY, before: {} }
    expect(await studio.refused('bench.begin', more)).toMatchObject({
      code: 'begun-already',
      field: 'units',
    })
    expect((await studio.ask('bench.read', { id })).work.order).toMatchObject({
      code: 'OR-0001',
      customer: 'Ferry House Gifts',
    })
    await begin(shop, 2, { orderLineId: lineId })
    await studio.close()
  })

  it('can be begun while something is missing, and finished only once it is there', async () => {
    const shop = await openSmallWorkshop()
    const { studio, lots } = shop
    await studio.ask('lots.count', { lotId: lots.wire, quantity: 0, kind: 'counted', note: '' })
    const id = await begin(shop, 2)
    const { held } = await studio.ask('bench.read', { id })
    expect(held.map(({ name }) => name)).toEqual(['braided thread', 'brine', 'wet slate'])
    const { faults } = await studio.ask('bench.reckon', bare(id, 2))
    expect(faults).toMatchObject([{ code: 'not-enough-stock', field: shop.materials.wire }])
    const finish = { ...bare(id, 2), ...ending(shop) }
    expect(await studio.refused('bench.finish', finish)).toMatchObject({
      code: 'not-enough-stock',
    })
    await studio.ask('lots.count', { lotId: lots.wire, quantity: 40, kind: 'counted', note: '' })
    await studio.ask('bench.finish', finish)
    await studio.close()
  })

  it('draws from the lot she chose, and from no other', async () => {
    const shop = await openSmallWorkshop()
    const { studio, materials } = shop
    const { lotId } = await studio.ask('lots.receive', {
      ...{ materialId: materials.slate, quantity: 9_000, dyeLot: 'K9', supplierId: null },
      ...{ boughtOn: TODAY, costMinor: null, note: '' },
    })
    const { choices } = await studio.ask('makes.plan', { ...what(shop), units: 2 })
    expect(choices).toMatchObject([
      { name: 'wet slate', lots: [{ dyeLot: 'K1' }, { dyeLot: 'K9' }] },
    ])
    const id = await begin(shop, 2, { lots: { [materials.slate]: lotId } })
    await studio.ask('bench.finish', { ...bare(id, 2), ...ending(shop) })
    const { lots } = await studio.ask('materials.read', { id: materials.slate })
    expect(lots.map((lot) => lot.onHand === (lot.id === lotId ? 9_000 : 10_000))).toEqual([
      true,
      false,
    ])
    const foreign = { ...what(shop), units: 1, lots: { [materials.brine]: lotId } }
    expect(await studio.refused('makes.plan', foreign)).toMatchObject({
      code: 'lot-of-another-material',
      field: `lots.${materials.brine}`,
    })
    await studio.close()
  })
})

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

describe('bench.finish', () => {
  it('books what was weighed and put aside, and the rest as planned', async () => {
    const shop = await openSmallWorkshop()
    const { studio, materials } = shop
    const { lineId } = await orderLine(shop, 4)
    const id = await begin(shop, 4, { orderLineId: lineId, before: { [materials.slate]: 15_000 } })
    expect((await studio.ask('bench.read', { id })).beads).toMatchObject([
      { name: 'wet slate', beforeMg: 15_000, slots: [{ label: 'A', count: 12 }] },
      { name: 'brine', beforeMg: null },
    ])
    const found = {
      ...{ id, units: 3, benchS: 9_000, threadLeftMm: 200, culls: { A: 5 } },
      weights: [{ materialId: materials.slate, beforeMg: 15_000, afterMg: 14_500 }],
    }
    const reckoned = await studio.ask('bench.reckon', found)
    expect(reckoned.faults).toEqual([])
    expect(reckoned.materials[0]).toMatchObject({ name: 'wet slate', actual: 500 })
    expect(reckoned.figures).toMatchObject({
      seconds: { actual: 9_000 },
      beads: { actual: null },
      massMg: { actual: null },
    })
    const before = await observe(studio)
    const { pieces } = await studio.ask('bench.finish', { ...found, ...ending(shop) })
    expect(pieces).toHaveLength(3)
    const slate = await stockOf(shop, materials.slate)
    expect(slate.onHand).toBe(9_500)
    expect(new Set(slate.movements.map(({ kind }) => kind))).toEqual(
      new Set(['made', 'waste', 'weighed', 'received']),
    )
    expect((await stockOf(shop, materials.wire)).onHand).toBe(34)
    const shelf = (await studio.ask('pieces.list', { state: 'here' })).pieces
    expect(shelf.map(({ state, orderCode }) => [state, orderCode])).toEqual(
      Array.from({ length: 3 }, () => ['reserved', 'OR-0001']),
    )
    expect(shelf.reduce((sum, piece) => sum + piece.costMinor, 0)).toBe(reckoned.costMinor)
    const { works } = await studio.ask('bench.list', { state: 'finished' })
    expect(works[0]?.finished).toMatchObject({ units: 3, figures: reckoned.figures })
    expect((await studio.ask('bench.list', { state: 'under-way' })).works).toEqual([])

    await studio.ask('history.undo', {})
    expect(await observe(studio)).toEqual(before)
    await studio.ask('history.redo', {})
    expect((await stockOf(shop, materials.slate)).onHand).toBe(9_500)
    await studio.close()
  })

  it('can be undone after more steps were kept before it', async () => {
    const shop = await openSmallWorkshop()
    const { studio } = shop
    const id = await begin(shop, 1)
    await studio.ask('bench.keep', kept(id, 9))
    const before = await observe(studio)
    await studio.ask('bench.finish', { ...bare(id, 1), ...ending(shop) })
    await studio.ask('history.undo', {})
    expect(await observe(studio)).toEqual(before)
    await studio.ask('bench.keep', kept(id, 11))
    await studio.ask('history.undo', {})
    expect((await studio.ask('bench.list', { state: 'under-way' })).works).toEqual([])
    await studio.close()
  })

  it.each([
    [{ weights: [{ beforeMg: 100, afterMg: 200 }] }, 'heavier-after', 'weights.0.afterMg'],
    [{ weights: [{ beforeMg: 30_000, afterMg: 100 }] }, 'more-than-on-hand', 'slate'],
    [{ threadLeftMm: 9_000_000 }, 'more-left-than-cut', 'threadLeftMm'],
    [{ culls: { Z: 1 } }, 'not-in-work', 'culls.Z'],
  ] as const)(
    'refuses %j with the field that says it, and books nothing',
    async (wrong, code, at) => {
      const shop = await openSmallWorkshop()
      const { studio, materials } = shop
      const id = await begin(shop, 2)
      const weights = ('weights' in wrong ? wrong.weights : []).map((weight) => ({
        materialId: materials.slate,
        ...weight,
      }))
      const finish = { ...bare(id, 2), ...wrong, weights }
      const field = at === 'slate' ? materials.slate : at
      const { faults } = await studio.ask('bench.reckon', finish as CallInput<'bench.reckon'>)
      expect(faults[0]).toMatchObject({ code, field })
      const before = await observe(studio)
      expect(await studio.refused('bench.finish', { ...finish, ...ending(shop) })).toMatchObject({
        code,
      })
      expect(await observe(studio)).toEqual(before)
      await studio.close()
    },
  )

  it('refuses a tube that weighs less than empty, and more pieces than were begun', async () => {
    const shop = await openSmallWorkshop()
    const { studio, materials } = shop
    const { material } = await studio.ask('materials.read', { id: materials.slate })
    const { code, name, kind, formId, colourHex, finish, lotsMatter, lowAt, drawer } = material
    const tube = { code, name, kind, formId, colourHex, finish, lotsMatter, lowAt, drawer }
    await studio.ask('materials.save', {
      id: materials.slate,
      material: { ...tube, note: '', declaration: '', tareMg: 8_000 },
    })
    const id = await begin(shop, 1)
    const weights = [{ materialId: materials.slate, beforeMg: 8_500, afterMg: 7_900 }]
    const light = await studio.ask('bench.reckon', { ...bare(id, 1), weights })
    expect(light.faults).toMatchObject([{ code: 'lighter-than-tube' }])
    expect(await studio.refused('bench.reckon', bare(id, 2))).toMatchObject({
      code: 'more-than-begun',
      field: 'units',
    })
    await studio.close()
  })

  it('for an order that was cancelled meanwhile makes pieces for the shelf', async () => {
    const shop = await openSmallWorkshop()
    const { studio } = shop
    const { id: orderId, lineId } = await orderLine(shop, 2)
    const id = await begin(shop, 2, { orderLineId: lineId })
    await studio.ask('orders.setState', { id: orderId, state: 'cancelled' })
    await studio.ask('bench.finish', { ...bare(id, 2), ...ending(shop) })
    const { pieces } = await studio.ask('pieces.list', { state: 'here' })
    expect(pieces.map(({ state }) => state)).toEqual(['here', 'here'])
    await studio.close()
  })
})

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
