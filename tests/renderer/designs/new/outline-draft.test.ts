import { describe, expect, it } from 'vitest'
import { draftBody, firstDraft } from '../../../../renderer/rooms/designs/draft/draft.ts'
import {
  drawShape,
  OUTLINE_STITCHES,
  SHAPES,
  type ShapeWanted,
} from '../../../../renderer/rooms/designs/new/outline-draft.ts'
import { SAMPLE_WORDS } from '../../../../renderer/rooms/designs/new/sample-words.ts'
import { wayScenes } from '../../../../renderer/rooms/designs/new/way-scenes.ts'
import { wayOf, ways } from '../../../../renderer/rooms/designs/new/ways.ts'
import { referenceTables } from '../../../../shared-core/beads/bead-tables.ts'
import { fromChartJson, toChartJson } from '../../../../shared-core/chart/chart-json.ts'
import { countBeads } from '../../../../shared-core/chart/count-slots.ts'
import { blankChart } from '../../../../shared-core/chart/outlines/blank-chart.ts'
import { OUTLINE_KINDS } from '../../../../shared-core/chart/outlines/chart-from-outline.ts'
import { fringeLengths } from '../../../../shared-core/chart/outlines/fringe-fan.ts'
import { beadsOfRow } from '../../../../shared-core/chart/outlines/fringe-top.ts'
import { readDesign } from '../../../../shared-core/design/read-design.ts'
import { parseWordChart } from '../../../../shared-core/words/parse-word-chart.ts'
import { wordChartText, writeWordChart } from '../../../../shared-core/words/write-word-chart.ts'

const wanted: ShapeWanted = {
  kind: 'fringe',
  stitch: 'brick',
  columns: 7,
  rows: 5,
  top: 'band',
  grade: 'point',
  shortest: 4,
  longest: 10,
  tip: 1,
}

function readOne(part: Partial<ShapeWanted>) {
  const drawn = drawShape({ ...wanted, ...part })
  if (!drawn.ok) throw new Error(drawn.error.message)
  const { chart, strands } = drawn.value
  const body = draftBody(chart, { ...firstDraft, shape: 'one' }, { strands })
  const read = readDesign(body, referenceTables)
  if (!read.ok) throw new Error(read.error.message)
  return { ...drawn.value, body, reading: read.value }
}

describe('drawShape', () => {
  it('hangs a fringe from every bead of the last row, all of it counted', () => {
    const tops = OUTLINE_KINDS.flatMap((top) => OUTLINE_STITCHES.map((stitch) => ({ top, stitch })))
    for (const part of tops) {
      const { strands, reading, body, chart } = readOne(part)
      const row = chart.rows.length - 1
      expect(strands?.every(({ anchor }) => anchor?.row === row)).toBe(true)
      const places = beadsOfRow(fromChartJson(chart).rows[row])
      const hung = fringeLengths({ ...wanted, places }).reduce((sum, length) => sum + length, 0)
      const panel = reading.parts.find(({ partId }) => partId === 'panel')?.beads ?? 0
      expect(reading.beads).toBe(panel + hung)
      expect(reading.warnings.filter(({ code }) => code === 'anchor-missing')).toEqual([])
      expect(body.palette.map(({ label }) => label)).toEqual(['A', 'B'])
    }
  })

  it('draws every shape as a design that can be read', () => {
    for (const kind of SHAPES) expect(readOne({ kind }).reading.beads).toBeGreaterThan(0)
  })

  it('refuses a fringe whose shortest strand is longer than its longest', () => {
    expect(drawShape({ ...wanted, shortest: 12 })).toMatchObject({ ok: false })
  })
})

describe('a blank chart', () => {
  it.each([
    'brick',
    'peyote',
    'square',
    'loom',
    'ladder',
    'herringbone',
    'right-angle-weave',
  ] as const)('of %s is a design that can be worked', (stitch) => {
    for (const edge of ['straight', 'stepped'] as const) {
      const made = blankChart({ stitch, columns: 6, rows: 5, edge })
      if (!made.ok) throw new Error(made.error.message)
      const chart = toChartJson(made.value)
      const read = readDesign(draftBody(chart, { ...firstDraft, shape: 'one' }), referenceTables)
      if (!read.ok) throw new Error(read.error.message)
      expect(read.value.beads).toBe(countBeads(made.value))
      const impossible = read.value.warnings.filter(({ severity }) => severity === 'impossible')
      expect(impossible).toEqual([])
    }
  })
})

describe('ways', () => {
  it('have a drawn card each and an address that finds them', () => {
    const scenes = wayScenes()
    for (const { name } of ways) {
      expect(wayOf(name)).toBe(name)
      expect(scenes[name].xMm.length).toBeGreaterThan(20)
    }
    expect(wayOf(undefined)).toBeUndefined()
    expect(wayOf('nonsense')).toBeUndefined()
  })
})

describe('SAMPLE_WORDS', () => {
  it('reads as a small diamond, and back to itself when it is written again', () => {
    const read = parseWordChart(SAMPLE_WORDS, { stitch: 'brick' })
    if (!read.ok) throw new Error(read.error[0]?.message)
    expect(read.value.beads).toBe(49)
    const again = parseWordChart(wordChartText(writeWordChart(read.value.chart)), {
      stitch: 'brick',
    })
    expect(again.ok && again.value.chart).toEqual(read.value.chart)
  })
})
