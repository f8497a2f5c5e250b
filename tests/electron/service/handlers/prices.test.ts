import { describe, expect, it } from 'vitest'
import { openSmallWorkshop } from '../small-workshop.ts'
import { what } from './what-is-made.ts'

describe('prices', () => {
  it('the maker’s own price stands until she takes it back', async () => {
    const shop = await openSmallWorkshop()
    const { studio, channelId } = shop
    const priceOf = async () => (await studio.ask('prices.sheet', what(shop))).sheet.channels[0]
    const suggested = await priceOf()
    expect(suggested?.priceMinor).toBe(suggested?.suggestedMinor)
    await studio.ask('prices.set', { ...what(shop), channelId, priceMinor: 2_550 })
    expect(await priceOf()).toMatchObject({
      priceMinor: 2_550,
      suggestedMinor: suggested?.suggestedMinor,
    })
    await studio.ask('prices.set', { ...what(shop), channelId, priceMinor: null })
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
      const { inputs } = await studio.ask('prices.sheet', what(shop))
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
