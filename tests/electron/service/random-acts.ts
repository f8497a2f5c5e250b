import * as fc from 'fast-check'
import type { CallInput, CallName } from '../../../shared-core/contract/calls.ts'
import { fillings, orderFor, type SmallWorkshop, smallBody } from './small-workshop.ts'

/** A wish to do something, made into a call once it is known what there is. */
export type Wish = Readonly<{ kind: keyof typeof WISHES; size: number; pick: number }>

/** Wishes of every kind of act; many will be refused, as they are at the bench. */
export const anyWishes = (most: number): fc.Arbitrary<Wish[]> =>
  fc.array(
    fc.record({
      kind: fc.constantFrom(...(Object.keys(WISHES) as (keyof typeof WISHES)[])),
      size: fc.integer({ min: 1, max: 9 }),
      pick: fc.nat({ max: 50 }),
    }),
    { minLength: Math.floor(most / 2), maxLength: most, size: 'max' },
  )

type Call = { [N in CallName]: readonly [N, CallInput<N>] }[CallName]
type Maker = (shop: SmallWorkshop, wish: Wish) => Promise<Call | undefined>

/** The call a wish comes to, or nothing when there is nothing to do it to. */
export async function callOf(shop: SmallWorkshop, wish: Wish): Promise<Call | undefined> {
  return WISHES[wish.kind](shop, wish)
}

function pickFrom<T>(items: readonly T[], pick: number): T | undefined {
  return items[pick % Math.max(1, items.length)]
}

const KINDS = ['slate', 'brine', 'thread', 'wire'] as const

async function anyPiece(shop: SmallWorkshop, state: 'here' | 'sold', pick: number) {
  const { pieces } = await shop.studio.ask('pieces.list', { state })
  return pickFrom(pieces, pick)
}

async function anyOrder({ studio }: SmallWorkshop, pick: number) {
  return pickFrom((await studio.ask('orders.list', { state: 'all' })).orders, pick)
}

const WISHES = {
  receive: async (shop, { size, pick }) => {
    const kind = pickFrom(KINDS, pick) ?? 'slate'
    const lot = {
      dyeLot: `L${size}`,
      supplierId: shop.supplierId,
      boughtOn: '2026-11-20',
      note: '',
    }
    const costMinor = pick % 3 === 0 ? null : size * 111
    const quantity = kind === 'wire' ? size * 2 : size * 777
    return ['lots.receive', { materialId: shop.materials[kind], quantity, costMinor, ...lot }]
  },
  count: async (shop, { size, pick }) => {
    const kind = pickFrom(KINDS, pick) ?? 'slate'
    const quantity = kind === 'wire' ? size * 3 : size * 1_111
    return ['lots.count', { lotId: shop.lots[kind], quantity, kind: 'counted', note: '' }]
  },
  weigh: async (shop, { size }) => {
    const materialId = shop.materials.slate
    return ['weighings.add', { materialId, beads: 200, grossMg: 950 + size * 10, tareMg: 0 }]
  },
  order: async (shop, { size }) => ['orders.save', { order: orderFor(shop, size) }],
  changeOrder: async (shop, { size, pick }) => {
    const order = await anyOrder(shop, pick)
    const [line] = order?.lines ?? []
    if (order === undefined || line === undefined) return undefined
    const { units: _, ...kept } = orderFor(shop, size).lines[0] ?? { units: 0 }
    const lines = [
      { ...kept, id: line.id, units: size },
    ] as CallInput<'orders.save'>['order']['lines']
    return ['orders.save', { id: order.id, order: { ...orderFor(shop, size), lines } }]
  },
  setState: async (shop, { size, pick }) => {
    const order = await anyOrder(shop, pick)
    const state = (['open', 'closed', 'cancelled'] as const)[size % 3] ?? 'open'
    return order && ['orders.setState', { id: order.id, state }]
  },
  make: async (shop, { size, pick }) => {
    const what = { designId: shop.designId, colourwayId: shop.colourwayId, units: size }
    const how = { placeId: shop.placeId, madeOn: '2026-11-25', note: '' }
    return ['makes.finish', { ...what, ...how, ...(pick % 2 ? { benchS: pick * 60 } : {}) }]
  },
  makeForOrder: async (shop, { size, pick }) => {
    const order = await anyOrder(shop, pick)
    const [line] = order?.lines ?? []
    if (line === undefined) return undefined
    const what = { designId: shop.designId, colourwayId: shop.colourwayId, orderLineId: line.id }
    const how = { placeId: shop.placeId, madeOn: '2026-11-25', note: '' }
    return ['makes.finish', { ...what, ...how, units: 1 + (size % 2) }]
  },
  sell: async (shop, { size, pick }) => {
    const piece = await anyPiece(shop, 'here', pick)
    const sale = {
      channelId: shop.channelId,
      priceMinor: size * 333,
      soldOn: '2026-11-26',
      note: '',
    }
    return piece && ['pieces.sell', { pieceId: piece.id, ...sale }]
  },
  takeBack: async (shop, { pick }) => {
    const piece = await anyPiece(shop, 'sold', pick)
    const end = { how: 'returned', placeId: shop.placeId, on: '2026-11-27', note: '' } as const
    return piece && ['pieces.end', { pieceId: piece.id, ...end }]
  },
  lose: async (shop, { size, pick }) => {
    const piece = await anyPiece(shop, 'here', pick)
    const how = size % 2 ? ('lost' as const) : ('given' as const)
    return piece && ['pieces.end', { pieceId: piece.id, how, placeId: null, note: '' }]
  },
  move: async (shop, { pick }) => {
    const { places } = await shop.studio.ask('workshop.read', {})
    const { pieces } = await shop.studio.ask('pieces.list', { state: 'here' })
    const pieceIds = pieces.slice(0, 3).map((piece) => piece.id)
    const placeId = pickFrom(places, pick)?.id
    return pieceIds.length > 0 && placeId ? ['pieces.move', { pieceIds, placeId }] : undefined
  },
  addPlace: async (_shop, { size }) => [
    'place.save',
    { place: { name: `Box ${size}`, channelId: null } },
  ],
  saveChannel: async (shop, { size }) => {
    const { channels } = await shop.studio.ask('workshop.read', {})
    const channel = channels.find((one) => one.id === shop.channelId)
    return channel && ['channel.save', { channel: { ...channel, feePercent: String(size) } }]
  },
  saveWorkshop: async (shop, { size }) => {
    const { workshop } = await shop.studio.ask('workshop.read', {})
    if (workshop === null) return undefined
    const { currency: _, ...rest } = workshop
    return ['workshop.save', { workshop: { ...rest, hourlyRateMinor: size * 500 } }]
  },
  setPrice: async (shop, { size, pick }) => {
    const { designId, colourwayId, channelId } = shop
    const priceMinor = pick % 3 === 0 ? null : size * 500
    return ['prices.set', { designId, colourwayId, channelId, priceMinor }]
  },
  saveDesign: async (shop, { size }) => {
    const body = { ...smallBody, finishingS: size * 60 }
    return ['designs.save', { id: shop.designId, name: `Studs ${size}`, tags: [], body, note: '' }]
  },
  archive: async (shop, { size }) => [
    'designs.archive',
    { id: shop.designId, archived: size % 2 === 0 },
  ],
  recolour: async (shop, { size, pick }) => {
    const all = fillings(shop.materials)
    const { 'slot:B': _, ...fewer } = all
    const id = pick % 4 === 0 ? {} : { id: shop.colourwayId }
    const materials = size % 4 === 0 ? fewer : all
    return ['colourways.save', { designId: shop.designId, ...id, name: `Way ${size}`, materials }]
  },
  offer: async (shop, { size, pick }) => {
    const materialId = shop.materials[pickFrom(KINDS, pick) ?? 'slate']
    const pack = { supplierId: shop.supplierId, packQuantity: size * 100, priceMinor: size * 90 }
    return ['offers.save', { offer: { materialId, ...pack } }]
  },
} as const satisfies Readonly<Record<string, Maker>>
