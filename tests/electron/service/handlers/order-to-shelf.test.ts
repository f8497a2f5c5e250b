import { describe, expect, it } from 'vitest'
import { TODAY } from '../open-studio.ts'
import { openSmallWorkshop, orderFor, type SmallWorkshop, smallBody } from '../small-workshop.ts'

const make = (shop: SmallWorkshop, units: number) => ({
  designId: shop.designId,
  colourwayId: shop.colourwayId,
  units,
  placeId: shop.placeId,
  madeOn: TODAY,
  note: '',
})

async function orderLine(shop: SmallWorkshop, units: number) {
  const { id } = await shop.studio.ask('orders.save', { order: orderFor(shop, units) })
  const { order } = await shop.studio.ask('orders.read', { id })
  return { id, lineId: order.lines[0]?.id ?? '' }
}

describe('orders.cover', () => {
  it('says what limits, what is short, in which packs, at what cost and from when', async () => {
    const shop = await openSmallWorkshop()
    const { studio, materials, supplierId } = shop
    const offer = { materialId: materials.wire, supplierId, packQuantity: 20, priceMinor: 640 }
    await studio.ask('offers.save', { offer })
    await orderLine(shop, 12)
    const draft = { today: TODAY, order: { draft: orderFor(shop, 10) } }
    const cover = await studio.ask('orders.cover', draft)
    expect(cover).toMatchObject({ covered: false, costMinor: 640, hereOn: '2026-11-29' })
    expect(cover.lines[0]).toMatchObject({
      units: 10,
      coveredUnits: 8,
      limits: [{ key: 'extra:wire', perUnit: 2, onHand: 40, heldByOthers: 24, enoughFor: 8 }],
      shortages: [
        {
          short: 4,
          packs: [
            {
              supplier: 'Marlow Bead Supply',
              packQuantity: 20,
              packs: 1,
              costMinor: 640,
              leadDays: 4,
            },
          ],
        },
      ],
    })
    await studio.close()
  })

  it('serves who was promised first, and a draft behind all', async () => {
    const shop = await openSmallWorkshop()
    const first = await orderLine(shop, 15)
    const second = await orderLine(shop, 15)
    const { orders } = await shop.studio.ask('orders.coverAll', { today: TODAY })
    expect(orders.map(({ orderId, cover }) => [orderId, cover.lines[0]?.coveredUnits])).toEqual([
      [first.id, 15],
      [second.id, 5],
    ])
    await shop.studio.ask('orders.setState', { id: first.id, state: 'cancelled' })
    const after = await shop.studio.ask('orders.coverAll', { today: TODAY })
    expect(after.orders.map(({ cover }) => cover.covered)).toEqual([true])
    await shop.studio.close()
  })

  it('names what has no material yet', async () => {
    const shop = await openSmallWorkshop()
    const { studio, designId, colourwayId, materials } = shop
    await studio.ask('colourways.save', {
      ...{ designId, id: colourwayId, name: 'Half' },
      materials: { 'slot:A': materials.slate, thread: materials.thread },
    })
    const draft = { today: TODAY, order: { draft: orderFor(shop, 2) } }
    const cover = await studio.ask('orders.cover', draft)
    expect(cover).toMatchObject({ covered: false, costMinor: null, hereOn: null })
    expect(cover.lines[0]?.limits.map(({ key, materialId }) => [key, materialId])).toEqual([
      ['slot:B', null],
      ['extra:wire', null],
    ])
    const plan = { designId, colourwayId, units: 1 }
    const { faults } = await studio.ask('makes.plan', plan)
    expect(faults.map(({ code, field }) => [code, field])).toEqual([
      ['not-assigned', 'slot:B'],
      ['not-assigned', 'extra:wire'],
    ])
    expect(await studio.refused('makes.finish', make(shop, 1))).toMatchObject({
      code: 'not-assigned',
    })
    await studio.close()
  })
})

describe('orders.save', () => {
  it('keeps what is made of a line', async () => {
    const shop = await openSmallWorkshop()
    const { studio } = shop
    const { id, lineId } = await orderLine(shop, 5)
    await studio.ask('makes.finish', { ...make(shop, 3), orderLineId: lineId })
    const order = orderFor(shop, 2)
    const [line] = order.lines
    const fewer = { ...order, lines: [{ ...line, id: lineId }] }
    expect(await studio.refused('orders.save', { id, order: fewer })).toMatchObject({
      code: 'line-has-makes',
      field: 'order.lines.0.units',
    })
    expect(await studio.refused('orders.save', { id, order })).toMatchObject({
      code: 'line-has-makes',
      field: 'order.lines',
    })
    const enough = { ...order, lines: [{ ...line, id: lineId, units: 3 }] }
    await studio.ask('orders.save', { id, order: enough as typeof order })
    expect((await studio.ask('orders.read', { id })).order).toMatchObject({
      state: 'ready',
      totalMinor: 5_700,
    })
    await studio.close()
  })

  it('stays with the version it was entered for, and a new line takes the latest', async () => {
    const shop = await openSmallWorkshop()
    const { studio, designId } = shop
    const { id, lineId } = await orderLine(shop, 2)
    const body = { ...smallBody, unitName: 'card' }
    await studio.ask('designs.save', {
      id: designId,
      name: 'Samphire studs',
      tags: [],
      body,
      note: '',
    })
    const order = orderFor(shop, 2)
    const [line] = order.lines
    if (line === undefined) throw new Error('expected a line')
    await studio.ask('orders.save', {
      id,
      order: { ...order, lines: [{ ...line, id: lineId }, line] },
    })
    const { order: saved } = await studio.ask('orders.read', { id })
    expect(saved.lines.map(({ unitName }) => unitName)).toEqual(['pair', 'card'])
    await studio.close()
  })

  it('refuses a due date before the promise and a colourway of another design', async () => {
    const shop = await openSmallWorkshop()
    const { studio } = shop
    const late = { ...orderFor(shop, 1), dueOn: '2026-11-24' }
    expect(await studio.refused('orders.save', { order: late })).toMatchObject({
      code: 'due-before-promise',
      field: 'order.dueOn',
    })
    const other = await studio.ask('designs.save', {
      name: 'Other',
      tags: [],
      body: smallBody,
      note: '',
    })
    const order = orderFor(shop, 1)
    const mixed = { ...order, lines: order.lines.map((line) => ({ ...line, designId: other.id })) }
    expect(await studio.refused('orders.save', { order: mixed })).toMatchObject({
      code: 'colourway-of-another-design',
      field: 'order.lines.0.colourwayId',
    })
    await studio.close()
  })
})

describe('makes.finish', () => {
  it('takes what was planned out of the stock, and gives each piece its code, place and cost', async () => {
    const shop = await openSmallWorkshop()
    const { studio, materials } = shop
    const { lineId } = await orderLine(shop, 5)
    const stockOf = async (id: string) => (await studio.ask('materials.read', { id })).material
    const before = { slate: await stockOf(materials.slate), wire: await stockOf(materials.wire) }
    const plan = await studio.ask('makes.plan', { ...pick(shop), units: 4, orderLineId: lineId })
    expect(plan.faults).toEqual([])
    const { pieces } = await studio.ask('makes.finish', {
      ...make(shop, 4),
      orderLineId: lineId,
      benchS: 7_201,
    })
    expect(pieces.map(({ code }) => code.slice(0, 7))).toEqual([
      'SS-0001',
      'SS-0002',
      'SS-0003',
      'SS-0004',
    ])
    const drawn = (id: string) =>
      plan.draws
        .filter((draw) => draw.materialId === id)
        .reduce((sum, draw) => sum + draw.quantity, 0)
    expect((await stockOf(materials.slate)).onHand).toBe(
      before.slate.onHand - drawn(materials.slate),
    )
    expect(await stockOf(materials.wire)).toMatchObject({
      onHand: 32,
      valueMinor: before.wire.valueMinor - 256,
      reserved: 2,
    })
    const shelf = (await studio.ask('pieces.list', { state: 'here' })).pieces
    expect(
      shelf.every((piece) => piece.state === 'reserved' && piece.orderCode === 'OR-0001'),
    ).toBe(true)
    const values = await studio.ask('materials.list', {})
    const spent =
      500 + 500 + 1_450 + 1_280 - values.materials.reduce((sum, one) => sum + one.valueMinor, 0)
    // 7,201 s at 18.00 an hour is 36.005, and 15 % of it 5.40: rounded together to 41.41.
    const cost = shelf.reduce((sum, piece) => sum + piece.costMinor, 0)
    expect(cost).toBe(spent + 4_141)
    await studio.close()
  })

  it('makes no more than an order still needs, and nothing for another design’s line', async () => {
    const shop = await openSmallWorkshop()
    const { lineId } = await orderLine(shop, 2)
    const tooMany = { ...make(shop, 3), orderLineId: lineId }
    expect(await shop.studio.refused('makes.finish', tooMany)).toMatchObject({
      code: 'more-than-ordered',
      field: 'units',
    })
    await shop.studio.close()
  })

  it('takes nothing that is promised to an order, unless it is for that order', async () => {
    const shop = await openSmallWorkshop()
    const { lineId } = await orderLine(shop, 18)
    const refusal = await shop.studio.refused('makes.finish', make(shop, 4))
    expect(refusal).toMatchObject({ code: 'not-enough-stock' })
    expect(refusal.message).toContain('ear wire is enough for 2 of 4')
    await shop.studio.ask('makes.finish', make(shop, 2))
    await shop.studio.ask('makes.finish', { ...make(shop, 18), orderLineId: lineId })
    const { materials } = await shop.studio.ask('materials.list', {})
    expect(materials.find(({ code }) => code === 'EW')?.onHand).toBe(0)
    await shop.studio.close()
  })

  it('never uses one number twice, even after an undo', async () => {
    const shop = await openSmallWorkshop()
    await shop.studio.ask('makes.finish', make(shop, 1))
    await shop.studio.ask('history.undo', {})
    const { pieces } = await shop.studio.ask('makes.finish', make(shop, 1))
    expect(pieces[0]?.code).toMatch(/^SS-0002/)
    await shop.studio.close()
  })
})

function pick({ designId, colourwayId }: SmallWorkshop) {
  return { designId, colourwayId }
}

describe('pieces', () => {
  it('are sold once, with fees, tax, cost and profit that sum to the price', async () => {
    const shop = await openSmallWorkshop()
    const { studio, channelId } = shop
    const { channels } = await studio.ask('workshop.read', {})
    const channel = { ...channels[0], feePercent: '6.5', feeFixedMinor: 20, taxPercent: '20' }
    await studio.ask('channel.save', { channel: channel as (typeof channels)[number] })
    const { pieces } = await studio.ask('makes.finish', make(shop, 1))
    const pieceId = pieces[0]?.id ?? ''
    const sale = { pieceId, channelId, priceMinor: 2_400, soldOn: TODAY, note: '' }
    const sold = await studio.ask('pieces.sell', sale)
    // Tax inside 24.00 at 20 % is 4.00; 6.5 % of 24.00 and 0.20 are 1.76.
    expect(sold).toMatchObject({ taxMinor: 400, feesMinor: 176 })
    expect(sold.taxMinor + sold.feesMinor + sold.costMinor + sold.profitMinor).toBe(2_400)
    expect(await studio.refused('pieces.sell', sale)).toMatchObject({ code: 'piece-gone' })
    const takings = await studio.ask('takings.read', { from: TODAY, to: TODAY })
    expect(takings.channels).toEqual([
      { channelId, name: 'Direct sale', pieces: 1, priceMinor: 2_400, ...sold },
    ])
    expect((await studio.ask('pieces.read', { id: pieceId })).piece).toMatchObject({
      state: 'sold',
      placeId: null,
      askingMinor: null,
      sale: { channelName: 'Direct sale', soldOn: TODAY, priceMinor: 2_400 },
    })
    await studio.close()
  })

  it('come back from a sale on a day of their own, and can be sold again', async () => {
    const shop = await openSmallWorkshop()
    const { studio, channelId, placeId } = shop
    const { pieces } = await studio.ask('makes.finish', make(shop, 1))
    const pieceId = pieces[0]?.id ?? ''
    const sale = { pieceId, channelId, priceMinor: 2_400, soldOn: TODAY, note: '' }
    await studio.ask('pieces.sell', sale)
    const end = { pieceId, how: 'returned', placeId, on: '2026-12-02', note: '' } as const
    expect(await studio.refused('pieces.end', { ...end, placeId: null })).toMatchObject({
      code: 'no-place',
    })
    await studio.ask('pieces.end', end)
    expect(await studio.refused('pieces.end', end)).toMatchObject({ code: 'not-sold' })
    const taken = async (from: string, to: string) =>
      (await studio.ask('takings.read', { from, to })).priceMinor
    expect(await taken(TODAY, TODAY)).toBe(2_400)
    expect(await taken('2026-12-01', '2026-12-31')).toBe(-2_400)
    expect(await taken(TODAY, '2026-12-31')).toBe(0)
    await studio.ask('pieces.sell', { ...sale, priceMinor: 2_000, soldOn: '2026-12-05' })
    expect(await taken(TODAY, '2026-12-31')).toBe(2_000)
    await studio.close()
  })

  it('cannot be sold before they were made, nor moved when they are gone', async () => {
    const shop = await openSmallWorkshop()
    const { studio, channelId, placeId } = shop
    const { pieces } = await studio.ask('makes.finish', make(shop, 1))
    const pieceId = pieces[0]?.id ?? ''
    const early = { pieceId, channelId, priceMinor: 1, soldOn: '2026-11-24', note: '' }
    expect(await studio.refused('pieces.sell', early)).toMatchObject({ code: 'sold-before-made' })
    await studio.ask('pieces.end', { pieceId, how: 'lost', placeId: null, note: 'At the market.' })
    expect(await studio.refused('pieces.move', { pieceIds: [pieceId], placeId })).toMatchObject({
      code: 'piece-gone',
    })
    await studio.close()
  })

  it('wait for their order while it is open, and are free when it is closed', async () => {
    const shop = await openSmallWorkshop()
    const { studio } = shop
    const { id, lineId } = await orderLine(shop, 1)
    const { pieces } = await studio.ask('makes.finish', { ...make(shop, 1), orderLineId: lineId })
    const stateOf = async () =>
      (await studio.ask('pieces.read', { id: pieces[0]?.id ?? '' })).piece.state
    expect(await stateOf()).toBe('reserved')
    await studio.ask('orders.setState', { id, state: 'closed' })
    expect(await stateOf()).toBe('here')
    await studio.ask('orders.setState', { id, state: 'open' })
    expect(await stateOf()).toBe('reserved')
    await studio.close()
  })
})

describe('prices', () => {
  it('the maker’s own price stands until she takes it back', async () => {
    const shop = await openSmallWorkshop()
    const { studio, channelId } = shop
    const priceOf = async () => (await studio.ask('prices.sheet', pick(shop))).sheet.channels[0]
    const suggested = await priceOf()
    expect(suggested?.priceMinor).toBe(suggested?.suggestedMinor)
    await studio.ask('prices.set', { ...pick(shop), channelId, priceMinor: 2_550 })
    expect(await priceOf()).toMatchObject({
      priceMinor: 2_550,
      suggestedMinor: suggested?.suggestedMinor,
    })
    await studio.ask('prices.set', { ...pick(shop), channelId, priceMinor: null })
    expect(await priceOf()).toEqual(suggested)
    await studio.close()
  })

  it('cost by first in, first out, or by average, as the workshop does', async () => {
    const shop = await openSmallWorkshop()
    const { studio, materials } = shop
    const lot = { dyeLot: 'K2', supplierId: null, boughtOn: '2026-11-01', note: '' }
    await studio.ask('lots.receive', {
      materialId: materials.slate,
      quantity: 10_000,
      costMinor: 900,
      ...lot,
    })
    const rateOf = async () => {
      const { inputs } = await studio.ask('prices.sheet', pick(shop))
      return inputs.materials.find(({ key }) => key === 'slot:A')?.cost
    }
    expect(await rateOf()).toEqual({ costMinor: 500, costQuantity: 10_000 })
    const { workshop } = await studio.ask('workshop.read', {})
    if (workshop === null) throw new Error('expected a workshop')
    const { currency: _, ...figures } = workshop
    await studio.ask('workshop.save', { workshop: { ...figures, costingMethod: 'average' } })
    expect(await rateOf()).toEqual({ costMinor: 1_400, costQuantity: 20_000 })
    await studio.close()
  })
})

describe('tags.print', () => {
  it('makes a PDF with a page for up to ten tags', async () => {
    const shop = await openSmallWorkshop()
    const { studio, channelId } = shop
    const { pieces } = await studio.ask('makes.finish', make(shop, 12))
    const pieceIds = pieces.map(({ id }) => id)
    const made = await studio.ask('tags.print', { pieceIds, paper: 'a4', channelId })
    expect(made).toMatchObject({ fileName: 'tags-12.pdf', mediaType: 'application/pdf', pages: 2 })
    expect(Buffer.from(made.base64, 'base64').toString('latin1', 0, 5)).toBe('%PDF-')
    await studio.close()
  })
})
