import { describe, expect, it } from 'vitest'
import type { CallInput } from '../../../../shared-core/contract/calls.ts'
import { observe } from '../observe.ts'
import { openSmallWorkshop } from '../small-workshop.ts'
import { bare, begin, ending, kept, stockOf } from './bench-work.ts'
import { orderLine } from './order-line.ts'

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
