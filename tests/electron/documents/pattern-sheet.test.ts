import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Mark, Page } from '../../../electron/service/documents/draw-list.ts'
import { measureText, missingScripts } from '../../../electron/service/documents/fonts.ts'
import { blockMarks } from '../../../electron/service/documents/pattern-sheet/chart-marks.ts'
import {
  BEAD_SIDE,
  planChart,
} from '../../../electron/service/documents/pattern-sheet/chart-plan.ts'
import {
  laySheet,
  makePatternSheet,
} from '../../../electron/service/documents/pattern-sheet/make-pattern-sheet.ts'
import { patternSheet } from '../../../electron/service/documents/pattern-sheet/pattern-sheet.ts'
import {
  type PrintedChart,
  printedChart,
} from '../../../electron/service/documents/pattern-sheet/printed-chart.ts'
import type { SheetData } from '../../../electron/service/documents/pattern-sheet/sheet-data.ts'
import { SAFE } from '../../../electron/service/documents/pattern-sheet/sheet-frame.ts'
import { slotLooks } from '../../../electron/service/documents/pattern-sheet/slot-look.ts'
import { tellSteps } from '../../../electron/service/documents/pattern-sheet/tell-steps.ts'
import { chartSvg } from '../../../electron/service/exchange/chart-svg.ts'
import { sampleDesigns } from '../../../electron/service/sample/designs.ts'
import { type Chart, type StitchKind, slotLabel } from '../../../shared-core/chart/chart.ts'
import { fromChartJson } from '../../../shared-core/chart/chart-json.ts'
import { countSlots } from '../../../shared-core/chart/count-slots.ts'
import { stitchPitch } from '../../../shared-core/chart/stitch-pitch.ts'
import { writeWordChart } from '../../../shared-core/words/write-word-chart.ts'
import { extent } from './mark-extent.ts'
import { sheetOfSample } from './sheet-of-sample.ts'

const NAMES = sampleDesigns.map(({ name }) => name)
const PAPERS = ['a4', 'letter'] as const

function expectInside({ widthMm, heightMm, marks }: Page): void {
  for (const mark of marks) {
    const [left, top, right, bottom] = extent(mark)
    expect(left).toBeGreaterThanOrEqual(SAFE)
    expect(top).toBeGreaterThanOrEqual(SAFE)
    expect(right).toBeLessThanOrEqual(widthMm - SAFE)
    expect(bottom).toBeLessThanOrEqual(heightMm - SAFE)
  }
}

function textsOfPage({ marks }: Page): readonly Extract<Mark, { kind: 'text' }>[] {
  return marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []))
}

/** Pairs of texts that lie over each other. */
function overlaps(page: Page): readonly string[] {
  const texts = textsOfPage(page).map((mark) => ({ words: mark.text, box: extent(mark) }))
  return texts.flatMap((a, i) =>
    texts.slice(i + 1).flatMap((b) => {
      const across = Math.min(a.box[2], b.box[2]) - Math.max(a.box[0], b.box[0])
      const down = Math.min(a.box[3], b.box[3]) - Math.max(a.box[1], b.box[1])
      return across > 0.01 && down > 0.01 ? [`${a.words} / ${b.words}`] : []
    }),
  )
}

function isChartPage(page: Page): boolean {
  return textsOfPage(page).some(({ text }) => text.startsWith('Chart: '))
}

/** Numbers of rows are the small ones at a side; those of columns stand centred. */
function rowNumbersOf(marks: readonly Mark[]): readonly number[] {
  return marks.flatMap((mark) =>
    mark.kind === 'text' && mark.sizePt === 6.5 && mark.align !== 'centre'
      ? [Number(mark.text)]
      : [],
  )
}

/** Beads are the stamps with both a fill and an edge. */
function beadStamps(marks: readonly Mark[]): readonly Extract<Mark, { kind: 'stamps' }>[] {
  return marks.flatMap((mark) =>
    mark.kind === 'stamps' && mark.fill !== null && mark.stroke !== null ? [mark] : [],
  )
}

describe('patternSheet', () => {
  it.each(NAMES.flatMap((name) => PAPERS.map((paper) => [name, paper] as const)))(
    'keeps every mark of %s on %s inside what a printer can print',
    (name, paper) => {
      const pages = patternSheet(sheetOfSample(name, { paper, audience: 'class' }), measureText)
      expect(pages.length).toBeGreaterThanOrEqual(5)
      for (const page of pages) expectInside(page)
    },
  )

  it.each(NAMES)(
    'lets no text of the cover, materials and words of %s lie over another',
    (name) => {
      for (const audience of ['self', 'sale', 'class'] as const) {
        const pages = patternSheet(sheetOfSample(name, { audience }), measureText)
        for (const page of pages) if (!isChartPage(page)) expect(overlaps(page)).toEqual([])
      }
    },
  )

  it.each(NAMES)('prints every row of %s once with its number', (name) => {
    const data = sheetOfSample(name)
    const pages = patternSheet(data, measureText).filter(isChartPage)
    const panels = data.body.parts.filter((part) => part.kind === 'panel')
    const rows = panels.flatMap(({ chart }) => {
      const count = chart.rows.length * (chart.stitch === 'peyote' ? 2 : 1)
      return Array.from({ length: count }, (_, i) => i + 1)
    })
    const printed = pages.flatMap(({ marks }) => rowNumbersOf(marks))
    expect(printed.toSorted((a, b) => a - b)).toEqual(rows.toSorted((a, b) => a - b))
  })

  it('prints the counts of the reading, and in all what they add up to', () => {
    for (const name of NAMES) {
      const data = sheetOfSample(name)
      const [, materials] = patternSheet(data, measureText)
      const words = textsOfPage(materials as Page).map(({ text }) => text)
      const figure = (count: number) => String(count).replace(/\B(?=(\d{3})+$)/g, '')
      for (const { count } of data.reading.counts) expect(words).toContain(figure(count))
      expect(words).toContain(figure(data.reading.beads))
    }
  })

  it('numbers its pages and heads all but the cover', () => {
    const pages = patternSheet(sheetOfSample('Mudflat band'), measureText)
    pages.forEach((page, at) => {
      const words = textsOfPage(page).map(({ text }) => text)
      expect(words).toContain(`Page ${at + 1} of ${pages.length}`)
      expect(
        textsOfPage(page).filter(({ sizePt, text }) => sizePt === 8 && text === 'Mudflat band'),
      ).toHaveLength(at === 0 ? 0 : 1)
    })
  })

  it('shows drawers and packaging to the maker alone, and the terms to a buyer', () => {
    const words = (changes: Partial<SheetData>) =>
      patternSheet(sheetOfSample('Mudflat band', changes), measureText)
        .flatMap(textsOfPage)
        .map(({ text }) => text)
        .join('\n')
    expect(words({ audience: 'self' })).toContain('WS-11')
    expect(words({ audience: 'self' })).toContain('Findings and packaging')
    expect(words({ audience: 'sale' })).not.toContain('WS-11')
    expect(words({ audience: 'sale', terms: 'Sell what you make.' })).toContain(
      'Sell what you make.',
    )
    expect(words({ audience: 'class' })).toContain('for one kit')
  })

  it('stays inside its margins whatever the names', () => {
    const words = fc.string({ unit: 'grapheme', maxLength: 120 })
    fc.assert(
      fc.property(
        fc.record({ name: words, colourway: words, maker: words, caution: words, terms: words }),
        (texts) => {
          const pages = patternSheet(sheetOfSample('Samphire studs', texts), measureText)
          for (const page of pages) expectInside(page)
          expect(overlaps(pages[0] as Page)).toEqual([])
        },
      ),
      { numRuns: 25 },
    )
  })
})

const STITCHES: readonly StitchKind[] = [
  'brick',
  'peyote',
  'square',
  'loom',
  'ladder',
  'herringbone',
]

/** Charts with gaps and ragged ends, up to a few pages of them. */
const charts = fc
  .record({
    stitch: fc.constantFrom(...STITCHES),
    rows: fc.array(
      fc.record({
        shift: fc.integer({ min: 0, max: 4 }),
        cells: fc.array(fc.integer({ min: 0, max: 30 }), { maxLength: 70 }),
      }),
      { minLength: 1, maxLength: 90 },
    ),
  })
  .map(
    ({ stitch, rows }): Chart => ({
      stitch,
      rows: rows.map(({ shift, cells }, row) => ({
        start: 2 * shift + (stitch === 'brick' ? row % 2 : 0),
        cells: Uint16Array.from(cells),
      })),
    }),
  )

const looks = slotLooks(sheetOfSample('Samphire studs'))

function printed(chart: Chart): PrintedChart | undefined {
  const size = { diameterMm: 1.6, lengthMm: 1.3, threadMm: 0.11 }
  const pitch = stitchPitch(chart.stitch, size)
  const words = writeWordChart(chart).lines.map(({ text }) => text)
  return printedChart({ name: 'Panel', chart, pitch, lookOf: looks, words })
}

describe('planChart', () => {
  const room = { left: 18, top: 36, right: 192, bottom: 260 }
  const gutterMm = 9

  it('puts every bead on one page, in one place, with its own slot, at a readable size', () => {
    fc.assert(
      fc.property(charts, (chart) => {
        const ready = printed(chart)
        fc.pre(ready !== undefined)
        const plan = planChart({ extent: ready.extent, pitch: ready.pitch, room, gutterMm })
        expect(plan.scale * 1.3).toBeGreaterThanOrEqual(BEAD_SIDE.least - 1e-9)
        const perSlot = new Map<string, number>()
        plan.pages.forEach((blocks) => {
          const places = new Set<string>()
          for (const block of blocks) {
            for (const { placesMm } of beadStamps(blockMarks(ready, block, plan.scale, gutterMm))) {
              for (const [x, y] of placesMm) places.add(`${x.toFixed(2)} ${y.toFixed(2)}`)
              perSlot.set('all', (perSlot.get('all') ?? 0) + placesMm.length)
            }
          }
          perSlot.set('places', (perSlot.get('places') ?? 0) + places.size)
        })
        const all = countSlots(chart).reduce((sum, count) => sum + count, 0)
        expect(perSlot.get('all')).toBe(all)
        expect(perSlot.get('places')).toBe(all)
      }),
      { numRuns: 60 },
    )
  })

  it('numbers every row once in each band of columns and stays in its room', () => {
    fc.assert(
      fc.property(charts, (chart) => {
        const ready = printed(chart)
        fc.pre(ready !== undefined)
        const { extent: beads } = ready
        const plan = planChart({ extent: beads, pitch: ready.pitch, room, gutterMm })
        const blocks = plan.pages.flat()
        const marksOf = (block: (typeof blocks)[number]) =>
          blockMarks(ready, block, plan.scale, gutterMm)
        const per = chart.stitch === 'peyote' ? 2 : 1
        const rows = Array.from(
          { length: (beads.lastRow - beads.firstRow + 1) * per },
          (_, i) => beads.firstRow * per + i + 1,
        )
        for (const band of Map.groupBy(blocks, ({ at }) => at[0]).values()) {
          const numbers = band.flatMap((block) => rowNumbersOf(marksOf(block)))
          expect(numbers.toSorted((a, b) => a - b)).toEqual(rows)
        }
        for (const mark of blocks.flatMap(marksOf)) {
          const [left, top, right, bottom] = extent(mark)
          expect(left).toBeGreaterThanOrEqual(room.left - 1)
          expect(right).toBeLessThanOrEqual(room.right + 1)
          expect(top).toBeGreaterThanOrEqual(room.top)
          expect(bottom).toBeLessThanOrEqual(room.bottom + 2)
        }
      }),
      { numRuns: 60 },
    )
  })

  it('prints as many beads of each slot as the chart counts', () => {
    for (const { name, body } of sampleDesigns) {
      const panel = body.parts.find((part) => part.kind === 'panel')
      if (panel === undefined) throw new Error(`${name} has no panel`)
      const chart = fromChartJson(panel.chart)
      const lookOf = (index: number) => ({
        ...looks(index),
        colourHex: `#${String(index + 10)}0000`,
      })
      const ready = { ...(printed(chart) as PrintedChart), lookOf }
      const plan = planChart({ extent: ready.extent, pitch: ready.pitch, room, gutterMm })
      const found = new Map<string | null, number>()
      for (const block of plan.pages.flat()) {
        for (const { fill, placesMm } of beadStamps(blockMarks(ready, block, plan.scale, 9))) {
          found.set(fill, (found.get(fill) ?? 0) + placesMm.length)
        }
      }
      countSlots(chart).forEach((count, slot) => {
        expect([slotLabel(slot), found.get(`#${String(slot + 10)}0000`) ?? 0]).toEqual([
          slotLabel(slot),
          count,
        ])
      })
    }
  })
})

describe('tellSteps', () => {
  const step = (row: number, text: string) => ({ row, text, fromEvent: 0, toEvent: 0 })

  it('tells beads that go alike by their letters, and the last bridge again', () => {
    const told = [
      ...tellSteps([
        step(1, 'Row 2 from the left; pick up A, B; under bridge 1 from the edge; up through B'),
        step(1, 'Pick up C; under bridge 2 from the edge; up through C'),
        step(1, 'Pick up C; under bridge 3 from the edge; up through C'),
        step(1, 'Pick up A; under bridge 3 from the edge; up through A'),
      ]),
    ]
    expect(told).toEqual([
      'Row 2 from the left; pick up A, B; under bridge 1 from the edge; up through B. In the same way: 2C. Pick up A; under the same bridge; up through A.',
    ])
  })

  it('names rows together that go like two told before, and tells what lies between', () => {
    const row = (number: number) =>
      step(number, `Row ${number} from the left; pick up ${number}A; left through ${number} beads`)
    const told = [
      ...tellSteps([1, 2, 3, 4].map(row).concat(step(5, 'Thread the needle with 900 mm'))),
    ]
    expect(told.slice(2)).toEqual([
      'Rows 3 to 4 go the same way, with the beads of the word chart.',
      'Thread the needle with 900 mm.',
    ])
  })
})

describe('chartSvg', () => {
  it('draws every bead once and is well formed', () => {
    const chart = fromChartJson({
      stitch: 'brick',
      rows: [
        { start: 0, cells: '3A 1- 2B' },
        { start: 1, cells: '2C' },
      ],
    })
    const svg = chartSvg({ ...(printed(chart) as PrintedChart), name: 'Tide & <reed>' }, 4)
    expect(svg).toContain('<title>Tide &#38; &#60;reed&#62;</title>')
    // Beads have an edge, their symbols none: three of A, two of B, two of C.
    const groups = [...svg.matchAll(/<g fill="([^"]+)"( stroke=[^>]+)?>(.*?)<\/g>/g)]
    const beads = groups
      .filter(([, , stroke]) => stroke !== undefined)
      .map(([, , , uses = '']) => uses.split('<use ').length - 1)
    expect(beads).toEqual([3, 2, 2])
    const opened = [...svg.matchAll(/<(svg|g|defs|text|title)\b/g)].map(([, tag]) => tag)
    const closed = [...svg.matchAll(/<\/(svg|g|defs|text|title)>/g)].map(([, tag]) => tag)
    expect(opened.toSorted()).toEqual(closed.toSorted())
    expect(svg.trim().endsWith('</svg>')).toBe(true)
  })
})

describe('missingScripts', () => {
  it('names the scripts that would print as boxes, and none that are printed', () => {
    expect(missingScripts(['Łódź Ωμέγα Жемчуг 38 € ½ ×'])).toEqual([])
    expect(missingScripts(['ज्वार क्षितिज', 'יָמִים', '潮の色'])).toEqual([])
    expect(missingScripts(['한글'])).toEqual(['Korean'])
  })
})

describe('makePatternSheet', () => {
  it('makes a PDF with all its fonts embedded, saying what it could not print', async () => {
    const data = sheetOfSample('Samphire studs', { maker: '한글' })
    const made = await makePatternSheet(laySheet(data), data, 0)
    const raw = Buffer.from(made.bytes).toString('latin1')
    expect(raw.startsWith('%PDF-')).toBe(true)
    expect(raw.match(/\/Type \/Page\b/g)).toHaveLength(made.pages)
    const fonts = raw.match(/\/Type \/FontDescriptor/g) ?? []
    expect(fonts.length).toBeGreaterThanOrEqual(3)
    expect(raw.match(/\/FontFile2? /g)).toHaveLength(fonts.length)
    expect(made.missingScripts).toEqual(['Korean'])
  })
})
