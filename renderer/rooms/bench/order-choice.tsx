import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { Select } from '../../ui/select.tsx'
import { type Asked, linesFor } from './lines-for.ts'

/** No order: the pieces are for the shelf, and stock held for orders stays held. */
export const FOR_SHELF = 'shelf'

/** The order line a make is for: what she chose, else the one due first; undefined for the shelf. */
export function useOrderLine(asked: Asked | undefined, chosen: string | undefined) {
  const orders = useCall('orders.list', { state: 'open' }).value?.orders
  const lines = asked === undefined ? [] : linesFor(orders ?? [], asked)
  const found = lines.find(({ line }) => line.id === chosen) ?? lines[0]
  return {
    lines,
    lineId: chosen === FOR_SHELF ? undefined : found?.line.id,
    isWaiting: asked !== undefined && orders === undefined,
  }
}

/** Which promise a make is for, where there is one: its beads are held for it and are taken from there. */
export function OrderChoice({
  lines,
  lineId,
  onChoose,
}: Readonly<{
  lines: ReturnType<typeof linesFor>
  lineId: string | undefined
  onChoose: (lineId: string) => void
}>) {
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
      onChange={onChoose}
    />
  )
}
