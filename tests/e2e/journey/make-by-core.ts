import type { CallOutput } from '../../../shared-core/contract/calls.ts'
import { type CostSheet, costSheet } from '../../../shared-core/costing/cost-sheet.ts'
import { issueCosts } from '../../../shared-core/costing/issue-costs.ts'
import { pieceCode, pieceSeries } from '../../../shared-core/pieces/piece-code.ts'
import { overheadOf } from '../../../shared-core/pricing/price-sheet.ts'
import { availableLots } from '../../../shared-core/stock/available.ts'
import { valueAtCost } from '../../../shared-core/stock/lot-value.ts'
import type { StockMovement } from '../../../shared-core/stock/movement.ts'
import { planMake } from '../../../shared-core/stock/plan-make.ts'
import { allocate } from '../../../shared-core/units/allocate.ts'
import { durationS } from '../../../shared-core/units/duration.ts'
import { billByCore } from './bill-by-core.ts'
import { coverByCore } from './cover-by-core.ts'
import { readByCore, tidewrack } from './design-by-core.ts'
import { job } from './job.ts'
import type { StockFacts } from './stock-facts.ts'

type Workshop = NonNullable<CallOutput<'workshop.read'>['workshop']>

/** What making the pairs takes and costs, computed from the chart's file and the drawers as they stand before. */
export type MakeByCore = Readonly<{
  movements: readonly StockMovement[]
  codes: readonly string[]
  materialsMinor: number
  costMinor: number
  benchS: number
  /** Piece by piece; they sum to the whole. */
  pieces: readonly Readonly<{ costMinor: number; labourMinor: number; benchS: number }>[]
}>

/** Plans and costs the make for the order, beside what the other order holds. */
export function makeByCore(before: StockFacts, workshop: Workshop): MakeByCore {
  const movements = plan(before)
  const benchS = Math.round(readByCore(tidewrack).labour.totalS.value * job.made)
  const materialsMinor = movements.length === 0 ? 0 : worthOf(movements, before)
  const work = workCost(benchS, workshop)
  const costMinor = materialsMinor + work.costMinor
  const even = Array.from({ length: job.made }, () => 1)
  const costs = allocate(costMinor, even)
  const labours = allocate(work.byGroup.labour, even)
  const seconds = allocate(benchS, even)
  const series = pieceSeries(tidewrack.name)
  return {
    movements,
    materialsMinor,
    costMinor,
    benchS,
    codes: even.map((_, at) => pieceCode(series, at + 1)),
    pieces: even.map((_, at) => ({
      costMinor: costs[at] ?? 0,
      labourMinor: labours[at] ?? 0,
      benchS: seconds[at] ?? 0,
    })),
  }
}

function plan(before: StockFacts): readonly StockMovement[] {
  const held = coverByCore(before).heldByBand
  const made = planMake(billByCore(tidewrack, before), availableLots(before.lots, held), job.made)
  if (!made.ok) throw new Error(`The core cannot plan it: ${JSON.stringify(made.error)}`)
  return made.value
}

/** First in, first out, over everything that has come in so far. */
function worthOf(movements: readonly StockMovement[], { received }: StockFacts): number {
  const byMaterial = Map.groupBy(movements, ({ materialId }) => materialId)
  return [...byMaterial].reduce((sum, [materialId, own]) => {
    const costs = issueCosts('fifo', [
      ...received
        .filter((receipt) => receipt.materialId === materialId)
        .map(({ quantity, cost }) => ({
          kind: 'receive' as const,
          quantity,
          costMinor: cost === null ? 0 : valueAtCost(cost, quantity),
        })),
      ...own.map(({ quantity }) => ({ kind: 'issue' as const, quantity: -quantity })),
    ])
    if (!costs.ok) throw new Error(costs.error.message)
    return sum + costs.value.issuedMinor
  }, 0)
}

function workCost(benchS: number, { hourlyRateMinor, overhead }: Workshop): CostSheet {
  return costSheet({
    materials: [],
    labour: { seconds: durationS(benchS), basis: 'estimated' },
    hourlyRateMinor,
    overhead: overheadOf(overhead),
  })
}
