// The past months of Saltmarsh Beadworks, step by step. A data table, so longer than other files.
import type { SampleChannelKey, SamplePlaceKey } from './settings.ts'

type When = Readonly<{
  /** Days before the sample's first day. */
  daysAgo: number
}>

/** A colourway of a design, by their names. */
type What = Readonly<{ design: string; colourway: string }>

export type StoryStep = When &
  (
    | (What &
        Readonly<{
          kind: 'make'
          units: number
          place: SamplePlaceKey
          /** Minutes at the bench for all units, where they were kept. */
          minutes?: number
          /** Key of the order it is for. */
          order?: string
        }>)
    | (What &
        Readonly<{
          kind: 'bench'
          units: number
          place: SamplePlaceKey
          minutes: number
          /** Beads put aside, by slot. */
          culls: Readonly<Record<string, number>>
          /** Thread left over, mm. */
          leftMm: number
          /** Gross mg of tubes before and after, by code. */
          tubes: Readonly<Record<string, readonly [before: number, after: number]>>
        }>)
    | (What &
        Readonly<{
          kind: 'bench-open'
          units: number
          /** Key of the order it is for. */
          order: string
          minutes: number
          /** Where the hand was left: copy, part and step. */
          at: readonly [copy: number, part: number, step: number]
        }>)
    | (What &
        Readonly<{
          kind: 'sell'
          channel: SampleChannelKey
          priceMinor: number
          /** Sells a piece that waits for this order. */
          order?: string
        }>)
    | (What & Readonly<{ kind: 'move'; place: SamplePlaceKey }>)
    | (What & Readonly<{ kind: 'return'; place: SamplePlaceKey; note: string }>)
    | (What & Readonly<{ kind: 'give'; note: string }>)
    | Readonly<{
        kind: 'order'
        key: string
        customer: string
        /** Days from the sample's first day; below 0 for the past. */
        dueIn: number
        note: string
        lines: readonly (What & Readonly<{ units: number; priceMinor: number }>)[]
      }>
    | Readonly<{ kind: 'close'; key: string }>
    | Readonly<{ kind: 'weigh'; code: string; beads: number; grossMg: number; tareMg: number }>
    | Readonly<{ kind: 'count'; code: string; missing: number; note: string }>
    | (What & Readonly<{ kind: 'price'; channel: SampleChannelKey; priceMinor: number }>)
  )

const TIDE = { design: 'Tidewrack diamond earrings', colourway: 'Wet slate and brine' } as const
const TIDE_MUSSEL = { ...TIDE, colourway: 'Mussel and candle' } as const
const REED = { design: 'Reedbed fringe earrings', colourway: 'Late summer' } as const
const LAMP = { design: 'Lantern drop earrings', colourway: 'Lamp lit' } as const
const HARRIER = { design: 'Marsh harrier pendant', colourway: 'Over the fog' } as const
const EBB = { design: 'Mudflat band', colourway: 'Ebb' } as const
const NIGHT = { ...EBB, colourway: 'Night tide' } as const
const CUFF = { design: 'Sluice cuff', colourway: 'Gates open' } as const
const STUD = { design: 'Samphire studs', colourway: 'Green on shell' } as const
const KIT = { design: 'Eelgrass kit', colourway: 'Leaf' } as const

/** The same sale again and again. */
function sales(
  days: readonly number[],
  sale: Omit<Extract<StoryStep, { kind: 'sell' }>, 'daysAgo' | 'kind'>,
) {
  return days.map((daysAgo): StoryStep => ({ kind: 'sell', daysAgo, ...sale }))
}

/** Everything that happened, in any order; it is told by day. */
export const sampleStory: readonly StoryStep[] = [
  { kind: 'weigh', daysAgo: 196, code: 'WS-11', beads: 200, grossMg: 3_120, tareMg: 2_110 },
  { kind: 'weigh', daysAgo: 196, code: 'BR-11', beads: 200, grossMg: 3_090, tareMg: 2_110 },
  { kind: 'weigh', daysAgo: 118, code: 'WS-11', beads: 300, grossMg: 1_510, tareMg: 0 },
  { kind: 'weigh', daysAgo: 84, code: 'LA-15', beads: 400, grossMg: 3_600, tareMg: 2_110 },
  { kind: 'weigh', daysAgo: 60, code: 'OY-11', beads: 250, grossMg: 3_370, tareMg: 2_110 },

  { kind: 'make', daysAgo: 192, ...KIT, units: 12, place: 'drawer', minutes: 110 },
  ...sales([177, 177, 177, 177, 177, 177, 177, 170, 170], {
    ...KIT,
    channel: 'market',
    priceMinor: 2_800,
  }),

  { kind: 'make', daysAgo: 116, ...STUD, units: 6, place: 'market-box', minutes: 205 },
  ...sales([107, 107, 100, 93, 86], { ...STUD, channel: 'market', priceMinor: 2_200 }),
  { kind: 'make', daysAgo: 111, ...NIGHT, units: 2, place: 'gallery', minutes: 330 },
  ...sales([90], { ...NIGHT, channel: 'gallery', priceMinor: 9_800 }),

  {
    kind: 'order',
    daysAgo: 98,
    key: 'studs',
    customer: 'Ferry House Gifts',
    dueIn: -77,
    note: 'For the counter display.',
    lines: [{ ...STUD, units: 4, priceMinor: 1_650 }],
  },
  { kind: 'make', daysAgo: 88, ...STUD, units: 4, place: 'drawer', minutes: 140, order: 'studs' },
  ...sales([79, 79, 79, 79], { ...STUD, channel: 'wholesale', priceMinor: 1_650, order: 'studs' }),
  { kind: 'close', daysAgo: 79, key: 'studs' },

  { kind: 'make', daysAgo: 82, ...CUFF, units: 2, place: 'web-shelf', minutes: 455 },
  ...sales([68], { ...CUFF, channel: 'web', priceMinor: 13_900 }),
  { kind: 'move', daysAgo: 51, ...CUFF, place: 'gallery' },

  { kind: 'make', daysAgo: 60, ...TIDE, units: 4, place: 'market-box', minutes: 310 },
  { kind: 'price', daysAgo: 59, ...TIDE, channel: 'market', priceMinor: 3_900 },
  ...sales([58, 51, 44], { ...TIDE, channel: 'market', priceMinor: 3_900 }),
  { kind: 'make', daysAgo: 57, ...LAMP, units: 3, place: 'gallery', minutes: 240 },
  ...sales([43, 29], { ...LAMP, channel: 'gallery', priceMinor: 6_400 }),
  { kind: 'make', daysAgo: 54, ...REED, units: 4, place: 'market-box', minutes: 270 },
  ...sales([44, 37, 30], { ...REED, channel: 'market', priceMinor: 4_200 }),
  { kind: 'return', daysAgo: 23, ...REED, place: 'drawer', note: 'Loop came loose; to be mended.' },

  { kind: 'count', daysAgo: 41, code: 'SM-11', missing: 240, note: 'Spilt at the bench.' },
  { kind: 'make', daysAgo: 38, ...HARRIER, units: 2, place: 'web-shelf', minutes: 165 },
  ...sales([26], { ...HARRIER, channel: 'web', priceMinor: 5_600 }),
  { kind: 'make', daysAgo: 34, ...EBB, units: 2, place: 'web-shelf', minutes: 300 },
  ...sales([16], { ...EBB, channel: 'web', priceMinor: 8_900 }),
  {
    kind: 'bench',
    daysAgo: 20,
    ...TIDE_MUSSEL,
    units: 3,
    place: 'market-box',
    minutes: 222,
    culls: { A: 7, B: 6, C: 1, D: 8 },
    leftMm: 1_640,
    tubes: { 'MB-11': [14_310, 12_690] },
  },
  ...sales([16, 9], { ...TIDE_MUSSEL, channel: 'market', priceMinor: 3_900 }),
  { kind: 'give', daysAgo: 8, ...TIDE_MUSSEL, note: 'Prize for the harbour raffle.' },
  { kind: 'make', daysAgo: 11, ...STUD, units: 4, place: 'market-box' },
  ...sales([9, 2], { ...STUD, channel: 'market', priceMinor: 2_200 }),

  {
    kind: 'order',
    daysAgo: 13,
    key: 'tide',
    customer: 'Ferry House Gifts',
    dueIn: 5,
    note: 'Half on cards, half loose.',
    lines: [{ ...TIDE, units: 8, priceMinor: 3_100 }],
  },
  { kind: 'make', daysAgo: 6, ...TIDE, units: 3, place: 'drawer', minutes: 228, order: 'tide' },
  {
    kind: 'bench-open',
    daysAgo: 1,
    ...TIDE,
    units: 2,
    order: 'tide',
    minutes: 52,
    at: [1, 0, 60],
  },
  {
    kind: 'order',
    daysAgo: 10,
    key: 'gallery',
    customer: 'Gull Lane Gallery',
    dueIn: 12,
    note: 'For the winter window.',
    lines: [
      { ...HARRIER, units: 2, priceMinor: 5_200 },
      { ...LAMP, units: 2, priceMinor: 6_000 },
    ],
  },
  {
    kind: 'order',
    daysAgo: 4,
    key: 'cuff',
    customer: 'Web order 1046',
    dueIn: 2,
    note: '',
    lines: [{ ...CUFF, units: 1, priceMinor: 13_900 }],
  },
  {
    kind: 'order',
    daysAgo: 1,
    key: 'reeds',
    customer: 'Tide Mill Museum Shop',
    dueIn: 24,
    note: 'May take them in two lots.',
    lines: [{ ...REED, units: 14, priceMinor: 3_400 }],
  },
]
