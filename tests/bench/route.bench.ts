import { readFileSync } from 'node:fs'
import { performance } from 'node:perf_hooks'
import { referenceTables } from '../../shared-core/beads/bead-tables.ts'
import { indexBeads } from '../../shared-core/chart/bead-index.ts'
import type { Chart } from '../../shared-core/chart/chart.ts'
import { toChartJson } from '../../shared-core/chart/chart-json.ts'
import type { DesignBody } from '../../shared-core/design/design.ts'
import { readDesign } from '../../shared-core/design/read-design.ts'
import { measureThread } from '../../shared-core/route/measure-thread.ts'
import { panelGeometry } from '../../shared-core/route/part-geometry.ts'
import { stitchOf } from '../../shared-core/stitches/stitches.ts'
import { medianOf, type Row } from './row.ts'
import { block, validations } from './thread-validation.ts'

export const name =
  'Routes: the thread’s journey, its length against published pieces, and its speed'

const SECOND = 'the limit: one second'
const FRAME = 'the limit: 2 ms'

/** Beads of a brick panel, and how often its route is laid. */
const SIZES: readonly Readonly<{ beads: number; rounds: number }>[] = [
  { beads: 1_000, rounds: 60 },
  { beads: 10_000, rounds: 40 },
  { beads: 100_000, rounds: 15 },
  { beads: 1_000_000, rounds: 5 },
]

export async function run(): Promise<readonly Row[]> {
  return [...speeds(), ...earring(), ...predictions()]
}

function speeds(): readonly Row[] {
  const rows: Row[] = [{ measure: SECOND, n: 1, unit: 'ms', median: 1000, low: 1000, high: 1000 }]
  let tenfold: string | undefined
  for (const { beads, rounds } of SIZES) {
    const side = Math.round(Math.sqrt(beads))
    const chart = block('brick', Math.round(beads / side), side)
    const measure = `full route of ${beads} beads of brick`
    const times = timed(rounds, () => routeOf(chart))
    const compared =
      beads === 100_000
        ? { baseline: SECOND, target: 1 }
        : tenfold === undefined
          ? {}
          : { baseline: tenfold, target: 1.6 }
    rows.push({ measure, n: rounds, ...medianOf(times), ...compared })
    const { median, low, high } = medianOf(times)
    tenfold = `ten times the route of ${beads} beads`
    rows.push({
      measure: tenfold,
      n: rounds,
      unit: 'ms',
      median: 10 * median,
      low: 10 * low,
      high: 10 * high,
    })
  }
  return rows.slice(0, -1)
}

function earring(): readonly Row[] {
  const chart = sampleEarring()
  const body = designOf(chart)
  const rounds = 400
  return [
    { measure: FRAME, n: 1, unit: 'ms', median: 2, low: 2, high: 2 },
    {
      measure: `full route of an earring of ${indexBeads(chart).count} beads`,
      n: rounds,
      ...medianOf(timed(rounds, () => routeOf(chart))),
      baseline: FRAME,
      target: 1,
    },
    {
      measure: 'whole reading of that earring (counts, thread, fill, size, labour, warnings)',
      n: rounds,
      ...medianOf(timed(rounds, () => readDesign(body, referenceTables))),
      baseline: FRAME,
    },
  ]
}

/** Published lengths and what the route predicts, mm; the page in docs says more. */
function predictions(): readonly Row[] {
  const one = (measure: string, mm: number): Row => ({
    measure,
    n: 1,
    unit: 'mm',
    median: mm,
    low: mm,
    high: mm,
  })
  return validations().flatMap(({ id, statedMm, predictedMm }) => [
    one(`published thread of ${id}`, statedMm),
    {
      ...one(`predicted thread of ${id}`, predictedMm),
      baseline: `published thread of ${id}`,
      target: 1.15,
    },
  ])
}

/** From the chart alone to the thread's length: numbering, geometry, search of the start, route, measure. */
function routeOf(chart: Chart): number {
  const index = indexBeads(chart)
  const [form] = referenceTables.forms.filter(({ id }) => id === 'cylinder-11/0')
  if (form === undefined) throw new Error('The reference table has no cylinder 11/0')
  const geometry = panelGeometry(chart, index, form, 0.17)
  const draft = stitchOf(chart).layRoute({ chart, index, geometry, settings: {} })
  return measureThread(draft.events, geometry).throughMm
}

function timed(rounds: number, work: () => unknown): readonly number[] {
  for (let round = 0; round < Math.min(5, rounds); round += 1) work()
  return Array.from({ length: rounds }, () => {
    const began = performance.now()
    work()
    return performance.now() - began
  })
}

/** The Tidewrack earring: 161 beads, growing and shrinking by half beads. */
function sampleEarring(): Chart {
  const file = new URL('../fixtures/samples/tidewrack-chart.csv', import.meta.url)
  const lines = readFileSync(file, 'utf8').trim().split('\n').slice(1)
  return {
    stitch: 'brick',
    rows: lines.map((line) => {
      const [start = '0', cells = ''] = line.trim().split(';')
      const slots = cells.split(',').map((letter) => letter.charCodeAt(0) - 64)
      return { start: Number(start), cells: Uint16Array.from(slots) }
    }),
  }
}

function designOf(chart: Chart): DesignBody {
  return {
    unitName: 'pair',
    palette: ['A', 'B', 'C', 'D'].map((label) => ({
      label,
      name: label,
      formId: 'cylinder-11/0',
      colourHex: '#556677',
      finish: 'opaque',
    })),
    parts: [
      {
        kind: 'panel',
        id: 'panel',
        name: 'Panel',
        chart: toChartJson(chart),
        formId: 'cylinder-11/0',
        copies: 2,
        mirrored: true,
        route: {},
      },
    ],
    extras: [],
    threadId: 'braided-6lb',
    needleSize: '12',
  }
}
