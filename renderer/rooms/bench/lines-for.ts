import type { CallOutput } from '../../../shared-core/contract/calls.ts'

type Order = CallOutput<'orders.list'>['orders'][number]
export type Asked = Readonly<{ designId: string; colourwayId: string }>

/** Lines of open orders that a make could be for, the one due first before the others. */
export function linesFor(orders: readonly Order[], { designId, colourwayId }: Asked) {
  return orders
    .toSorted((a, b) => a.dueOn.localeCompare(b.dueOn))
    .flatMap((order) =>
      order.lines
        .filter((line) => line.designId === designId && line.colourwayId === colourwayId)
        .filter(({ units, made }) => made < units)
        .map((line) => ({ order, line })),
    )
}
