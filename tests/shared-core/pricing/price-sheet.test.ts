import { describe, expect, it } from 'vitest'
import { priceSheet as sheetSchema } from '../../../shared-core/contract/price-calls.ts'
import { type PriceInputs, priceSheet } from '../../../shared-core/pricing/price-sheet.ts'

const market = {
  id: 'chn_market1',
  name: 'Saturday market',
  kind: 'market',
  feePercent: '0',
  feeFixedMinor: 0,
  paymentPercent: '1.75',
  paymentFixedMinor: 0,
  feesOn: 'gross',
  taxPercent: '20',
  taxIncluded: true,
} as const
const gallery = {
  ...market,
  id: 'chn_gallery1',
  name: 'Gull Lane Gallery',
  kind: 'consignment',
  feePercent: '40',
  paymentPercent: '0',
  feesOn: 'net',
} as const
const inputs: PriceInputs = {
  designName: 'Tidewrack diamond earrings',
  unitName: 'pair',
  materials: [
    {
      key: 'slot:A',
      label: 'wet slate',
      group: 'materials',
      unit: 'mg',
      quantity: 2102,
      basis: 'measured',
      cost: { costMinor: 420, costQuantity: 7200 },
    },
    {
      key: 'extra:wires',
      label: 'ear wire, steel',
      group: 'findings',
      unit: 'piece',
      quantity: 2,
      basis: 'exact',
      cost: { costMinor: 640, costQuantity: 20 },
    },
  ],
  labourS: { value: 5100.4, low: 4200, high: 6000, basis: 'estimated' },
  workshop: {
    name: 'Saltmarsh Beadworks',
    currency: 'EUR',
    decimalMark: ',',
    hourlyRateMinor: 1800,
    overhead: { kind: 'percent-of-labour', percent: '15' },
    costingMethod: 'fifo',
    marginPercent: '30',
    priceStepMinor: 100,
    scaleResolutionMg: 10,
    tagMaker: '',
    tagCare: '',
    tagCaution: '',
  },
  channels: [market, gallery],
  setPrices: {},
}

describe('priceSheet', () => {
  it('prices a pair in each channel by the workshop’s margin and price step', () => {
    // By hand: 1.226 + 0.64 + 25.50 + 3.825 = 31.191. Market: 31.19/(0.7/1.2 - 0.0175) = 55.12 -> 56;
    // tax 9.33, net 46.67, card 0.98, profit 14.50. Gallery: 31.19/(0.3/1.2) = 124.76 -> 125.
    const sheet = priceSheet(inputs)
    expect(sheetSchema.parse(sheet)).toEqual(sheet)
    expect(sheet).toMatchObject({ costMinor: 3119, basis: 'estimated' })
    expect(sheet.cost.reduce((sum, line) => sum + line.amountMinor, 0)).toBe(3119)
    expect(sheet.channels[0]).toEqual({
      channelId: 'chn_market1',
      channelName: 'Saturday market',
      suggestedMinor: 5600,
      refusal: null,
      priceMinor: 5600,
      floorMinor: 3823,
      taxMinor: 933,
      feesMinor: 98,
      costMinor: 3119,
      profitMinor: 1450,
      marginPercent: '31.1',
      earningsPerHourMinor: 2824,
    })
    expect(sheet.channels[1]).toMatchObject({ suggestedMinor: 12_500, feesMinor: 4167 })
  })

  it('keeps the maker’s own price beside the suggested one', () => {
    const sheet = priceSheet({ ...inputs, setPrices: { chn_market1: 3500 } })
    expect(sheet.channels[0]).toMatchObject({
      suggestedMinor: 5600,
      priceMinor: 3500,
      profitMinor: -263,
      marginPercent: '-9.0',
    })
  })

  it('carries the refusal of a channel that cannot leave the margin, and asks its floor', () => {
    const dear = { ...gallery, feePercent: '80' }
    const [channel] = priceSheet({ ...inputs, channels: [dear] }).channels
    expect(channel).toMatchObject({ suggestedMinor: null, refusal: { code: 'no-such-price' } })
    expect(channel?.priceMinor).toBe(channel?.floorMinor)
    expect(channel?.profitMinor).toBeGreaterThanOrEqual(0)
  })

  it('has no floor where fees take all of any price', () => {
    const all = { ...gallery, feePercent: '100' }
    const sheet = priceSheet({ ...inputs, channels: [all] })
    expect(sheetSchema.parse(sheet)).toEqual(sheet)
    expect(sheet.channels[0]).toMatchObject({
      suggestedMinor: null,
      floorMinor: null,
      priceMinor: 0,
    })
  })
})
