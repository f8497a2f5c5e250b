import { type FifoCosts, fifoCosts } from '../../shared-core/costing/fifo.ts'
import { issueCosts } from '../../shared-core/costing/issue-costs.ts'
import type { StockEvent } from '../../shared-core/costing/stock-event.ts'
import { type LotCost, valueAtCost } from '../../shared-core/stock/lot-value.ts'
import { fraction, multiplyFractions } from '../../shared-core/units/fraction.ts'
import { roundFraction } from '../../shared-core/units/rounding.ts'
import type { View } from './store/view.ts'
import { getWorkshop } from './store/workshop-rows.ts'

/** What has come in and gone out of one material, as the core costs it; each receipt with its lot's cost. */
export type CostHistory = Readonly<{
  events: readonly StockEvent[]
  /** Receipt by receipt: what it cost, or null where that is not known. */
  receipts: readonly (LotCost | null)[]
}>

/** Values materials as the workshop has chosen to. */
export type Valuer = Readonly<{
  /** Values of what leaves a material, one issue after the other, whole minor units from 0 up. */
  issue: (materialId: string, quantities: readonly number[]) => readonly number[]
  /** Value of what turns up beyond the books: at what the material costs now, else 0. */
  surplus: (materialId: string, quantity: number, lotCost: LotCost | null) => number
  /** What a material costs now, as an exact rate; null when nobody knows. */
  rate: (materialId: string) => LotCost | null
}>

/** The value of what comes in: its cost, or 0 where that is not known. */
export function valueOfReceipt(cost: LotCost | null, quantity: number): number {
  return cost === null ? 0 : valueAtCost(cost, quantity)
}

const EMPTY: CostHistory = { events: [], receipts: [] }

/** Opens the books of some materials. */
export async function openValuer(view: View, materialIds: readonly string[]): Promise<Valuer> {
  const { costingMethod } = await getWorkshop(view.trx)
  const method = costingMethod === 'fifo' ? 'fifo' : 'moving-average'
  const histories = await readHistories(view, materialIds)
  const offers = await readBestOffers(view, materialIds)
  const historyOf = (materialId: string) => histories.get(materialId) ?? EMPTY
  const settle = (events: readonly StockEvent[]) => {
    const costs = issueCosts(method, events)
    if (!costs.ok) throw new Error(`the books hold what is issued: ${costs.error.message}`)
    return costs.value
  }
  return {
    issue: (materialId, quantities) => {
      const { events } = historyOf(materialId)
      const issues = quantities.map((quantity) => ({ kind: 'issue' as const, quantity }))
      return settle([...events, ...issues])
        .issues.slice(-issues.length)
        .map((issue) => issue.costMinor)
    },
    surplus: (materialId, quantity, lotCost) => {
      const { left } = settle(historyOf(materialId).events)
      if (left.quantity === 0) return valueOfReceipt(lotCost, quantity)
      const each = multiplyFractions(left.exact, fraction(1, left.quantity))
      return roundFraction(multiplyFractions(each, fraction(quantity)), 'half-even')
    },
    rate: (materialId) =>
      (method === 'fifo' ? nextLayer : average)(historyOf(materialId)) ??
      lastKnown(historyOf(materialId)) ??
      offers.get(materialId) ??
      null,
  }

  function average({ events, receipts }: CostHistory): LotCost | undefined {
    if (receipts.includes(null)) return undefined
    const { left } = settle(events)
    return left.quantity === 0
      ? undefined
      : { costMinor: left.costMinor, costQuantity: left.quantity }
  }
}

/** What the oldest receipt that is left cost. */
function nextLayer({ events, receipts }: CostHistory): LotCost | undefined {
  const next = fifoCosts([...events, { kind: 'issue', quantity: 1 }])
  const draw = next.ok ? lastDraw(next.value) : undefined
  return (draw && receipts[draw.receipt]) ?? undefined
}

function lastDraw({ issues }: FifoCosts) {
  return issues.at(-1)?.draws[0]
}

function lastKnown({ receipts }: CostHistory): LotCost | undefined {
  return receipts.findLast((cost) => cost !== null) ?? undefined
}

/** Movements that stand, in order: a line taken back an odd number of times does not. */
async function readHistories(
  { trx }: View,
  materialIds: readonly string[],
): Promise<ReadonlyMap<string, CostHistory>> {
  if (materialIds.length === 0) return new Map()
  const rows = await trx
    .selectFrom('stock_movement')
    .innerJoin('lot', 'lot.id', 'stock_movement.lot_id')
    .leftJoin('stock_movement as turn', 'turn.head_id', 'stock_movement.id')
    .select(({ fn }) => [
      'lot.material_id',
      'lot.cost_minor',
      'lot.cost_quantity',
      'stock_movement.quantity',
      'stock_movement.value_minor',
      fn.count<number>('turn.id').as('turns'),
    ])
    .where('lot.material_id', 'in', materialIds)
    .where('stock_movement.head_id', 'is', null)
    .groupBy('stock_movement.id')
    .orderBy('stock_movement.id')
    .execute()
  const standing = rows.filter((row) => Number(row.turns) % 2 === 0 && row.quantity !== 0)
  const histories = new Map<string, CostHistory>()
  for (const [materialId, own] of Map.groupBy(standing, (row) => row.material_id)) {
    histories.set(materialId, {
      events: own.map(({ quantity, value_minor }) =>
        quantity > 0
          ? { kind: 'receive', quantity, costMinor: value_minor }
          : { kind: 'issue', quantity: -quantity },
      ),
      receipts: own
        .filter(({ quantity }) => quantity > 0)
        .map(({ cost_minor, cost_quantity }) =>
          cost_minor === null || cost_quantity === null
            ? null
            : { costMinor: cost_minor, costQuantity: cost_quantity },
        ),
    })
  }
  return histories
}

/** The pack that costs least for what it holds, of each material that anyone offers. */
async function readBestOffers(
  { trx }: View,
  materialIds: readonly string[],
): Promise<ReadonlyMap<string, LotCost>> {
  if (materialIds.length === 0) return new Map()
  const rows = await trx
    .selectFrom('offer')
    .select(['material_id', 'pack_quantity', 'price_minor'])
    .where('removed_by', 'is', null)
    .where('material_id', 'in', materialIds)
    .orderBy('id')
    .execute()
  const best = new Map<string, LotCost>()
  for (const { material_id, pack_quantity, price_minor } of rows) {
    const before = best.get(material_id)
    const dearer = before && price_minor * before.costQuantity >= before.costMinor * pack_quantity
    if (!dearer) best.set(material_id, { costMinor: price_minor, costQuantity: pack_quantity })
  }
  return best
}
