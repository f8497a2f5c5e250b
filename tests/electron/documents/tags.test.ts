import * as fc from 'fast-check'
import jsQR from 'jsqr'
import { describe, expect, it } from 'vitest'
import type { Measure } from '../../../electron/service/documents/draw-list.ts'
import { PAPER } from '../../../electron/service/documents/draw-list.ts'
import { measureText, missingScripts, textRuns } from '../../../electron/service/documents/fonts.ts'
import { makeTags } from '../../../electron/service/documents/make-tags.ts'
import { qrCode } from '../../../electron/service/documents/qr-code.ts'
import { TAG, type Tag, tagMarks, tagSheet } from '../../../electron/service/documents/tag-sheet.ts'
import { wrapText } from '../../../electron/service/documents/wrap-text.ts'
import { extent } from './mark-extent.ts'

const tag: Tag = {
  name: 'Tidewrack diamond earrings',
  colourway: 'Wet slate and brine',
  code: 'TW-0007',
  qr: qrCode('TW-0007'),
  price: '€ 38.00',
  materials: 'Glass beads, braided thread, ear wires: steel',
  care: 'Keep dry.',
  caution: 'Not a toy. Small parts: keep from children under 3.',
  maker: 'Saltmarsh Beadworks',
  picture: {
    widthMm: 3.2,
    heightMm: 1.3,
    beadWidthMm: 1.6,
    beadHeightMm: 1.3,
    beads: [
      { xMm: 0.8, yMm: 0.65, colour: '#4b5a63' },
      { xMm: 2.4, yMm: 0.65, colour: '#2f6f82' },
    ],
  },
}

describe('qrCode', () => {
  it('gives modules that an independent reader reads back', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[A-Z]{2,4}-[0-9A-Z]{4,8}$/), (code) => {
        const { size, dark } = qrCode(code)
        const [quiet, scale] = [4, 4]
        const side = (size + 2 * quiet) * scale
        const pixels = new Uint8ClampedArray(side * side * 4).fill(255)
        for (let y = 0; y < side; y += 1) {
          for (let x = 0; x < side; x += 1) {
            const [column, row] = [Math.floor(x / scale) - quiet, Math.floor(y / scale) - quiet]
            const inside = column >= 0 && column < size && row >= 0 && row < size
            if (inside && dark[row * size + column])
              pixels.fill(0, (y * side + x) * 4, (y * side + x) * 4 + 3)
          }
        }
        expect(jsQR.default(pixels, side, side)?.data).toBe(code)
      }),
      { numRuns: 20 },
    )
  })
})

describe('tagMarks', () => {
  it('keeps every mark of a tag inside its card, whatever the texts', () => {
    const words = fc.string({ unit: 'grapheme', maxLength: 160 })
    fc.assert(
      fc.property(
        fc.record({
          ...{ name: words, colourway: words, materials: words },
          ...{ care: words, caution: words, maker: words },
          price: fc.constantFrom(null, '€ 38.00', '€ 10 000 000 000,00'),
        }),
        (texts) => {
          for (const mark of tagMarks({ ...tag, ...texts }, measureText)) {
            const [left, top, right, bottom] = extent(mark)
            expect(left).toBeGreaterThanOrEqual(0)
            expect(top).toBeGreaterThanOrEqual(0)
            expect(right).toBeLessThanOrEqual(TAG.widthMm + 0.001)
            expect(bottom).toBeLessThanOrEqual(TAG.heightMm + 0.001)
          }
        },
      ),
      { numRuns: 60 },
    )
  })

  it('prints name, code, price, care and caution', () => {
    const texts = tagMarks(tag, measureText).flatMap((mark) =>
      mark.kind === 'text' ? [mark.text] : [],
    )
    expect(texts).toEqual(
      expect.arrayContaining([tag.name, tag.code, '€ 38.00', 'Keep dry.', 'Saltmarsh Beadworks']),
    )
    expect(texts.join(' ')).toContain('Not a toy. Small parts')
  })

  it.each([3, 12])(
    'breaks a maker’s name that is one long word, and keeps %i sentences clear of it',
    (times) => {
      const maker = 'x'.repeat(120)
      const sentence = 'Metal findings: nickel release as the supplier declares it. '
      const said = sentence.repeat(times).trim()
      const marks = tagMarks({ ...tag, maker, care: said, caution: said }, measureText)
      const lines = marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []))
      const made = lines.filter(({ text }) => text.startsWith('xx'))
      expect(made).toHaveLength(2)
      const top = Math.min(...made.map(({ yMm }) => yMm))
      for (const line of lines.filter(({ text }) => text !== tag.code && !text.startsWith('xx'))) {
        expect(line.yMm).toBeLessThan(top - 2)
      }
    },
  )

  it('prints a long caution whole, in smaller letters', () => {
    const caution =
      'Small parts: not for children under 3. The supplier declares the ear wires free of nickel release, lead and cadmium; that is a claim, and local rules decide what may be sold.'
    const texts = tagMarks({ ...tag, caution }, measureText).flatMap((mark) =>
      mark.kind === 'text' ? [mark.text] : [],
    )
    expect(texts.join(' ')).toContain(caution)
  })

  it('prints a long price smaller, clear of the colourway', () => {
    const price = '€ 10 000 000 000,00'
    const marks = tagMarks({ ...tag, price }, measureText)
    const [mark] = marks.filter((one) => one.kind === 'text' && one.text === price)
    if (mark?.kind !== 'text') throw new Error('expected the price')
    expect(measureText(price, mark.face, mark.sizePt)).toBeLessThan(24)
  })

  it('leaves the price out when there is none', () => {
    const texts = tagMarks({ ...tag, price: null }, measureText).map((mark) =>
      'text' in mark ? mark.text : '',
    )
    expect(texts).not.toContain('€ 38.00')
  })
})

describe('tagSheet', () => {
  it.each(['a4', 'letter'] as const)(
    'puts ten tags on a page of %s and keeps them on the paper',
    (paper) => {
      const pages = tagSheet(
        Array.from({ length: 11 }, () => tag),
        paper,
        measureText,
      )
      expect(pages).toHaveLength(2)
      for (const { marks } of pages) {
        for (const mark of marks) {
          const [left, top, right, bottom] = extent(mark)
          expect(Math.min(left, top)).toBeGreaterThan(5)
          expect(right).toBeLessThan(PAPER[paper].widthMm - 5)
          expect(bottom).toBeLessThan(PAPER[paper].heightMm - 5)
        }
      }
    },
  )
})

describe('wrapText', () => {
  const measure: Measure = (text) => [...text].length
  const box = { face: 'text', sizePt: 8 } as const

  it('breaks at spaces', () => {
    const lines = wrapText({ ...box, text: 'one two three', widthMm: 7, maxLines: 5 }, measure)
    expect(lines).toEqual(['one two', 'three'])
  })

  it('keeps a number with its unit', () => {
    const lines = wrapText({ ...box, text: 'thread 0,17 mm', widthMm: 12, maxLines: 5 }, measure)
    expect(lines).toEqual(['thread', '0,17\u00a0mm'])
  })

  it('leaves no few letters alone on the last line, where the word before fits beside them', () => {
    const text = 'not for children under 3.'
    const lines = wrapText({ ...box, text, widthMm: 23, maxLines: 5 }, measure)
    expect(lines).toEqual(['not for children', 'under 3.'])
    expect(wrapText({ ...box, text: 'children 3.', widthMm: 9, maxLines: 5 }, measure)).toEqual([
      'children',
      '3.',
    ])
  })

  it('breaks a word that is wider than the line', () => {
    expect(wrapText({ ...box, text: 'abcdefgh', widthMm: 3, maxLines: 5 }, measure)).toEqual([
      'abc',
      'def',
      'gh',
    ])
  })

  it('ends in an ellipsis what does not fit', () => {
    expect(wrapText({ ...box, text: 'one two three', widthMm: 5, maxLines: 2 }, measure)).toEqual([
      'one',
      'two…',
    ])
  })

  it('never makes a line wider than the box and never drops a letter before the last line', () => {
    const request = fc.record({
      text: fc.string({ unit: 'grapheme', maxLength: 80 }),
      widthMm: fc.integer({ min: 2, max: 30 }),
    })
    fc.assert(
      fc.property(request, ({ text, widthMm }) => {
        const lines = wrapText({ ...box, text, widthMm, maxLines: 1_000 }, measure)
        expect(lines.every((line) => measure(line, 'text', 8) <= widthMm)).toBe(true)
        expect(lines.join('').replaceAll(/\s/gu, '')).toBe(text.replaceAll(/\s/gu, ''))
      }),
    )
  })
})

describe('textRuns', () => {
  it('sets letters that a face lacks in the wide font and keeps every letter', () => {
    const runs = textRuns('Seegras שלום', 'text')
    expect(runs.map((run) => run.font)).toEqual(['text', 'wide'])
    expect(runs.map((run) => run.text).join('')).toBe('Seegras שלום')
  })

  it('sets each script in a font that has it, also Chinese and Japanese', () => {
    const fonts = ['Ταινία', 'Лента', 'رباط', '海辺のビーズ'].map((name) =>
      textRuns(name, 'title').map((run) => run.font),
    )
    expect(fonts).toEqual([['title'], ['title'], ['wide-strong'], ['han']])
    expect(missingScripts(['Ταινία', 'Лента', 'رباط', '海辺のビーズ', 'شَدّة'])).toEqual([])
  })

  it('orders words from the right as they are read, and turns their brackets', () => {
    const runs = textRuns('אבג (דה) 12 tide', 'text')
    // Seen from the left: Latin, the number, then the Hebrew stretch, which its font sets from the right.
    expect(runs.map((run) => run.text.trim()).filter((words) => words !== '')).toEqual([
      'tide',
      '12',
      'אבג )דה(',
    ])
    expect(runs.filter((run) => /[א-ת]/.test(run.text)).every((run) => run.isRightToLeft)).toBe(
      true,
    )
  })

  it('keeps every letter of any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 30 }), (text) => {
        const letters = (words: string) => [...words].length
        const set = textRuns(text, 'text').reduce((sum, run) => sum + letters(run.text), 0)
        expect(set).toBe(letters(text.normalize('NFC')))
      }),
    )
  })
})

describe('makeTags', () => {
  it('makes a PDF with its own fonts embedded and none of the reader’s', async () => {
    const { bytes, pages } = await makeTags({
      tags: [tag],
      paper: 'a4',
      workshopName: 'Saltmarsh Beadworks',
      madeAtMs: 0,
    })
    const body = Buffer.from(bytes).toString('latin1')
    expect(pages).toBe(1)
    expect(body.startsWith('%PDF-')).toBe(true)
    expect(body).toContain('/FontFile2')
    expect(body).not.toContain('Helvetica')
  })
})
