import { useCall } from '../../app/use-call.ts'
import type { BenchWork } from './bench-places.ts'
import type { MakeStart } from './make-start.ts'
import { startOf, waitingLines } from './waiting-lines.ts'

/**
 * What the address asks to start: a design, what is left of an order's line, or, where it is empty,
 * anything. `undefined` until it is found.
 */
export function useStart(
  id: string | undefined,
  works: readonly BenchWork[] | undefined,
): MakeStart | undefined {
  const designs = useCall('designs.list', id === undefined ? null : {}).value?.designs
  const orders = useCall('orders.list', id === undefined ? null : { state: 'open' }).value?.orders
  if (id === undefined || works === undefined) return undefined
  if (id === '') return {}
  if (designs?.some((design) => design.id === id)) return { designId: id }
  const line = waitingLines(orders ?? [], works).find((one) => one.line.id === id)
  return line && startOf(line, Math.max(1, line.left))
}
