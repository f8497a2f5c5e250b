import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Mark, Page } from '../../../electron/service/documents/draw-list.ts'
import { measureText } from '../../../electron/service/documents/fonts.ts'
import { patternSheet } from '../../../electron/service/documents/pattern-sheet/pattern-sheet.ts'
import type { SheetData } from '../../../electron/service/documents/pattern-sheet/sheet-data.ts'
import { SAFE } from '../../../electron/service/documents/pattern-sheet/sheet-frame.ts'
import { sampleDesigns } from '../../../electron/service/sample/designs.ts'
import { extent } from './mark-extent.ts'
import { rowNumbersOf } from './row-numbers.ts'
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
