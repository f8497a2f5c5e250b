import type { Channel, Workshop } from '../store/workshop-rows.ts'

type SampleChannel = Readonly<{ key: string }> & Omit<Channel, 'id'>

const noFees = {
  feePercent: '0',
  feeFixedMinor: 0,
  paymentPercent: '0',
  paymentFixedMinor: 0,
  feesOn: 'gross',
} as const

/** How Saltmarsh Beadworks sells. The tax rates are examples; local rules decide. */
export const sampleChannels = [
  {
    key: 'market',
    name: 'Saturday market',
    kind: 'market',
    ...noFees,
    paymentPercent: '1.7',
    taxPercent: '20',
    taxIncluded: true,
  },
  {
    key: 'gallery',
    name: 'Gull Lane Gallery',
    kind: 'consignment',
    ...noFees,
    feePercent: '40',
    taxPercent: '0',
    taxIncluded: true,
  },
  {
    key: 'web',
    name: 'Web shop',
    kind: 'web',
    ...noFees,
    feePercent: '6.5',
    feeFixedMinor: 20,
    paymentPercent: '2.9',
    paymentFixedMinor: 30,
    taxPercent: '20',
    taxIncluded: true,
  },
  {
    key: 'wholesale',
    name: 'Ferry House Gifts',
    kind: 'wholesale',
    ...noFees,
    taxPercent: '20',
    taxIncluded: false,
  },
] as const satisfies readonly SampleChannel[]

export type SampleChannelKey = (typeof sampleChannels)[number]['key']

/** Where its pieces stand, and how they are sold from there. */
export const samplePlaces = [
  { key: 'drawer', name: 'The drawer', channel: null },
  { key: 'market-box', name: 'Saturday market box', channel: 'market' },
  { key: 'gallery', name: 'Gull Lane Gallery', channel: 'gallery' },
  { key: 'web-shelf', name: 'Web shop shelf', channel: 'web' },
] as const satisfies readonly Readonly<{
  key: string
  name: string
  channel: SampleChannelKey | null
}>[]

export type SamplePlaceKey = (typeof samplePlaces)[number]['key']

/** Its figures and ways, beside what was chosen at the beginning. */
export const sampleFigures = {
  hourlyRateMinor: 1_600,
  overhead: { kind: 'percent-of-labour', percent: '12' },
  costingMethod: 'fifo',
  marginPercent: '15',
  priceStepMinor: 100,
  scaleResolutionMg: 10,
  tagMaker: 'Saltmarsh Beadworks, at the tide mill',
  tagCare: 'Keep dry. Put on last, take off first. Wipe with a soft cloth.',
  tagCaution: 'Small parts: not for children under 3. Ask us about metals before you wear them.',
} as const satisfies Partial<Workshop>
