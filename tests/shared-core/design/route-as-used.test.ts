import { describe, expect, it } from 'vitest'
import { referenceThreadUse, threadAsUsed } from '../../../shared-core/design/learn-thread-use.ts'
import { routeAsUsed } from '../../../shared-core/design/route-as-used.ts'
import { ADD_THREAD, WARP } from '../../../shared-core/route/event-codes.ts'
import { type EventList, toEvents } from '../../../shared-core/route/event-list.ts'
import { measured } from '../../../shared-core/units/spread.ts'
import { drawChart } from '../stitches/draw-chart.ts'
import { designOf, panelOf, read } from './a-design.ts'

/** A loomed strip, whose warps are cut too, and a panel that takes several lengths. */
const { parts } = read(
  designOf([
    panelOf(drawChart('loom', Array(12).fill('AABB')), { id: 'strip' }),
    panelOf(drawChart('square', Array(12).fill('A'.repeat(60)))),
  ]),
)
const use = measured(1.08, 1.1, 1.12)

/** What of each length and warp stays in the work, as the route has it. */
const inWorkMm = ({ kind, b, count }: EventList) =>
  Array.from(b.subarray(0, count))
    .filter((_, at) => kind[at] === ADD_THREAD || kind[at] === WARP)
    .toSorted((one, other) => one - other)

const lengthsMm = (route: EventList) =>
  toEvents(route)
    .flatMap((event) =>
      event.kind === 'add-thread' || event.kind === 'warp' ? [event.lengthMm] : [],
    )
    .toSorted((a, b) => a - b)

describe('routeAsUsed', () => {
  it('is the route itself before anything is learnt', () => {
    for (const { route } of parts) expect(routeAsUsed(route, referenceThreadUse)).toBe(route)
  })

  it('cuts each length and warp as the thread of its part is reckoned, and changes nothing else', () => {
    for (const { route, thread } of parts) {
      const before = toEvents(route)
      const used = routeAsUsed(route, use)
      const cutMm = threadAsUsed(thread, use).cutMm.toSorted((a, b) => a - b)
      expect(lengthsMm(used)).toEqual(cutMm)
      const stays = threadAsUsed(thread, use).inWorkMm
      expect(inWorkMm(used)).toEqual(stays.toSorted((a, b) => a - b))
      expect(Math.min(...cutMm.map((mm, at) => mm - (lengthsMm(route)[at] ?? 0)))).toBeGreaterThan(
        0,
      )
      expect(toEvents(route)).toEqual(before)
      const kinds = (route: EventList) => toEvents(route).map(({ kind }) => kind)
      expect(kinds(used)).toEqual(kinds(route))
    }
  })
})
