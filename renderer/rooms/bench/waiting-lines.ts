import type { CallOutput } from '../../../shared-core/contract/calls.ts'
import type { BenchWork } from './bench-places.ts'
import type { MakeStart } from './make-start.ts'

type Order = CallOutput<'orders.list'>['orders'][number]

/** A promised line that is not all made. */
export type Waiting = Readonly<{
  order: Order
  line: Order['lines'][number]
  /** Units neither made nor under way. */
  left: number
  toMake: number
}>

/** Every open order's line that is not all made, in the orders' order. */
export function waitingLines(
  orders: readonly Order[],
  works: readonly BenchWork[],
): readonly Waiting[] {
  const begun = new Map<string, number>()
  for (const { order, units } of works) {
    if (order !== null) begun.set(order.lineId, (begun.get(order.lineId) ?? 0) + units)
  }
  return orders
    .flatMap((order) =>
      order.lines.map((line) => {
        const toMake = line.units - line.made
        return { order, line, toMake, left: toMake - (begun.get(line.id) ?? 0) }
      }),
    )
    .filter(({ toMake }) => toMake > 0)
}

/** What a sheet begins with for such a line. */
export function startOf({ line }: Waiting, units: number): MakeStart {
  return { designId: line.designId, colourwayId: line.colourwayId, orderLineId: line.id, units }
}
