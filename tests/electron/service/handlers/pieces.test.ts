import { describe, expect, it } from 'vitest'
import { TODAY } from '../open-studio.ts'
import { openSmallWorkshop } from '../small-workshop.ts'
import { orderLine } from './order-line.ts'
import { make } from './what-is-made.ts'

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
