import type { z } from 'zod'
import type { dayCalls } from '../../../shared-core/contract/day-calls.ts'
import { calendarDate, daysBetween } from '../../../shared-core/units/calendar-date.ts'
import { formatRelativeDays } from '../../../shared-core/units/format-date.ts'
import type { DecimalMark } from '../../../shared-core/units/parse-options.ts'
import { openBills } from '../bills.ts'
import { formatQuantity } from '../format-quantity.ts'
import { latestVersions, listColourways } from '../store/design-rows.ts'
import { listOrders, type Order } from '../store/order-rows.ts'
import { listPieceRows } from '../store/piece-rows.ts'
import type { View } from '../store/view.ts'
import { findWorkshop } from '../store/workshop-rows.ts'
import type { QueryHandler } from './handler.ts'
import type { MaterialView } from './material-view.ts'
import { viewMaterials } from './materials.ts'
import { coverAllOrders } from './orders-cover.ts'
import { viewPieces } from './pieces.ts'
import { takingsByChannel } from './takings.ts'

type Day = z.output<(typeof dayCalls)['today.read']['output']>
type Attention = Day['attention'][number]

/** Orders due in so many days or fewer are told of. */
const SOON_DAYS = 7

export const readToday: QueryHandler<'today.read'> = async (reading, { today }) => {
  const workshop = await findWorkshop(reading.trx)
  if (workshop === undefined) return EMPTY_DAY
  const orders = await listOrders(reading, { state: 'open' })
  const materials = await viewMaterials(reading)
  const pieces = await viewPieces(
    reading,
    await listPieceRows(reading, { states: ['here', 'reserved'] }),
  )
  const takings = await takingsByChannel(reading, { from: `${today.slice(0, 7)}-01`, to: today })
  return {
    attention: [
      ...dueOrders(orders, today),
      ...(await shortOrders(reading, orders, today)),
      ...materials.flatMap((material) => stockAlert(material, workshop.decimalMark)),
      ...(await unassignedSlots(reading)),
      ...pieces
        .filter((piece) => piece.placeId === null)
        .map((piece) =>
          line('piece-unplaced', 'shelf', piece.id, [
            `${piece.code} is in no place`,
            piece.designName,
          ]),
        ),
      ...missingPrices(pieces),
    ],
    openOrders: orders.length,
    piecesHere: pieces.length,
    stockValueMinor: materials.reduce((sum, material) => sum + material.valueMinor, 0),
    takenThisMonthMinor: takings.reduce((sum, channel) => sum + channel.priceMinor, 0),
  }
}

const EMPTY_DAY: Day = {
  attention: [],
  openOrders: 0,
  piecesHere: 0,
  stockValueMinor: 0,
  takenThisMonthMinor: 0,
}

function line(
  kind: Attention['kind'],
  room: Attention['room'],
  openId: string | null,
  [text, detail]: readonly [text: string, detail: string],
  dueOn: string | null = null,
): Attention {
  return { kind, text, detail, room, openId, dueOn }
}

function dueOrders(orders: readonly Order[], today: string): readonly Attention[] {
  const now = calendarDate(today)
  return orders
    .filter((order) => daysBetween(now, calendarDate(order.dueOn)) <= SOON_DAYS)
    .map((order) => {
      const when = formatRelativeDays(calendarDate(order.dueOn), now)
      const text = `${order.code} for ${order.customer} is due ${when}`
      return line('order-due', 'orders', order.id, [text, progress(order)], order.dueOn)
    })
}

function progress(order: Order): string {
  if (order.state === 'ready') return 'Everything is made; hand it over and close it'
  return order.lines.map((one) => `${one.made} of ${one.units} ${one.designName} made`).join(', ')
}

async function shortOrders(
  reading: Parameters<typeof coverAllOrders>[0],
  orders: readonly Order[],
  today: string,
): Promise<readonly Attention[]> {
  const covers = await coverAllOrders(reading, { today })
  const byId = new Map(orders.map((order) => [order.id, order]))
  return covers.orders
    .filter(({ cover }) => !cover.covered)
    .flatMap(({ orderId, cover }) => {
      const order = byId.get(orderId)
      if (order === undefined) return []
      const names = new Set(cover.lines.flatMap((one) => one.shortages.map(({ name }) => name)))
      const text = `${order.code} for ${order.customer} is not covered by stock`
      const detail = `Short of ${[...names].slice(0, 4).join(', ')}`
      return [line('order-short', 'orders', order.id, [text, detail], order.dueOn)]
    })
}

function stockAlert(material: MaterialView, mark: DecimalMark): readonly Attention[] {
  const amount = (quantity: number) => formatQuantity(quantity, material.unit, mark)
  const { id, name, available, onHand, reserved } = material
  switch (material.alert) {
    case 'none':
      return []
    case 'unweighed':
      return [
        line('stock-unweighed', 'stock', id, [
          `${name} is not ${material.kind === 'bead' ? 'weighed' : 'counted'} yet`,
          'Weigh or count it in',
        ]),
      ]
    case 'out':
      return [line('stock-low', 'stock', id, [`${name} is used up`, `${amount(onHand)} on hand`])]
    case 'low':
      return [line('stock-low', 'stock', id, [`${name} is low`, `${amount(available)} left`])]
    case 'short': {
      const detail = `${amount(reserved)} promised, ${amount(onHand)} on hand`
      return [line('stock-low', 'stock', id, [`${name} is short of what is promised`, detail])]
    }
  }
}

/** Designs in use whose first colourway leaves something without a material. */
async function unassignedSlots(view: View): Promise<readonly Attention[]> {
  const designs = await view.trx
    .selectFrom('design')
    .select(['id', 'name'])
    .where('removed_by', 'is', null)
    .where('archived', '=', 0)
    .orderBy('name')
    .execute()
  const latest = await latestVersions(view)
  const first = new Map(
    (await listColourways(view)).toReversed().map((row) => [row.design_id, row.id]),
  )
  const makings = designs.flatMap(({ id, name }) => {
    const [versionId, colourwayId] = [latest.get(id)?.id, first.get(id)]
    return versionId && colourwayId ? [{ id, name, versionId, colourwayId }] : []
  })
  const bills = await openBills(view, makings)
  return makings.flatMap((making) => {
    const missing = bills.billOf(making).unassigned.length
    if (missing === 0) return []
    const what = missing === 1 ? '1 thing has' : `${missing} things have`
    const text = `${making.name}: ${what} no material yet`
    return [
      line('slot-unassigned', 'designs', making.id, [text, 'Choose beads, thread and findings']),
    ]
  })
}

function missingPrices(pieces: Awaited<ReturnType<typeof viewPieces>>): readonly Attention[] {
  const unpriced = pieces.filter((piece) => piece.askingMinor === 0)
  const byDesign = Map.groupBy(unpriced, (piece) => piece.designId)
  return [...byDesign].map(([designId, own]) =>
    line('price-missing', 'prices', designId, [
      `${own[0]?.designName ?? ''} has no price where it stands`,
      [...new Set(own.map((piece) => piece.placeName))].join(', '),
    ]),
  )
}
