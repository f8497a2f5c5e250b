import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import type { Chart, StitchKind } from '../../../shared-core/chart/chart.ts'
import { countBeads } from '../../../shared-core/chart/count-slots.ts'
import { readDesign } from '../../../shared-core/design/read-design.ts'
import { findSticks } from '../../../shared-core/route/read-fill.ts'
import { drawChart } from '../stitches/draw-chart.ts'
import { lay } from '../stitches/lay.ts'
import { randomCharts } from '../stitches/random-charts.ts'
import { replayRoute } from '../stitches/replay-route.ts'
import { routeText } from '../stitches/route-text.ts'
import { designOf, panelOf, read, strandOf } from './a-design.ts'

const STITCHES: readonly StitchKind[] = [
  'brick',
  'peyote',
  'square',
  'herringbone',
  'right-angle-weave',
]

/** Far above what a reading takes on an idle machine, far below for ever. */
const BOUND_MS = 60_000

const diamond = drawChart('brick', ['..A-A-', '.A-B-A-', 'A-B-B-A-', '.A-B-A-', '..A-A-'])

function block(stitch: StitchKind, rows: number, columns: number): Chart {
  const offset = (row: number) => (stitch === 'brick' ? row % 2 : 0)
  return {
    stitch,
    rows: Array.from({ length: rows }, (_, row) => ({
      start: offset(row),
      cells: new Uint16Array(columns).fill(1),
    })),
  }
}

describe('a reading', () => {
  it('counts every cell and every copy, by slot', () => {
    const reading = read(designOf([panelOf(diamond, { copies: 2 })]))
    expect(reading.beads).toBe(28)
    expect(reading.counts.map(({ label, count }) => `${count}${label}`)).toEqual(['20A', '8B'])
    // 20 beads of 200 a gram weigh 100 mg.
    expect(reading.counts[0]?.massMg.value).toBe(100)
  })

  it('has the size of its beads: four across, five rows with a thread between', () => {
    const { widthMm, heightMm } = read(designOf([panelOf(diamond)]))
    expect(widthMm.value).toBeCloseTo(4 * 1.6, 3)
    expect(heightMm.value).toBeCloseTo(5 * 1.3 + 4 * 0.65 * 0.17, 3)
    expect(widthMm.low).toBeLessThan(widthMm.value)
  })

  it('begins with a length of thread and ends with both ends woven in and cut', () => {
    const [part] = read(designOf([panelOf(diamond)])).parts
    const kinds = part?.events.map(({ kind }) => kind) ?? []
    expect(kinds[0]).toBe('add-thread')
    expect(kinds.filter((kind) => kind === 'cut')).toHaveLength(2)
    expect(kinds.at(-1)).toBe('cut')
    expect(kinds.filter((kind) => kind === 'knot')).toHaveLength(4)
  })

  it('says the same of passes as its events do', () => {
    const [part] = read(designOf([panelOf(diamond)])).parts
    const counted = new Array<number>(14).fill(0)
    for (const event of part?.events ?? []) {
      const beads =
        event.kind === 'pick-up' ? event.beads : event.kind === 'pass' ? [event.bead] : []
      for (const bead of beads) counted[bead] = (counted[bead] ?? 0) + 1
    }
    expect(Array.from(part?.passes ?? [])).toEqual(counted)
  })

  it.each(STITCHES)('is one continuous thread with its ends woven in, in %s', (stitch) => {
    fc.assert(
      fc.property(randomCharts(stitch), fc.integer({ min: 300, max: 900 }), (chart, longest) => {
        const body = designOf([panelOf(chart, { route: { workingLengthMm: longest } })])
        const [part] = read(body).parts
        const { faults, passes } = replayRoute(part?.events ?? [], lay(chart).ground)
        expect(faults).toEqual([])
        expect(passes).toEqual(Array.from(part?.passes ?? []))
      }),
      { numRuns: 120 },
    )
  })

  it('reads the reference check: about 5 mm of thread a bead in brick of cylinder 11/0', () => {
    const chart = block('brick', 40, 40)
    const [part] = read(designOf([panelOf(chart)])).parts
    const perBead = (part?.thread.inPieceMm.value ?? 0) / countBeads(chart)
    expect(perBead).toBeGreaterThan(4.7)
    expect(perBead).toBeLessThan(5.3)
  })
})

describe('thread to cut', () => {
  it('is one length with both tails for a small piece', () => {
    const [part] = read(
      designOf([panelOf(diamond, { route: { startTailMm: 200, endTailMm: 300 } })]),
    ).parts
    const woven = lay(diamond).threadMm * 1.03
    expect(part?.thread.cutMm).toEqual([Math.ceil((woven + 500) / 10) * 10])
  })

  it('is as few lengths as the working length allows, none much longer, and adds up', () => {
    for (const workingLengthMm of [800, 1200, 1600, 2400]) {
      const chart = block('brick', 30, 30)
      const [part] = read(designOf([panelOf(chart, { route: { workingLengthMm } })])).parts
      const cut = part?.thread.cutMm ?? []
      expect(Math.max(...cut)).toBeLessThanOrEqual(workingLengthMm + 10)
      const woven = lay(chart).threadMm * 1.03
      const least = Math.ceil((woven - 2 * (workingLengthMm - 270)) / (workingLengthMm - 240)) + 2
      expect(cut.length).toBeGreaterThanOrEqual(least)
      expect(cut.length).toBeLessThanOrEqual(Math.ceil(1.25 * least))
      const added = part?.events.flatMap((event) =>
        event.kind === 'add-thread' ? [event.lengthMm] : [],
      )
      expect(added).toEqual(cut)
      expect(part?.thread.spoolMm.value).toBe(cut.reduce((sum, mm) => sum + mm, 0))
    }
  })

  it('weighs what stays in the piece against what is cut off: together they are the lengths', () => {
    const [part] = read(designOf([panelOf(block('brick', 20, 20))])).parts
    const cutOff = (part?.events ?? []).reduce(
      (sum, event) => sum + (event.kind === 'cut' ? event.tailMm : 0),
      0,
    )
    const { inPieceMm, cutMm, spoolMm } = part?.thread ?? read(designOf([])).thread
    const heads = (cutMm.length - 1) * 120
    const left = spoolMm.value - inPieceMm.value - cutOff
    // What remains is the head of each joined length beyond what is woven in, and rounding up.
    expect(left).toBeGreaterThanOrEqual(-1)
    expect(left).toBeLessThanOrEqual(heads + 10 * cutMm.length)
  })

  it('hangs warps on a loom: columns and one more, each longer than the work by 300 mm', () => {
    const chart = block('loom', 10, 6)
    const [part] = read(designOf([panelOf(chart)])).parts
    const warps = part?.events.filter(({ kind }) => kind === 'warp') ?? []
    expect(warps).toHaveLength(7)
    // 16 mm of work, and six beads of 1.3 and 1.6 mm at either end.
    expect(warps[0]).toEqual({ kind: 'warp', lengthMm: 316, inPieceMm: 51 })
    expect(part?.thread.cutMm.filter((mm) => mm === 316)).toHaveLength(7)
  })
})

describe('strands', () => {
  const anchor = { panelId: 'panel', row: 4, bead: 0 }

  it('go down a fringe, round its turn bead and back up into the panel', () => {
    const fringe = strandOf('3A 1B', { anchor })
    const reading = read(designOf([panelOf(diamond), fringe]))
    const events = routeText(reading.parts[1]?.events ?? [])
    const from = events.findIndex((event) => event.startsWith('+'))
    expect(events.slice(from, from + 6)).toEqual([
      '+0↓1↓2↓3↓',
      'turn bead 3',
      // The turn bead lies across below the others and is passed once.
      '2↑',
      '1↑',
      '0↑',
      'join panel 12↑',
    ])
    // The last row ended at bead 12 with the thread below it: it is there already.
    expect(from).toBe(0)
    expect(Array.from(reading.parts[1]?.passes ?? [])).toEqual([2, 2, 2, 1])
  })

  it('carry a finding at the middle of a loop and go round as often as asked', () => {
    const loop = strandOf('4A', { shape: 'loop', findingId: 'wire', anchor: { ...anchor, row: 0 } })
    const panel = panelOf(diamond, { route: { loopPasses: 2 } })
    const reading = read(designOf([panel, loop]))
    const events = routeText(reading.parts[1]?.events ?? [])
    const from = events.findIndex((event) => event.startsWith('+'))
    // The work ended below: the thread weaves up through the panel to the bead the loop hangs from.
    expect(events[from - 1]).toBe('join panel 0↑ weave')
    expect(events.slice(from, from + 11)).toEqual([
      '+0↓1↓',
      'finding wire',
      '+2↑3↑',
      // Back into the panel through the bead beside the one it left.
      'join panel 1↓',
      // Round once more: up the first bead again, through the loop, and in.
      'join panel 0↑ reinforce',
      '0↓ reinforce',
      '1↓ reinforce',
      'finding wire',
      '2↑ reinforce',
      '3↑ reinforce',
      'join panel 1↓',
    ])
    expect(Array.from(reading.parts[1]?.passes ?? [])).toEqual([2, 2, 2, 2])
  })

  it('add their passes to the panel they hang from', () => {
    const without = read(designOf([panelOf(diamond)])).parts[0]?.passes ?? []
    const hung =
      read(designOf([panelOf(diamond), strandOf('5A', { anchor })])).parts[0]?.passes ?? []
    expect(hung[12] ?? 0).toBeGreaterThanOrEqual((without[12] ?? 0) + 1)
  })

  it('share the panel’s thread: no tails of their own', () => {
    const fringe = strandOf('5A', { anchor })
    const alone = read(designOf([panelOf(diamond)])).thread.cutMm
    const hung = read(designOf([panelOf(diamond), fringe])).thread.cutMm
    expect(hung).toHaveLength(1)
    expect((hung[0] ?? 0) - (alone[0] ?? 0)).toBeLessThan(60)
  })

  it('take new lengths when the thread does not reach, each within the working length', () => {
    const panel = panelOf(block('brick', 12, 30), { route: { workingLengthMm: 900 } })
    const hung = { panelId: 'panel', row: 11, bead: 0 }
    const fringe = strandOf('40A 1B', { anchor: hung, copies: 30 })
    const { thread, parts } = read(designOf([panel, fringe]))
    const bare = read(designOf([panel])).thread.cutMm
    expect(thread.cutMm.length).toBeGreaterThan(bare.length)
    expect(Math.max(...thread.cutMm)).toBeLessThanOrEqual(910)
    expect(parts[1]?.thread.cutMm.length).toBeGreaterThan(0)
    // All that stays in the piece comes off the spool, and no more than a quarter goes to ends.
    expect(thread.spoolMm.value).toBeGreaterThan(thread.inPieceMm.value)
    expect(thread.inPieceMm.value / thread.spoolMm.value).toBeGreaterThan(0.6)
  })

  it('are counted once for every copy of the panel', () => {
    const parts = [panelOf(diamond, { copies: 2 }), strandOf('5A', { anchor, copies: 2 })]
    expect(read(designOf(parts)).beads).toBe(2 * 14 + 2 * 2 * 5)
  })

  it('hang on their own thread where their anchor is not there, and say so', () => {
    const lost = strandOf('5A', { anchor: { panelId: 'panel', row: 40, bead: 0 } })
    const reading = read(designOf([panelOf(diamond), lost]))
    expect(reading.warnings.map(({ code }) => code)).toContain('anchor-missing')
    expect(reading.parts[1]?.thread.cutMm).toHaveLength(1)
  })

  it('lengthen the piece as it hangs', () => {
    const bare = read(designOf([panelOf(diamond)])).heightMm.value
    const hung = read(designOf([panelOf(diamond), strandOf('10A', { anchor })])).heightMm.value
    expect(hung).toBeGreaterThan(bare + 10)
  })
})

describe('bench steps', () => {
  it('say in plain words what to pick up, which bridge, and whether to lock', () => {
    const chart = drawChart('brick', ['..A-B-', '.A-B-A-', 'A-B-B-A-'])
    const [part] = read(designOf([panelOf(chart, { route: { startRow: 2 } })])).parts
    const steps = part?.steps.map(({ text }) => text) ?? []
    expect(steps).toContain(
      'Row 2 from the right; pick up A, B; under bridge 2 from the edge; up through B; lock',
    )
    expect(steps).toContain('Pick up A; under bridge 3 from the edge; up through A')
  })

  it('cover every event once, in order', () => {
    fc.assert(
      fc.property(randomCharts('brick'), (chart) => {
        const [part] = read(designOf([panelOf(chart)])).parts
        let next = 0
        for (const { fromEvent, toEvent } of part?.steps ?? []) {
          expect(fromEvent).toBe(next)
          expect(toEvent).toBeGreaterThanOrEqual(fromEvent)
          next = toEvent + 1
        }
        expect(next).toBe(part?.events.length)
      }),
      { numRuns: 100 },
    )
  })

  it('name peyote rows as its word chart does', () => {
    const [part] = read(designOf([panelOf(block('peyote', 3, 4))])).parts
    const rows = part?.steps.map(({ text }) => /^Rows? [^;]* from/.exec(text)?.[0]).filter(Boolean)
    expect(rows).toEqual([
      'Rows 1 and 2 from',
      'Row 3 from',
      'Row 4 from',
      'Row 5 from',
      'Row 6 from',
    ])
    expect(part?.words[0]).toMatch(/^Rows 1 and 2, strung together/)
  })
})

describe('hole fill', () => {
  it('finds the beads that take more passes than their holes hold and says what helps', () => {
    const body = designOf([panelOf(block('square', 6, 6), { route: { reinforce: true } })], {
      threadId: 'cord-tex-135',
      needleSize: '11',
    })
    const reading = read(body)
    const full = reading.warnings.find(({ code }) => code === 'hole-full')
    expect(full?.next).toMatch(/[Tt]ake /)
    const [part] = reading.parts
    expect(Array.from(part?.fill ?? []).filter((fill) => fill === 2).length).toBeGreaterThan(0)
    part?.passes.forEach((passes, bead) => {
      expect(part.fill[bead] === 2).toBe(passes > (part.holds[bead] ?? 0))
    })
  })

  it('says at which event each bead takes a pass too many', () => {
    const body = designOf([panelOf(block('square', 3, 3), { route: { reinforce: true } })], {
      threadId: 'cord-tex-135',
    })
    const [part] = read(body).parts
    const holds = part?.holds ?? new Uint16Array(0)
    const sticks = part === undefined ? [] : findSticks(part.route, holds)
    const passes = new Array<number>(9).fill(0)
    const expected: { event: number; bead: number }[] = []
    part?.events.forEach((event, at) => {
      const beads =
        event.kind === 'pick-up' ? event.beads : event.kind === 'pass' ? [event.bead] : []
      for (const bead of beads) {
        passes[bead] = (passes[bead] ?? 0) + 1
        if (passes[bead] === (holds[bead] ?? 0) + 1) expected.push({ event: at, bead })
      }
    })
    expect(expected.length).toBeGreaterThan(0)
    expect(sticks).toEqual(expected)
  })

  it('offers to leave out reinforcing passes where that alone makes room', () => {
    const body = designOf([panelOf(block('square', 6, 6), { route: { reinforce: true } })], {
      threadId: 'nylon-d',
    })
    const [warning] = read(body).warnings
    expect(warning?.code).toBe('hole-full')
    expect(warning?.next).toMatch(/^Leave out the reinforcing passes there/)
    const plain = { ...body, parts: [panelOf(block('square', 6, 6))] }
    const worst = Math.max(...(read(plain).parts[0]?.passes ?? []))
    expect(worst).toBeLessThan(Math.max(...(read(body).parts[0]?.passes ?? [])))
  })

  it('advises a thread and needle with which the passes do fit', () => {
    const body = designOf([panelOf(block('square', 6, 6), { route: { reinforce: true } })], {
      threadId: 'cord-tex-135',
      needleSize: '11',
    })
    const advice = read(body).warnings.find(({ code }) => code === 'hole-full')?.next ?? ''
    const thread = referenceTables.threads.find(
      ({ name }) => advice.includes(`${name}:`) || advice.includes(`${name} and`),
    )
    const size = /size (\d+)/.exec(advice)?.[1] ?? '11'
    const cured = read({ ...body, threadId: thread?.id ?? body.threadId, needleSize: size })
    expect(cured.warnings.map(({ code }) => code)).not.toContain('hole-full')
  })
})

describe('labour', () => {
  it('is set-up, a time a bead by stitch, a time a row, and finishing', () => {
    const { labour, parts } = read(designOf([panelOf(diamond, { copies: 2 })]))
    // 14 beads of 7.5 s and 5 rows of 8 s.
    expect(parts[0]?.labourS.value).toBe(145)
    expect(labour.stitchingS.value).toBe(290)
    expect(labour.totalS.value).toBe(420 + 290 + 1200)
    expect(labour.totalS.low).toBeLessThan(labour.totalS.value)
  })

  it('takes the maker’s own figures for set-up and finishing as they are', () => {
    const { labour } = read(designOf([panelOf(diamond)], { setUpS: 60, finishingS: 90 }))
    expect(labour.setUpS).toEqual({ value: 60, low: 60, high: 60, basis: 'exact' })
    expect(labour.finishingS.value).toBe(90)
  })
})

describe('a design that cannot be read', () => {
  const refusal = (body: Parameters<typeof readDesign>[0]) => {
    const result = readDesign(body, referenceTables)
    return result.ok ? undefined : `${result.error.code} ${result.error.field}`
  }

  it('is refused by the field that names something unknown', () => {
    const panel = panelOf(diamond)
    expect(refusal(designOf([panel], { threadId: 'gold' }))).toBe('unknown-thread threadId')
    expect(refusal(designOf([panel], { needleSize: '99' }))).toBe('unknown-needle needleSize')
    expect(refusal(designOf([{ ...panel, formId: 'x' }]))).toBe('unknown-form parts.0.formId')
    expect(refusal(designOf([strandOf('3A banana')]))).toBe('strand-unreadable parts.0.beads')
    const chart = { stitch: 'brick', rows: [{ start: 0, cells: '3A x' }] } as const
    expect(refusal(designOf([{ ...panel, chart }]))).toBe('chart-unreadable parts.0.chart')
    expect(refusal(designOf([panel, panel]))).toBe('duplicate-part parts.1.id')
    expect(refusal(designOf([strandOf('90000A', { copies: 100 })]))).toBe(
      'too-many-strand-beads parts',
    )
    const wide = { stitch: 'brick', rows: [{ start: 0, cells: '9999999A' }] } as const
    expect(refusal(designOf([{ ...panel, chart: wide }]))).toBe('chart-too-large parts.0.chart')
  })
})

describe('a reading that is no longer wanted', () => {
  it('stops between parts and refuses', () => {
    const body = designOf([panelOf(diamond), strandOf('3A')])
    let asked = 0
    const isCancelled = () => {
      asked += 1
      return asked > 1
    }
    const result = readDesign(body, { ...referenceTables, isCancelled })
    expect(result.ok ? 'read' : result.error.code).toBe('cancelled')
  })
})

describe('an impossible chart', () => {
  const warningsOf = (chart: Chart) => {
    const reading = read(designOf([panelOf(chart)]))
    void reading.parts[0]?.steps
    void reading.parts[0]?.words
    return reading.warnings.map(({ code }) => code)
  }

  it('without rows, or with rows without beads, reads as nothing and says so', () => {
    for (const stitch of STITCHES) {
      expect(warningsOf({ stitch, rows: [] })).toEqual(['no-beads'])
      expect(warningsOf(drawChart(stitch, ['....', '....']))).toEqual(['no-beads'])
    }
    const bare = read(designOf([strandOf('', { name: 'Fringe' })]))
    expect(bare.warnings[0]?.message).toBe('Fringe has no beads.')
    expect(bare.thread.inPieceMm.value).toBe(0)
    expect(read(designOf([])).beads).toBe(0)
  })

  it('names beads that float, at any distance', () => {
    expect(warningsOf(drawChart('brick', ['A-A-A-', '', 'A-A-A-A-']))).toEqual(['floating-beads'])
    const apart = drawChart('brick', ['A-A-A-', `${'.'.repeat(2001)}A-A-A-`])
    expect(warningsOf(apart)).toEqual(['floating-beads'])
  })

  it('with slots the palette does not have is read, and says so', () => {
    expect(warningsOf(drawChart('brick', ['..Z-A-', '.A-A-A-']))).toEqual(['slot-without-bead'])
  })

  it('with rows that lie on the wrong half bead is named, not stitched', () => {
    const chart: Chart = {
      stitch: 'brick',
      rows: [
        { start: 0, cells: new Uint16Array(3).fill(1) },
        { start: 0, cells: new Uint16Array(4).fill(1) },
      ],
    }
    expect(warningsOf(chart)).toEqual(['floating-beads'])
  })

  it('of one column is read without end or exception in every stitch', () => {
    for (const stitch of STITCHES) {
      const column = { stitch, rows: block(stitch, 300, 1).rows }
      expect(countBeads(column)).toBe(300)
      expect(() => warningsOf(column)).not.toThrow()
    }
  })

  it(
    'of 100,000 columns, or 100,000 rows, or a comb of 2,000 teeth is read in bounded time',
    () => {
      const comb = drawChart('brick', [`.${'A-A-..'.repeat(2000)}`, `${'A-A-A-'.repeat(2000)}`])
      for (const chart of [block('brick', 2, 100_000), block('brick', 100_000, 2), comb]) {
        const began = performance.now()
        const reading = read(designOf([panelOf(chart)]))
        expect(reading.beads).toBe(countBeads(chart))
        expect(performance.now() - began).toBeLessThan(BOUND_MS)
      }
    },
    3 * BOUND_MS,
  )

  it('of loose beads on a checkerboard is read in bounded time', () => {
    const rows = Array.from({ length: 300 }, (_, row) => ({
      start: row % 2,
      cells: Uint16Array.from({ length: 300 }, (_, at) => (at + row) % 2),
    }))
    const began = performance.now()
    expect(warningsOf({ stitch: 'brick', rows })).toContain('floating-beads')
    expect(performance.now() - began).toBeLessThan(BOUND_MS)
  })

  it('asks for a start row it cannot have, and says which is used', () => {
    const reading = read(designOf([panelOf(diamond, { route: { startRow: 77 } })]))
    expect(reading.warnings.map(({ code }) => code)).toEqual(['start-row-unusable'])
  })
})
