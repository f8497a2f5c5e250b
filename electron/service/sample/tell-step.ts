import { keepBench } from '../handlers/bench-keep.ts'
import { listLots } from '../store/material-rows.ts'
import { listPieceRows, type PieceRow } from '../store/piece-rows.ts'
import type { SampleIds } from './set-up.ts'
import type { StoryStep } from './story.ts'
import type { Teller } from './teller.ts'

/** Ids of the orders told so far, by key. */
export type ToldOrders = Map<string, string>

type Step<K extends StoryStep['kind']> = Extract<StoryStep, { kind: K }>
type Telling = Readonly<{ teller: Teller; ids: SampleIds; orders: ToldOrders }>

/** Tells one step of the story. */
export async function tellStep(telling: Telling, step: StoryStep): Promise<void> {
  switch (step.kind) {
    case 'make':
      return make(telling, step)
    case 'bench':
      return benchDone(telling, step)
    case 'bench-open':
      return benchOpen(telling, step)
    case 'sell':
      return sell(telling, step)
    case 'move':
    case 'return':
    case 'give':
      return handle(telling, step)
    case 'order':
      return order(telling, step)
    case 'close': {
      const id = known(telling.orders, step.key)
      await telling.teller.tell(step.daysAgo, 'orders.setState', { id, state: 'closed' })
      return
    }
    case 'weigh':
      return weigh(telling, step)
    case 'count':
      return count(telling, step)
    case 'price':
      return price(telling, step)
  }
}

function known(ids: ReadonlyMap<string, string>, key: string): string {
  const id = ids.get(key)
  if (id === undefined) throw new Error(`the sample knows ${key}`)
  return id
}

function idsOf(
  { ids }: Telling,
  { design, colourway }: Readonly<{ design: string; colourway: string }>,
) {
  return {
    designId: known(ids.designs, design),
    colourwayId: known(ids.colourways, `${design}\n${colourway}`),
  }
}

/** The line of an order that has only one. */
function lineOf({ teller, orders }: Telling, key: string) {
  return teller.view.trx
    .selectFrom('order_line')
    .select('id')
    .where('order_id', '=', known(orders, key))
    .executeTakeFirstOrThrow()
}

/** Work at the bench from its beginning to its pieces, weighed and counted. */
async function benchDone(telling: Telling, step: Step<'bench'>): Promise<void> {
  const { teller, ids } = telling
  const { daysAgo, units, minutes, culls, leftMm } = step
  const tubes = Object.entries(step.tubes).map(
    ([code, weights]) => [known(ids.materials, code), weights] as const,
  )
  const { id } = await teller.tell(daysAgo, 'bench.begin', {
    ...{ ...idsOf(telling, step), units, begunOn: teller.day(daysAgo) },
    before: Object.fromEntries(tubes.map(([materialId, [before]]) => [materialId, before])),
  })
  await teller.tell(daysAgo, 'bench.finish', {
    ...{ id, units, culls, benchS: minutes * 60, threadLeftMm: leftMm },
    weights: tubes.map(([materialId, [beforeMg, afterMg]]) => ({ materialId, beforeMg, afterMg })),
    ...{ placeId: known(ids.places, step.place), madeOn: teller.day(daysAgo), note: '' },
  })
}

/** Work at the bench that was put down half-way. */
async function benchOpen(telling: Telling, step: Step<'bench-open'>): Promise<void> {
  const { teller } = telling
  const { daysAgo, units, minutes } = step
  const { id } = await teller.tell(daysAgo, 'bench.begin', {
    ...{ ...idsOf(telling, step), units, begunOn: teller.day(daysAgo), before: {} },
    orderLineId: (await lineOf(telling, step.order)).id,
  })
  const [copy, part, at] = step.at
  const kept = { id, place: { copy, part, step: at }, workedS: minutes * 60, unitsDone: 0 }
  await keepBench(teller.view, { ...kept, resting: true }, teller.now(daysAgo))
}

async function make(telling: Telling, step: Step<'make'>): Promise<void> {
  const { teller, ids } = telling
  const line = step.order === undefined ? undefined : await lineOf(telling, step.order)
  await teller.tell(step.daysAgo, 'makes.finish', {
    ...idsOf(telling, step),
    units: step.units,
    ...(line === undefined ? {} : { orderLineId: line.id }),
    placeId: known(ids.places, step.place),
    madeOn: teller.day(step.daysAgo),
    ...(step.minutes === undefined ? {} : { benchS: step.minutes * 60 }),
    note: '',
  })
}

/** The oldest piece of a design in a state. */
async function findPiece(
  telling: Telling,
  what: Readonly<{ design: string; colourway: string }>,
  states: readonly PieceRow['state'][],
): Promise<PieceRow> {
  const { colourwayId } = idsOf(telling, what)
  const rows = await listPieceRows(telling.teller.view, { states })
  const piece = rows.toReversed().find((row) => row.colourway_id === colourwayId)
  if (piece === undefined) throw new Error(`the sample has a piece of ${what.design}`)
  return piece
}

async function sell(telling: Telling, step: Step<'sell'>): Promise<void> {
  const { teller, ids } = telling
  const piece = await findPiece(telling, step, [step.order === undefined ? 'here' : 'reserved'])
  await teller.tell(step.daysAgo, 'pieces.sell', {
    pieceId: piece.id,
    channelId: known(ids.channels, step.channel),
    priceMinor: step.priceMinor,
    soldOn: teller.day(step.daysAgo),
    note: '',
  })
}

async function handle(
  telling: Telling,
  step: Step<'move'> | Step<'return'> | Step<'give'>,
): Promise<void> {
  const { teller, ids } = telling
  const piece = await findPiece(telling, step, [step.kind === 'return' ? 'sold' : 'here'])
  if (step.kind === 'move') {
    const placeId = known(ids.places, step.place)
    await teller.tell(step.daysAgo, 'pieces.move', { pieceIds: [piece.id], placeId })
    return
  }
  await teller.tell(step.daysAgo, 'pieces.end', {
    pieceId: piece.id,
    how: step.kind === 'return' ? 'returned' : 'given',
    placeId: step.kind === 'return' ? known(ids.places, step.place) : null,
    on: teller.day(step.daysAgo),
    note: step.note,
  })
}

async function order(telling: Telling, step: Step<'order'>): Promise<void> {
  const { teller, orders } = telling
  const { id } = await teller.tell(step.daysAgo, 'orders.save', {
    order: {
      customer: step.customer,
      promisedOn: teller.day(step.daysAgo),
      dueOn: teller.day(-step.dueIn),
      note: step.note,
      lines: step.lines.map(({ units, priceMinor, ...what }) => ({
        ...idsOf(telling, what),
        units,
        priceMinor,
      })),
    },
  })
  orders.set(step.key, id)
}

async function weigh({ teller, ids }: Telling, step: Step<'weigh'>): Promise<void> {
  const { daysAgo, code, beads, grossMg, tareMg } = step
  const materialId = known(ids.materials, code)
  await teller.tell(daysAgo, 'weighings.add', { materialId, beads, grossMg, tareMg })
}

async function count({ teller, ids }: Telling, step: Step<'count'>): Promise<void> {
  const [lot] = await listLots(teller.view.trx, [known(ids.materials, step.code)])
  if (lot === undefined) throw new Error(`the sample has a lot of ${step.code}`)
  await teller.tell(step.daysAgo, 'lots.count', {
    lotId: lot.id,
    quantity: lot.on_hand - step.missing,
    kind: 'weighed',
    note: step.note,
  })
}

async function price(telling: Telling, step: Step<'price'>): Promise<void> {
  await telling.teller.tell(step.daysAgo, 'prices.set', {
    ...idsOf(telling, step),
    channelId: known(telling.ids.channels, step.channel),
    priceMinor: step.priceMinor,
  })
}
