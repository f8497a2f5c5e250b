import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { planChanges, tailPlan } from '../../../shared-core/route/cut-lengths.ts'
import { DOWN, PICK_UP, ROW, STITCH, UP } from '../../../shared-core/route/event-codes.ts'
import { eventAt, toEvents } from '../../../shared-core/route/event-list.ts'
import {
  createEventWriter,
  finishEvents,
  hook,
  pass,
  pickUp,
  pickUpAlso,
} from '../../../shared-core/route/event-writer.ts'
import { createWeaver, findWeave, type Hops } from '../../../shared-core/route/find-weave.ts'
import { measureThread } from '../../../shared-core/route/measure-thread.ts'
import { takenPlayMm, threadSlack } from '../../../shared-core/route/thread-slack.ts'
import { drawChart } from '../stitches/draw-chart.ts'
import { lay } from '../stitches/lay.ts'

describe('an event list', () => {
  it('gives back what was written, however far it had to grow', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), (count) => {
        const writer = createEventWriter(1, 1)
        for (let bead = 0; bead < count; bead += 1) {
          pickUp(writer, 2 * bead, UP)
          pickUpAlso(writer, 2 * bead + 1, DOWN)
          pass(writer, bead, DOWN, STITCH)
        }
        const events = toEvents(finishEvents(writer))
        expect(events).toHaveLength(2 * count)
        expect(events.at(-2)).toEqual({
          kind: 'pick-up',
          beads: [2 * count - 2, 2 * count - 1],
          directions: ['up', 'down'],
        })
        expect(events.at(-1)).toEqual({
          kind: 'pass',
          bead: count - 1,
          direction: 'down',
          purpose: 'stitch',
        })
      }),
    )
  })

  it('has no event outside itself', () => {
    expect(() => eventAt(finishEvents(createEventWriter(1, 1)), 0)).toThrow()
  })
})

describe('measured thread', () => {
  it('is two lengths, one diameter and the bend round the bridge for a bead of brick', () => {
    const { geometry } = lay(drawChart('brick', ['.A-A-A-', 'A-A-A-A-']))
    const writer = createEventWriter(8, 8)
    // From the top of bead 0: bead 1 strung down, under bridge 4-5, up through bead 1 again.
    pickUp(writer, 0, UP)
    const before = measureThread(finishEvents(writer), geometry)
    pickUp(writer, 1, DOWN)
    hook(writer, 4, 5, UP)
    pass(writer, 1, UP, STITCH)
    const after = measureThread(finishEvents(writer), geometry)
    expect(after.throughMm - before.throughMm).toBeCloseTo(2 * 1.3, 4)
    // One diameter along the top; down into the gap of 0.65 thread and back up.
    expect(after.runMm).toBeCloseTo(1.6 + 2 * 0.65 * 0.17, 4)
    expect(after.bendMm).toBeCloseTo(Math.PI * 0.17, 6)
  })

  it('adds up event by event to the whole', () => {
    const { draft, geometry, threadMm } = lay(drawChart('brick', ['..A-A-', '.A-A-A-', 'A-A-A-A-']))
    const upToMm = new Float64Array(draft.events.count)
    measureThread(draft.events, geometry, upToMm)
    expect(upToMm.at(-1)).toBeCloseTo(threadMm, 6)
    upToMm.forEach((mm, at) => {
      expect(mm).toBeGreaterThanOrEqual(upToMm[at - 1] ?? 0)
    })
  })

  it('hugs the walls where the stitch draws it tight, never more than there is play', () => {
    expect(takenPlayMm('ladder', 0.8, 0.17)).toBeCloseTo(0.63, 6)
    expect(takenPlayMm('peyote', 0.8, 0.17)).toBeCloseTo(0.315, 6)
    expect(takenPlayMm('brick', 0.8, 0.17)).toBe(0)
    expect(takenPlayMm('ladder', 0.1, 0.17)).toBe(0)
  })

  it('has one slack a stitch and thread type, with the range of hands', () => {
    expect(threadSlack('brick', 'braided')).toEqual(threadSlack('brick', 'bonded'))
    expect(threadSlack('brick', 'twisted').value).toBeLessThan(
      threadSlack('brick', 'braided').value,
    )
    expect(threadSlack('strand', 'braided').value).toBe(1.04)
  })
})

describe('the cheapest way through a bead graph', () => {
  // Beads in a line, bead n leading to n + 1 at the cost listed; and a shortcut from 0 to 3.
  const hops: Hops = (bead, edge, visit) => {
    if (bead < 4) visit(bead + 1, edge, 1)
    if (bead === 0) visit(3, edge, 2.5)
  }

  it('is the one with the least cost, told as the passes to make', () => {
    const way = findWeave(createWeaver(5), { bead: 0, edge: UP }, hops, (bead) => bead === 4)
    expect(way).toEqual([
      { bead: 3, edge: UP },
      { bead: 4, edge: UP },
    ])
  })

  it('is empty where the thread is already, and undefined where it cannot get', () => {
    const weaver = createWeaver(5)
    expect(findWeave(weaver, { bead: 2, edge: UP }, hops, (bead) => bead === 2)).toEqual([])
    expect(findWeave(weaver, { bead: 2, edge: UP }, hops, (bead) => bead === 0)).toBeUndefined()
  })

  it('goes round full holes where there is another way, and through them where there is none', () => {
    const full = new Set([3])
    const weaver = createWeaver(5, { isFull: (bead) => full.has(bead) })
    const to = (target: number) =>
      findWeave(weaver, { bead: 0, edge: UP }, hops, (bead) => bead === target)?.map(
        ({ bead }) => bead,
      )
    // Bead 4 is reached through 3 alone, full or not; bead 2 never needs it.
    expect(to(2)).toEqual([1, 2])
    expect(to(4)).toEqual([3, 4])
    full.delete(3)
    full.add(1)
    expect(to(4)).toEqual([3, 4])
    expect(to(2)).toEqual([1, 2])
  })

  it('never takes a full hole while a free way is known, on any small graph', () => {
    const edges = fc.array(fc.tuple(fc.nat(7), fc.nat(7)), { minLength: 4, maxLength: 24 })
    fc.assert(
      fc.property(edges, fc.uniqueArray(fc.integer({ min: 1, max: 6 })), (pairs, full) => {
        const among = (free: boolean): Hops => {
          return (bead, edge, visit) => {
            for (const [from, to] of pairs) {
              if (from === bead && !(free && full.includes(to))) visit(to, edge, 1)
            }
          }
        }
        const start = { bead: 0, edge: UP }
        const isThere = (bead: number) => bead === 7
        const careful = createWeaver(8, { isFull: (bead) => full.includes(bead) })
        const way = findWeave(careful, start, among(false), isThere)
        const free = findWeave(createWeaver(8), start, among(true), isThere)
        expect(way === undefined).toBe(
          findWeave(createWeaver(8), start, among(false), isThere) === undefined,
        )
        if (free !== undefined) expect(way?.length).toBe(free.length)
        if (free !== undefined) expect(way?.some(({ bead }) => full.includes(bead))).toBe(false)
      }),
    )
  })

  it('finds every bead it should, whatever its number', () => {
    // A search that took a bead's number for the start's own would miss bead 40 from bead 80.
    const back: Hops = (bead, edge, visit) => {
      if (bead >= 10) visit(bead - 10, edge, 1)
    }
    const weaver = createWeaver(100)
    for (let bead = 0; bead <= 70; bead += 10) {
      const way = findWeave(weaver, { bead: 80, edge: UP }, back, (at) => at === bead)
      expect(way?.at(-1)?.bead).toBe(bead)
    }
  })
})

describe('changes of thread', () => {
  it('fall where a bead or a row begins, and leave no length too long', () => {
    const rows = Array.from({ length: 30 }, (_, row) => ({
      start: row % 2,
      cells: new Uint16Array(20).fill(1),
    }))
    const { draft, geometry } = lay({ stitch: 'brick', rows })
    const upToMm = new Float64Array(draft.events.count)
    measureThread(draft.events, geometry, upToMm)
    fc.assert(
      fc.property(fc.integer({ min: 400, max: 3000 }), (longest) => {
        const tails = tailPlan({ workingLengthMm: longest })
        const changes = planChanges(draft.events, upToMm, tails, 0)
        const ends = [...changes, draft.events.count]
        let from = 0
        ends.forEach((end, at) => {
          const laidMm = (upToMm[end - 1] ?? 0) - (upToMm[from - 1] ?? 0)
          const head = at === 0 ? tails.startMm : tails.jointMm
          const tail = at === ends.length - 1 ? tails.endMm : tails.jointMm
          expect(head + laidMm + tail).toBeLessThanOrEqual(longest + 1e-6)
          from = end
        })
        for (const change of changes) {
          expect([PICK_UP, ROW]).toContain(draft.events.kind[change])
        }
      }),
      { numRuns: 60 },
    )
  })

  it('are none when one length is enough', () => {
    const { draft, geometry } = lay(drawChart('brick', ['.A-A-', 'A-A-A-']))
    const upToMm = new Float64Array(draft.events.count)
    measureThread(draft.events, geometry, upToMm)
    expect(planChanges(draft.events, upToMm, tailPlan({}), 0)).toEqual([])
  })
})
