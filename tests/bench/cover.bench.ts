import { coverOrders } from '../../shared-core/stock/cover.ts'
import { benchSize, generateWorkshop } from '../fixtures/workshop-generator.ts'
import { medianOf, type Row } from './row.ts'

export const name = 'Cover of all open orders'

/** Rounds before measuring, so that the compiled code is measured and not its warming up. */
const WARM_UP = 40
const ROUNDS = 31

/** Cover of every open order of the bench workshop, computed by the core from values at hand. */
export async function run(): Promise<Row[]> {
  const { lines, lots, reservations, offers, orders } = generateWorkshop(benchSize)
  const request = { lines, lots, reservations, offers }
  for (let i = 0; i < WARM_UP; i++) coverOrders(request)
  const times = Array.from({ length: ROUNDS }, () => {
    const start = performance.now()
    coverOrders(request)
    return performance.now() - start
  })
  const { designs, materials } = benchSize
  return [
    {
      measure: `cover of ${orders.length} orders (${lines.length} lines), ${designs} designs, ${materials} materials, core alone`,
      n: ROUNDS,
      ...medianOf(times),
    },
  ]
}
