import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type PriceInputs,
  priceSheet,
  saleChannel,
} from '../../../shared-core/pricing/price-sheet.ts'
import { currencyCode } from '../../../shared-core/units/currency.ts'
import { estimated, exactly } from '../../../shared-core/units/spread.ts'

const workshop: PriceInputs['workshop'] = {
  name: 'Saltmarsh Beadworks',
  currency: 'EUR',
  decimalMark: ',',
  hourlyRateMinor: 1_800,
  overhead: { kind: 'percent-of-labour', percent: '10' },
  costingMethod: 'fifo',
  marginPercent: '20',
  priceStepMinor: 100,
  scaleResolutionMg: 10,
  tagMaker: '',
  tagCare: '',
  tagCaution: '',
}

const market: PriceInputs['channels'][number] = {
  id: 'ch_market',
  name: 'Saturday market',
  kind: 'market',
  feePercent: '0',
  feeFixedMinor: 0,
  paymentPercent: '0',
  paymentFixedMinor: 0,
  feesOn: 'gross',
  taxPercent: '20',
  taxIncluded: true,
}

const inputs: PriceInputs = {
  designName: 'Tidewrack diamond earrings',
  unitName: 'pair',
  materials: [
    {
      key: 'slot:A',
      label: 'wet slate',
      group: 'materials',
      unit: 'mg',
      quantity: 3_600,
      basis: 'measured',
      cost: { costMinor: 420, costQuantity: 7_200 },
    },
    {
      key: 'extra:wire',
      label: 'ear wire',
      group: 'findings',
      unit: 'piece',
      quantity: 2,
      basis: 'exact',
      cost: null,
    },
  ],
  labourS: exactly(3_600),
  workshop,
  channels: [market],
  setPrices: {},
}

describe('priceSheet', () => {
  it('adds materials, labour and overhead up, and says where no cost is known', () => {
    const { cost, costMinor, basis } = priceSheet(inputs)
    expect(cost.map(({ key, amountMinor, known }) => [key, amountMinor, known])).toEqual([
      ['slot:A', 210, true],
      ['extra:wire', 0, false],
      ['labour', 1_800, true],
      ['overhead', 180, true],
    ])
    expect([costMinor, basis]).toEqual([2_190, 'measured'])
  })

  it('suggests the price that leaves the margin, rounded up to the step, with tax inside', () => {
    const [price] = priceSheet(inputs).channels
    // 21.90 / 0.8 is 27.375 before tax, 32.85 with it; the next whole euro is 33.00.
    expect(price).toEqual({
      channelId: 'ch_market',
      channelName: 'Saturday market',
      suggestedMinor: 3_300,
      refusal: null,
      priceMinor: 3_300,
      floorMinor: 2_628,
      taxMinor: 550,
      feesMinor: 0,
      costMinor: 2_190,
      profitMinor: 560,
      marginPercent: '20.4',
      earningsPerHourMinor: 2_360,
    })
  })

  it('reckons with the maker’s own price where she has set one', () => {
    const [price] = priceSheet({ ...inputs, setPrices: { ch_market: 2_400 } }).channels
    expect(price).toMatchObject({ suggestedMinor: 3_300, priceMinor: 2_400, profitMinor: -190 })
    expect(price?.marginPercent).toBe('-9.5')
  })

  it('says why no price leaves the margin, and still shows what loses nothing', () => {
    const gallery = { ...market, feePercent: '70', taxPercent: '0' }
    const [price] = priceSheet({
      ...inputs,
      channels: [gallery],
      workshop: { ...workshop, marginPercent: '40' },
    }).channels
    expect(price).toMatchObject({
      suggestedMinor: null,
      refusal: { code: 'no-such-price' },
      floorMinor: 7_299,
      priceMinor: 7_299,
    })
  })

  it.each([
    ['a fee that takes everything', { ...market, feePercent: '100', taxPercent: '0' }],
    ['fees that take everything together', { ...market, feePercent: '60', paymentPercent: '40' }],
  ])('has neither price nor floor for %s', (_, channel) => {
    const [price] = priceSheet({ ...inputs, channels: [channel] }).channels
    expect(price).toMatchObject({ suggestedMinor: null, floorMinor: null, priceMinor: 0 })
    expect(price?.refusal).not.toBeNull()
  })

  it('knows no earnings per hour where no time is known', () => {
    const [price] = priceSheet({ ...inputs, labourS: exactly(0) }).channels
    expect(price?.earningsPerHourMinor).toBeNull()
  })

  it('always sums: lines to the cost; price less tax to fees, cost and profit', () => {
    const percent = (max: number) => fc.integer({ min: 0, max }).map(String)
    const anyChannel = fc.record({
      feePercent: percent(50),
      feeFixedMinor: fc.nat(500),
      paymentPercent: percent(5),
      paymentFixedMinor: fc.nat(100),
      feesOn: fc.constantFrom('net' as const, 'gross' as const),
      taxPercent: percent(25),
      taxIncluded: fc.boolean(),
    })
    fc.assert(
      fc.property(
        anyChannel,
        fc.nat(20_000),
        fc.nat(9_000),
        fc.integer({ min: 1, max: 500 }),
        (fees, seconds, quantity, priceStepMinor) => {
          const sheet = priceSheet({
            ...inputs,
            materials: inputs.materials.map((material) => ({ ...material, quantity })),
            labourS: estimated(seconds, seconds, seconds),
            channels: [{ ...market, ...fees }],
            workshop: { ...workshop, priceStepMinor },
          })
          expect(sheet.cost.reduce((sum, line) => sum + line.amountMinor, 0)).toBe(sheet.costMinor)
          for (const price of sheet.channels) {
            const tax = fees.taxIncluded ? price.taxMinor : 0
            const parts = tax + price.feesMinor + price.costMinor + price.profitMinor
            expect(parts).toBe(price.priceMinor)
            if (price.suggestedMinor === null) continue
            expect(price.suggestedMinor % priceStepMinor).toBe(0)
            expect(price.suggestedMinor).toBeGreaterThanOrEqual(price.floorMinor ?? 0)
          }
        },
      ),
    )
  })
})

describe('saleChannel', () => {
  it.each([
    ['net', 'price-before-tax'],
    ['gross', 'price-with-tax'],
  ] as const)('takes percentages on the %s price', (feesOn, base) => {
    const channel = saleChannel({ ...market, feesOn, feePercent: '6.5' }, currencyCode('EUR'))
    expect(channel.fee).toEqual({ percent: '0.065', fixedMinor: 0, base })
    expect(channel.tax).toEqual({ rate: '0.2', mode: 'included' })
  })
})
