import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { findForm, findThread, referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import { indexBeads } from '../../../shared-core/chart/bead-index.ts'
import type { Chart, StitchKind } from '../../../shared-core/chart/chart.ts'
import { fromChartJson, toChartJson } from '../../../shared-core/chart/chart-json.ts'
import {
  chartFromOutline,
  OUTLINE_KINDS,
} from '../../../shared-core/chart/outlines/chart-from-outline.ts'
import type { DesignBody, Part } from '../../../shared-core/design/design.ts'
import { readDesign } from '../../../shared-core/design/read-design.ts'
import type { PartReading } from '../../../shared-core/design/reading.ts'
import { countPasses } from '../../../shared-core/route/count-passes.ts'
import { ADD_THREAD, PASS, PICK_UP, TAIL } from '../../../shared-core/route/event-codes.ts'
import { measureThread } from '../../../shared-core/route/measure-thread.ts'
import { type PartGeometry, panelGeometry } from '../../../shared-core/route/part-geometry.ts'
import {
  BEGINS,
  BENDS,
  endsOf,
  lineLength,
  type RouteLine,
  RUNS,
  routeLine,
  stretchMm,
  THROUGH,
} from '../../../shared-core/route/route-line.ts'
import { strandGeometry } from '../../../shared-core/stitches/strand/strand-geometry.ts'
import { drawChart } from '../stitches/draw-chart.ts'

const FORM_ID = 'cylinder-11/0'

function formOf() {
  const form = findForm(referenceTables, FORM_ID)
  if (form === undefined) throw new Error(`expected the form ${FORM_ID}`)
  return form
}

function threadMm(): number {
  return findThread(referenceTables, 'braided-6lb')?.diameterMm.value ?? Number.NaN
}

function read(chart: Chart, more: readonly Part[] = []): readonly PartReading[] {
  const body: DesignBody = {
    unitName: 'piece',
    palette: ['A', 'B'].map((label) => ({
      label,
      name: label,
      formId: FORM_ID,
      colourHex: '#4b5a63',
      finish: 'matte',
    })),
    parts: [
      {
        kind: 'panel',
        id: 'panel',
        name: 'Panel',
        chart: toChartJson(chart),
        formId: FORM_ID,
        copies: 1,
        mirrored: false,
        route: {},
      },
      ...more,
    ],
    extras: [],
    threadId: 'braided-6lb',
    needleSize: '12',
  }
  const reading = readDesign(body, referenceTables)
  if (!reading.ok) throw new Error(reading.error.message)
  return reading.value.parts
}

function panelOf(chart: Chart): Readonly<{ part: PartReading; geometry: PartGeometry }> {
  const [part] = read(chart)
  if (part === undefined) throw new Error('expected a panel')
  const stored = fromChartJson(toChartJson(chart))
  return { part, geometry: panelGeometry(stored, indexBeads(stored), formOf(), threadMm()) }
}

/** Sum of the straight runs, each shortened as the thread is drawn against the walls of its holes. */
function drawnRuns(
  line: RouteLine,
  { playMm, threadMm: thread }: PartGeometry,
  hooks: Set<number>,
) {
  let mm = 0
  for (let at = 1; at < line.count; at += 1) {
    if (line.comesBy[at] !== RUNS) continue
    const run = stretchMm(line, at)
    // The run to a bridge's middle is measured whole.
    mm += hooks.has(at) ? run : Math.max(Math.min(run, thread), run - playMm)
  }
  return mm
}

const stitches: readonly StitchKind[] = ['brick', 'peyote', 'square', 'loom']
const anyOutline = fc.record({
  kind: fc.constantFrom(...OUTLINE_KINDS),
  stitch: fc.constantFrom(...stitches),
  columns: fc.integer({ min: 2, max: 12 }),
  rows: fc.integer({ min: 2, max: 16 }),
})

function outlined(order: Parameters<typeof chartFromOutline>[0]): Chart {
  const drawn = chartFromOutline(order)
  if (!drawn.ok) throw new Error(drawn.error.message)
  return drawn.value.chart
}

describe('routeLine', () => {
  it('draws a two-bead brick start point by point', () => {
    const { part, geometry } = panelOf(drawChart('brick', ['A.A.']))
    const line = routeLine(part.route, geometry)
    const { diameterMm: d, lengthMm: l } = formOf()
    const first = part.route.kind.indexOf(PICK_UP)
    const from = line.eventOf.indexOf(first)
    expect(line.comesBy[from]).toBe(BEGINS)
    expect(line.comesBy[from + 1]).toBe(THROUGH)
    expect(line.comesBy[from + 2]).toBe(RUNS)
    expect(stretchMm(line, from + 1)).toBeCloseTo(l.value, 4)
    expect(stretchMm(line, from + 2)).toBeCloseTo(d.value, 4)
    expect([...line.passOf.subarray(from, from + 4)]).toEqual([0, 0, 0, 0])
  })

  it('counts the passes of a bead at both ends of its hole', () => {
    const { part, geometry } = panelOf(drawChart('brick', ['A.A.A', '.A.A.']))
    const line = routeLine(part.route, geometry)
    for (let at = 1; at < line.count; at += 1) {
      if (line.comesBy[at] === THROUGH) expect(line.passOf[at]).toBe(line.passOf[at - 1])
    }
    const most = Math.max(...line.passOf)
    expect(most + 1).toBe(Math.max(...part.passes))
  })

  // The ends of a loom's warps are woven in after the last step and are no part of the route.
  it('has as many points through holes as the route has passes', () => {
    fc.assert(
      fc.property(anyOutline, (order) => {
        const { part, geometry } = panelOf(outlined(order))
        const line = routeLine(part.route, geometry)
        const passes = countPasses(part.route, part.beads).reduce((sum, one) => sum + one, 0)
        expect(line.comesBy.filter((by) => by === THROUGH).length).toBe(passes)
      }),
      { numRuns: 60 },
    )
  })

  it('is as long in holes and on runs as the thread is measured', () => {
    fc.assert(
      fc.property(anyOutline, (order) => {
        const { part, geometry } = panelOf(outlined(order))
        const line = routeLine(part.route, geometry)
        const measured = measureThread(part.route, geometry)
        const tolerance = 1e-4 * line.count
        expect(Math.abs(lineLength(line, THROUGH) - measured.throughMm)).toBeLessThan(tolerance)
        const hooks = new Set<number>()
        line.comesBy.forEach((by, at) => {
          if (by === RUNS && line.comesBy[at + 1] === RUNS) hooks.add(at)
        })
        const runs = drawnRuns(line, geometry, hooks)
        expect(Math.abs(runs - measured.runMm)).toBeLessThan(tolerance)
      }),
      { numRuns: 60 },
    )
  })

  it('breaks only where a length of thread begins or the start tail is taken up', () => {
    fc.assert(
      fc.property(anyOutline, (order) => {
        const { part, geometry } = panelOf(outlined(order))
        const { kind, count } = part.route
        const line = routeLine(part.route, geometry)
        const begins = line.comesBy.filter((by) => by === BEGINS).length
        let ends = 0
        for (let event = 0; event < count; event += 1) {
          if (kind[event] === ADD_THREAD || kind[event] === TAIL) ends += 1
        }
        expect(begins).toBe(ends)
        expect(line.comesBy.includes(BENDS)).toBe(false)
      }),
      { numRuns: 60 },
    )
  })

  it('ends where the events end, and its events never step back', () => {
    fc.assert(
      fc.property(anyOutline, (order) => {
        const { part, geometry } = panelOf(outlined(order))
        const { route } = part
        const line = routeLine(route, geometry)
        expect(line.upTo.at(-1)).toBe(line.count)
        expect(line.xMm.length).toBe(line.count)
        for (let at = 1; at < line.count; at += 1) {
          expect(line.eventOf[at] ?? 0).toBeGreaterThanOrEqual(line.eventOf[at - 1] ?? 0)
        }
        const last = lastPass(part)
        const ends = endsOf(geometry)
        expect(line.xMm[line.count - 1]).toBeCloseTo(ends.xMm(last.bead, last.edge), 3)
        expect(line.yMm[line.count - 1]).toBeCloseTo(ends.yMm(last.bead, last.edge), 3)
      }),
      { numRuns: 60 },
    )
  })

  it('bends round the turn bead of a fringe and breaks at the panel it knows nothing of', () => {
    const { line } = fringe()
    expect(line.comesBy[0]).toBe(BEGINS)
    expect(line.comesBy.includes(BENDS)).toBe(true)
    expect(line.comesBy.includes(RUNS)).toBe(false)
  })

  it('goes through the panel where it is told where that lies', () => {
    const { part, geometry, panel } = fringe()
    const joined = routeLine(part.route, geometry, { joined: endsOf(panel) })
    const alone = routeLine(part.route, geometry)
    const joins = part.events.filter(({ kind }) => kind === 'join').length
    expect(joins).toBeGreaterThan(0)
    expect(joined.count).toBe(alone.count + 2 * joins)
    expect(joined.comesBy.filter((by) => by === BEGINS).length).toBe(
      1 + part.events.filter(({ kind }) => kind === 'add-thread').length,
    )
  })
})

function lastPass({ route }: PartReading): Readonly<{ bead: number; edge: number }> {
  for (let event = route.count - 1; event >= 0; event -= 1) {
    const code = route.code[event] ?? 0
    if (route.kind[event] === PASS) return { bead: route.a[event] ?? 0, edge: code & 3 }
    if (route.kind[event] === TAIL) return { bead: route.a[event] ?? 0, edge: code }
  }
  throw new Error('expected a pass')
}

function fringe() {
  const chart = drawChart('brick', ['A.A.A'])
  const form = formOf()
  const parts = read(chart, [
    {
      kind: 'strand',
      id: 'reed',
      name: 'Reed',
      shape: 'fringe',
      beads: '4A 1B',
      anchor: { panelId: 'panel', row: 0, bead: 1 },
      copies: 1,
    },
  ])
  const part = parts.find(({ partId }) => partId === 'reed')
  if (part === undefined) throw new Error('expected the fringe')
  const geometry = strandGeometry([form, form, form, form, form], threadMm(), form.lengthMm.value)
  const panel = panelGeometry(chart, indexBeads(chart), form, threadMm())
  return { part, geometry, panel, line: routeLine(part.route, geometry) }
}
