import { useState } from 'react'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { Select } from '../../ui/select.tsx'
import { type Asked, linesFor } from './lines-for.ts'
import type { MakeStart } from './make-start.ts'

/** No order: the pieces are for the shelf, and stock held for orders stays held. */
const FOR_SHELF = 'shelf'

/**
 * The order line a make is for: the one it was started from, else what she chose, else the one due first.
 * `given` is what the contract is told of it.
 */
export function useOrderLine(start: MakeStart, asked: Asked | undefined) {
  const [chosen, choose] = useState<string>()
  const isOpen = start.orderLineId === undefined && asked !== undefined
  const orders = useCall('orders.list', isOpen ? { state: 'open' } : null).value?.orders
  const lines = isOpen ? linesFor(orders ?? [], asked) : []
  const found = lines.find(({ line }) => line.id === chosen) ?? lines[0]
  const lineId = start.orderLineId ?? (chosen === FOR_SHELF ? undefined : found?.line.id)
  return {
    ...{ lines, lineId, choose },
    isWaiting: isOpen && orders === undefined,
    given: lineId === undefined ? {} : { orderLineId: lineId },
  }
}

/** Which promise a make is for, where there is one: its beads are held for it and are taken from there. */
export function OrderChoice({ order }: Readonly<{ order: ReturnType<typeof useOrderLine> }>) {
  const { lines, lineId, choose } = order
  const format = useFormat()
  if (lines.length === 0) return null
  return (
    <Select
      label="For"
      value={lineId ?? FOR_SHELF}
      options={[
        ...lines.map(({ order, line }) => ({
          value: line.id,
          label: `${order.code}, ${order.customer}`,
          detail: `${format.counted(line.units - line.made, line.unitName)} to make, due ${format.date(order.dueOn)}`,
        })),
        { value: FOR_SHELF, label: 'The shelf, no order' },
      ]}
      onChange={choose}
    />
  )
}
