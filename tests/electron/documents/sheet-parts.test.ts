import { describe, expect, it } from 'vitest'
import type { Mark, Page } from '../../../electron/service/documents/draw-list.ts'
import { measureText } from '../../../electron/service/documents/fonts.ts'
import { writeCautions } from '../../../electron/service/documents/pattern-sheet/caution-pages.ts'
import { patternSheet } from '../../../electron/service/documents/pattern-sheet/pattern-sheet.ts'
import { piecePicture } from '../../../electron/service/documents/pattern-sheet/piece-picture.ts'
import { sheetFrame } from '../../../electron/service/documents/pattern-sheet/sheet-frame.ts'
import { SheetWriter } from '../../../electron/service/documents/pattern-sheet/sheet-writer.ts'
import { slotLooks } from '../../../electron/service/documents/pattern-sheet/slot-look.ts'
import { sampleDesigns } from '../../../electron/service/sample/designs.ts'
import { readStrandBeads } from '../../../shared-core/stitches/strand/strand-beads.ts'
import { sheetOfSample } from './sheet-of-sample.ts'

const NAMES = sampleDesigns.map(({ name }) => name)

const wordsOf = ({ marks }: Pick<Page, 'marks'>) =>
  marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []))

/** Places of beads: the stamps with a fill and an edge. */
const beadsOf = (marks: readonly Mark[]) =>
  marks.flatMap((mark) =>
    mark.kind === 'stamps' && mark.fill !== null && mark.stroke !== null ? mark.placesMm : [],
  )

describe('writeStrandChart', () => {
  it('draws every bead of every strand, and its number under it', () => {
    const data = sheetOfSample('Reedbed fringe earrings')
    const page = patternSheet(data, measureText).find((one) =>
      wordsOf(one).includes('Chart: strands'),
    )
    if (page === undefined) throw new Error('expected a chart of the strands')
    const counts = data.body.parts.flatMap((part) =>
      part.kind === 'strand' ? [readStrandBeads(part.beads)?.length ?? 0] : [],
    )
    const slots = new Set(
      data.body.parts.flatMap((part) =>
        part.kind === 'strand' ? [...(readStrandBeads(part.beads) ?? [])] : [],
      ),
    )
    const all = counts.reduce((sum, count) => sum + count, 0)
    // Each colour stands once more in the legend.
    expect(beadsOf(page.marks)).toHaveLength(all + slots.size)
    for (const count of counts) expect(wordsOf(page)).toContain(String(count))
  })

  it('is left out where all that hangs is of one colour', () => {
    const pages = patternSheet(sheetOfSample('Tidewrack diamond earrings'), measureText)
    expect(pages.flatMap(wordsOf)).not.toContain('Chart: strands')
    const told = pages.flatMap(wordsOf).join(' ')
    expect(told).toContain('Ear loop, from row 1, bead 1 of the panel: 6A')
    expect(told).toContain('of the panel, the last of them row 1, bead 1.')
  })

  it('is left out where nothing hangs', () => {
    const pages = patternSheet(sheetOfSample('Mudflat band'), measureText)
    expect(pages.flatMap(wordsOf)).not.toContain('Chart: strands')
  })
})

describe('patternSheet', () => {
  it.each(NAMES)('keeps the cautions of %s together on one page', (name) => {
    for (const audience of ['self', 'sale', 'class'] as const) {
      const pages = patternSheet(sheetOfSample(name, { audience }), measureText)
      const on = (words: string) =>
        pages.findIndex((page) => wordsOf(page).some((w) => w.startsWith(words)))
      expect(on('Take care')).toBeGreaterThan(0)
      expect(on('Old or unknown beads')).toBe(on('Take care'))
    }
  })

  it('keeps the cautions and their note together wherever on a page they begin', () => {
    const data = sheetOfSample('Mudflat band')
    const frame = sheetFrame(data.paper)
    for (let lines = 0; lines < 60; lines += 1) {
      const writer = new SheetWriter(frame, measureText)
      writer.newPage()
      writer.down(lines)
      writeCautions(writer, data)
      const on = (words: string) =>
        writer.pages.findIndex((marks) => wordsOf({ marks }).some((w) => w.startsWith(words)))
      expect(on('Take care')).toBeGreaterThanOrEqual(0)
      expect([on('Not a toy'), on('This is general')]).toEqual([on('Take care'), on('Take care')])
    }
  })

  it.each(NAMES)('writes every length of thread of %s in metres or centimetres', (name) => {
    const words = patternSheet(sheetOfSample(name), measureText).flatMap(wordsOf)
    const told = words.join(' ')
    expect(told).toMatch(/needle with \d[\d.]*\s(?:m|cm)\b/)
    expect(told).not.toMatch(/(?:needle with|warp of) \d{3,}\smm/)
  })
})

describe('piecePicture', () => {
  it('draws ear wires as hooks, and a clasp along both ends of a band', () => {
    const shapes = (name: string) => {
      const data = sheetOfSample(name)
      return piecePicture(data, slotLooks(data)).findings.map(({ shape }) => shape)
    }
    expect(shapes('Reedbed fringe earrings')).toEqual(['hook', 'hook'])
    expect(shapes('Mudflat band')).toEqual(['bar', 'bar'])
    expect(shapes('Samphire studs')).toEqual([])
  })
})
