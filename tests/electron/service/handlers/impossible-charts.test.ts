import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { STITCH_KINDS } from '../../../../shared-core/chart/chart.ts'
import type { ChartJson } from '../../../../shared-core/chart/chart-json.ts'
import type { CallInput, CallOutput } from '../../../../shared-core/contract/calls.ts'
import { designOf, panelOf, strandOf } from '../../../shared-core/design/a-design.ts'
import { openEngine } from '../open-engine.ts'

// What no thread can do is told by name; what is too large is refused; and everything ends.

let engine: Awaited<ReturnType<typeof openEngine>>
beforeAll(async () => {
  engine = await openEngine()
})
afterAll(() => engine.close())

type Stitch = ChartJson['stitch']

/** Half beads a row is out of step by. */
const phase = (stitch: Stitch, row: number) =>
  stitch === 'brick' ? row % 2 : stitch === 'right-angle-weave' ? 1 - (row % 2) : 0

const chartOf = (stitch: Stitch, rows: readonly string[]): ChartJson => ({
  stitch,
  rows: rows.map((cells, row) => ({ start: phase(stitch, row), cells })),
})

/** Plain JSON, as it is sent. */
const bodyOf = (chart: ChartJson): CallInput<'engine.read'>['body'] =>
  JSON.parse(JSON.stringify(designOf([{ ...panelOf({ stitch: 'brick', rows: [] }), chart }])))

async function read(chart: ChartJson): Promise<CallOutput<'engine.read'>> {
  return engine.ask('engine.read', { body: bodyOf(chart) })
}

describe('engine.read', () => {
  it.each(STITCH_KINDS)(
    'says of %s without rows, and with a row without beads, that it has no beads',
    async (stitch) => {
      for (const rows of [[], [''], ['5-']]) {
        const reading = await read(chartOf(stitch, rows))
        expect(reading).toMatchObject({ beads: 0, warnings: [{ code: 'no-beads' }] })
        expect(reading.thread.inPieceMm.value).toBe(0)
      }
    },
  )

  it('refuses a strand without beads', async () => {
    const body = designOf([strandOf('')])
    expect(await engine.refusal('engine.read', { body })).toMatchObject({
      code: 'bad-input',
      field: 'body.parts.0.beads',
    })
  })

  it.each(['brick', 'peyote', 'square', 'ladder', 'herringbone'] as const)(
    'names the beads of %s that no thread reaches, and strings all others once',
    async (stitch) => {
      const chart = chartOf(stitch, ['4A 2000- 4A', '4A'])
      const reading = await read(chart)
      const loose = reading.warnings.find(({ code }) => code === 'floating-beads')
      expect(loose?.severity).toBe('impossible')
      expect(loose?.beads.toSorted((a, b) => a - b)).toEqual([4, 5, 6, 7])
      const [part] = reading.parts
      const strung = part?.events.flatMap((event) =>
        event['kind'] === 'pick-up' ? (event['beads'] as number[]) : [],
      )
      expect(strung?.toSorted((a, b) => a - b)).toEqual([0, 1, 2, 3, 8, 9, 10, 11])
    },
  )

  it('joins two starts that meet far away, or says where it cannot', async () => {
    const chart = chartOf('brick', ['3A 300- 3A', '3A 299- 3A', '306A'])
    const reading = await read(chart)
    expect(reading.beads).toBe(318)
    const named = reading.warnings.filter(({ severity }) => severity === 'impossible')
    const strung = reading.parts[0]?.events.flatMap((event) =>
      event['kind'] === 'pick-up' ? (event['beads'] as number[]) : [],
    )
    expect(new Set(strung).size + named.flatMap(({ beads }) => beads).length).toBe(318)
  })

  it('reckons beads of a slot that has none with the panel’s own form, and says so', async () => {
    const reading = await read(chartOf('peyote', ['2A 2Z', '4A']))
    expect(reading.warnings).toMatchObject([{ code: 'slot-without-bead', beads: [2, 3] }])
    expect(reading.counts.find(({ label }) => label === 'Z')).toMatchObject({ count: 2 })
  })

  it('reads 100,000 columns', async () => {
    expect((await read(chartOf('peyote', ['100000A']))).beads).toBe(100_000)
  }, 30_000)

  it('refuses more cells than a chart may hold, before it makes room for them', async () => {
    const started = performance.now()
    const rows = Array.from({ length: 2_000 }, () => '100000A')
    const refusal = await engine.refusal('engine.read', { body: bodyOf(chartOf('square', rows)) })
    expect(refusal).toMatchObject({ code: expect.stringMatching(/too-large|too-many/) })
    expect(performance.now() - started).toBeLessThan(5_000)
  })
})
