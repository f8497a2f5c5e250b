import { ADD_THREAD, WARP } from '../route/event-codes.ts'
import type { EventList } from '../route/event-list.ts'
import type { Spread } from '../units/spread.ts'
import { cutAsUsed } from './learn-thread-use.ts'

/**
 * A route that cuts its lengths and warps as this workshop uses thread (see `cutAsUsed`), whole mm; all
 * else as it was laid. The route itself where nothing has been learnt.
 */
export function routeAsUsed(route: EventList, use: Spread): EventList {
  if (use.basis === 'estimated') return route
  const [a, b] = [route.a.slice(), route.b.slice()]
  for (let index = 0; index < route.count; index += 1) {
    const kind = route.kind[index]
    if (kind !== ADD_THREAD && kind !== WARP) continue
    const [cutMm, inWorkMm] = [a[index] ?? 0, b[index] ?? 0]
    a[index] = cutAsUsed(cutMm, inWorkMm, use)
    b[index] = Math.round(inWorkMm * use.value)
  }
  return { ...route, a, b }
}
