import { readFileSync } from 'node:fs'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { StitchKind } from '../../../shared-core/chart/chart.ts'
import { countSlots } from '../../../shared-core/chart/count-slots.ts'
import { type GridReading, readGridFile } from '../../../shared-core/chart/read-grid-file.ts'
import { writeGridFile } from '../../../shared-core/chart/write-grid-file.ts'
import type { Refusal } from '../../../shared-core/refusal.ts'
import { anyChart } from './any-chart.ts'
import { drawn, picture } from './picture.ts'

const sample = (name: string): string =>
  readFileSync(new URL(`../../fixtures/samples/${name}`, import.meta.url), 'utf8')

const read = (text: string, stitch?: StitchKind): GridReading => {
  const outcome = readGridFile(text, {
    fileName: 'grid.csv',
    ...(stitch === undefined ? {} : { stitch }),
  })
  if (!outcome.ok) throw new Error(outcome.error.map(({ message }) => message).join('\n'))
  return outcome.value
}

const refusals = (text: string, stitch?: StitchKind): readonly Refusal[] => {
  const outcome = readGridFile(text, {
    fileName: 'grid.csv',
    ...(stitch === undefined ? {} : { stitch }),
  })
  return outcome.ok ? [] : outcome.error
}

const codes = (text: string, stitch?: StitchKind): readonly string[] =>
  refusals(text, stitch).map(({ code, line }) => (line === undefined ? code : `${code} ${line}`))

describe('readGridFile', () => {
  it('reads the brick panel with its half-bead offsets', () => {
    const { chart, beads, slots, notes } = read(sample('tidewrack-chart.csv'))
    expect(chart.stitch).toBe('brick')
    expect(picture(chart).slice(0, 4)).toEqual([
      '         A A',
      '        A B A',
      '       A D D A',
      '      A D D D A',
    ])
    expect(beads).toBe(161)
    expect([...countSlots(chart)].reduce((sum, count) => sum + count, 0)).toBe(161)
    expect(slots).toEqual(['A', 'B', 'C', 'D'])
    expect(notes).toEqual([
      'Read as brick stitch, as line 1 says.',
      '23 rows, 161 beads, slots A, B, C, D.',
    ])
  })

  it('reads the peyote band, 10 columns by 84 rows', () => {
    const { chart, beads } = read(sample('mudflat-chart.csv'))
    expect(chart.stitch).toBe('peyote')
    expect([chart.rows.length, beads]).toEqual([84, 840])
    expect(chart.rows.every(({ start, cells }) => start === 0 && cells.length === 10)).toBe(true)
  })

  it.each([
    ['commas', 'A,B,,C'],
    ['semicolons', 'A;B;;C'],
    ['tabs', 'A\tB\t\tC'],
    ['dashes and points for blanks', 'A,B,-,C'],
    ['quotes', '"A","B","","C"'],
    ['spaces', ' A , B , . , C '],
    ['a byte-order mark and carriage returns', '\uFEFFA,B,,C\r\n'],
  ])('takes %s', (_, text) => {
    expect(picture(read(text, 'square').chart)).toEqual(['A B   C'])
  })

  it('sets every second brick row half a bead to the right where no offsets are given', () => {
    const { chart, notes } = read('A,A\nB,B\nA,A', 'brick')
    expect(picture(chart)).toEqual(['A A', ' B B', 'A A'])
    expect(notes).toContain(
      'The file gives no offsets: every second row is set half a bead to the right.',
    )
  })

  it('lays the rows of right-angle weave by turns where no offsets are given', () => {
    const { chart } = read('A\nA,A\nA', 'right-angle-weave')
    expect(picture(chart)).toEqual([' A', 'A A', ' A'])
  })

  it('reads ragged rows, empty rows and small letters', () => {
    const { chart, notes } = read('# loom\n0;a,b\n0;\n4;B\n')
    expect(picture(chart)).toEqual(['A B', '', '    B'])
    expect(notes).toContain('Small letters are read as capitals.')
  })

  it('says that lines are of different lengths, where no offsets say they mean to be', () => {
    const ragged = 'Its lines are not all as long: a shorter one has no beads at its end.'
    expect(read('# loom\nA,B,A\nA\n').notes).toContain(ragged)
    expect(read('# loom\nA,B,A\nA,B,A\n').notes).not.toContain(ragged)
    expect(read('# brick\n1;A,B\n0;A,B,A\n').notes).not.toContain(ragged)
  })

  it('takes half-bead offsets for brick where no stitch is named', () => {
    expect(read('1;A\n0;A,A').chart.stitch).toBe('brick')
  })

  it('skips empty lines but keeps a row of blanks', () => {
    expect(picture(read('A,B\n\n,,\nB', 'square').chart)).toEqual(['A B', '', 'B'])
    expect(picture(read('A\tB\n\t\nB', 'square').chart)).toEqual(['A B', '', 'B'])
  })

  it('reads as the stitch asked for and says what the comment says', () => {
    const { chart, notes } = read('# peyote even\n0;A,B', 'square')
    expect(chart.stitch).toBe('square')
    expect(notes[0]).toBe('Read as square stitch, as asked; line 1 says peyote.')
  })

  it('names the line, what was found and what is accepted', () => {
    expect(refusals('# brick\n0;A,A\n1;A1,B')).toEqual([
      {
        code: 'grid-slot-unknown',
        message: 'grid.csv, line 3: found “A1” in place 1.',
        next: 'A cell is a slot letter (A, B ... Z, AA ...), or empty, - or . for no bead.',
        line: 3,
      },
    ])
  })

  it.each([
    ['bytes that are no text', 'GIF89a\u0001\u0000A,B\nA,B', ['grid-not-text']],
    ['nothing', '', ['grid-empty']],
    ['comments only', '# brick\n\n', ['grid-empty']],
    ['no stitch', 'A,B\nA,B', ['grid-stitch-unknown']],
    [
      'unknown cells in several lines',
      '# loom\nA,7\nB\n#\n?',
      ['grid-slot-unknown 2', 'grid-slot-unknown 5'],
    ],
    ['an offset with a point', '# brick\n1.5;A', ['grid-offset-not-whole 2']],
    ['an offset with a comma', '# brick\n1,5;A', ['grid-offset-not-whole 2']],
    ['an offset below nothing', '# brick\n-1;A', ['grid-offset-not-whole 2']],
    ['a slot beyond the palette', '# loom\n0;CRXP', ['grid-too-many-slots 2']],
    ['a word for a slot', '# loom\n0;amber', ['grid-too-many-slots 2']],
    ['offsets in some lines only', '# brick\n0;A,A\nA,A', ['grid-offset-missing 3']],
    ['brick rows in step', '# brick\n0;A\n1;A\n0;A\n2;A\n0;A', ['grid-row-out-of-step 5']],
    ['odd peyote offsets', '# peyote\n0;A\n1;A', ['grid-row-out-of-step 3']],
    ['right-angle weave in step', '# right-angle weave\n1;A\n1;A', ['grid-row-out-of-step 3']],
    ['a far offset', '# loom\n900000;A', ['grid-offset-not-whole 2']],
    ['too many columns', `# loom\n199998;A,A`, ['grid-too-many-columns 2']],
  ])('refuses %s', (_, text, expected) => {
    expect(codes(text)).toEqual(expected)
  })

  it('takes one row of 100,000 beads and refuses one more', () => {
    const row = (beads: number): string => `# loom\n${'A,'.repeat(beads - 1)}A`
    expect(read(row(100_000)).beads).toBe(100_000)
    expect(codes(row(100_001))).toEqual(['grid-too-many-columns 2'])
  })

  it('refuses more than 4,000,000 cells and more than 100,000 rows', () => {
    const row = `0;${'A,'.repeat(49_999)}A\n`
    expect(codes(`# loom\n${row.repeat(81)}`)).toEqual(['grid-too-many-cells 82'])
    expect(codes(`# loom\n${'A\n'.repeat(100_001)}`)).toEqual(['grid-too-many-rows 100002'])
  })

  it('answers any text at all with a chart or with refusals', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 60 }), (text) => {
        const outcome = readGridFile(text, { fileName: 'any.csv', stitch: 'square' })
        expect(outcome.ok ? outcome.value.chart.rows.length : outcome.error.length).toBeGreaterThan(
          0,
        )
      }),
    )
  })
})

describe('writeGridFile', () => {
  it('writes a line a row under the name of the stitch', () => {
    expect(writeGridFile(drawn('brick', [' A   B', 'C']))).toBe(
      '# brick stitch; offset in half beads; slots\n1;A,-,B\n0;C\n',
    )
  })

  it('writes what reads again to the same chart', () => {
    fc.assert(
      fc.property(anyChart({ slots: 800 }), (chart) => {
        fc.pre(chart.rows.length > 0)
        expect(read(writeGridFile(chart)).chart).toEqual(chart)
      }),
      { numRuns: 400 },
    )
  })
})
