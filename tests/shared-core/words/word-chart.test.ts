import { readFileSync } from 'node:fs'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { indexBeads } from '../../../shared-core/chart/bead-index.ts'
import type { Chart, StitchKind } from '../../../shared-core/chart/chart.ts'
import { countBeads } from '../../../shared-core/chart/count-slots.ts'
import { normaliseChart } from '../../../shared-core/chart/normalise-chart.ts'
import { readGridFile } from '../../../shared-core/chart/read-grid-file.ts'
import type { Refusal } from '../../../shared-core/refusal.ts'
import { parseWordChart } from '../../../shared-core/words/parse-word-chart.ts'
import {
  type WordChartOptions,
  wordChartText,
  writeWordChart,
} from '../../../shared-core/words/write-word-chart.ts'
import { anyChart } from '../chart/any-chart.ts'
import { drawn, picture } from '../chart/picture.ts'

const lines = (chart: Chart, options: WordChartOptions = {}): readonly string[] =>
  writeWordChart(chart, options).lines.map(({ text }) => text)

const parsed = (text: string, stitch: StitchKind): Chart => {
  const outcome = parseWordChart(text, { stitch })
  if (!outcome.ok) throw new Error(outcome.error.map(({ message }) => message).join('\n'))
  return outcome.value.chart
}

const refusals = (text: string, stitch: StitchKind): readonly Refusal[] => {
  const outcome = parseWordChart(text, { stitch })
  return outcome.ok ? [] : outcome.error
}

const sample = (name: string): Chart => {
  const text = readFileSync(new URL(`../../fixtures/samples/${name}`, import.meta.url), 'utf8')
  const outcome = readGridFile(text, { fileName: name })
  if (!outcome.ok) throw new Error(name)
  return outcome.value.chart
}

describe('writeWordChart', () => {
  it('begins brick at its widest row, the ladder, goes up and then down, and says every end', () => {
    expect(lines(drawn('brick', [' A B', 'A C D', ' B B', '  C']))).toEqual([
      'Row 2, ladder (L): (1)A, (1)C, (1)D',
      'Row 1 (R) [decrease ½ at both ends]: (1)B, (1)A',
      'Row 3 (L) [decrease ½ at both ends]: (2)B',
      'Row 4 (R) [decrease ½ at both ends]: (1)C',
    ])
  })

  it('names growing and shrinking ends of brick and starts where it is told', () => {
    const chart = drawn('brick', [' A A', 'A A', ' A A A'])
    const options = { startRow: 0, startSide: 'right', start: 'two-bead' } as const
    expect(lines(chart, options)).toEqual([
      'Row 1, start (R) [begins ½ from the left]: (2)A',
      'Row 2 (L) [increase ½ at left, decrease ½ at right]: (2)A',
      'Row 3 (R) [decrease ½ at left, increase 1½ at right]: (3)A',
    ])
  })

  it('names rows that split', () => {
    expect(lines(drawn('brick', [' A   A', 'A A A A']))).toEqual([
      'Row 2, ladder (L): (4)A',
      'Row 1 (R) [decrease ½ at both ends]: (1)A, (1)gap, (1)A — in 2 parts',
    ])
  })

  it('strings the first two rows of peyote together and goes on diagonally, every second column', () => {
    expect(lines(drawn('peyote', ['A B C D', 'E F G H']))).toEqual([
      'Rows 1 and 2, strung together (R): (1)D, (1)C, (1)B, (1)A',
      'Row 3 (L): (1)E, (1)G',
      'Row 4 (R): (1)H, (1)F',
    ])
  })

  it('begins odd peyote at either end, because both its ends stand out', () => {
    expect(lines(drawn('peyote', ['A B C', 'D E F']))).toEqual([
      'Rows 1 and 2, strung together (L): (1)A, (1)B, (1)C',
      'Row 3 (R): (1)F, (1)D',
      'Row 4 (L): (1)E',
    ])
  })

  it('strings peyote worked upwards from its last row', () => {
    expect(lines(drawn('peyote', ['A B', 'C D']), { startRow: 1 })).toEqual([
      'Rows 3 and 4, strung together (L) [begins 0 from the left]: (1)C, (1)D',
      'Row 2 (R): (1)B',
      'Row 1 (L): (1)A',
    ])
  })

  it('counts the decreases of shaped peyote in columns', () => {
    const chart = drawn('peyote', ['A A A A A', 'A A A A A', '  A A A'])
    expect(lines(chart).slice(3)).toEqual([
      'Row 5 (R) [decrease 2 at both ends]: (1)A',
      'Row 6 (L): (2)A',
    ])
  })

  it('reads every loom row from the same side and square stitch by turns', () => {
    expect(lines(drawn('loom', ['A B', 'A B']))).toEqual([
      'Row 1 (L): (1)A, (1)B',
      'Row 2 (L): (1)A, (1)B',
    ])
    expect(lines(drawn('square', ['A B', 'A B', '  B']))).toEqual([
      'Row 1 (L): (1)A, (1)B',
      'Row 2 (R): (1)B, (1)A',
      'Row 3 (L) [decrease 1 at left]: (1)B',
    ])
  })

  it('names lying and standing rows of right-angle weave', () => {
    expect(lines(drawn('right-angle-weave', [' A A', 'B B B', ' A A']))).toEqual([
      'Row 1, lying (L): (2)A',
      'Row 2, standing (L): (3)B',
      'Row 3, lying (L): (2)A',
    ])
  })

  it('follows the order a route picks beads up in, a line for each part', () => {
    const chart = drawn('brick', ['A     B', ' A   B', '  C C'])
    const index = indexBeads(chart)
    // The start row from the left, then each lobe to its tip.
    expect(lines(chart, { worked: { index, picks: [4, 5, 2, 0, 3, 1] } })).toEqual([
      'Row 3, ladder (L) [begins 1 from the left]: (2)C',
      'Row 2 (L) [increase ½ at left, decrease 1½ at right]: (1)A',
      'Row 1 (L) [increase ½ at left, decrease ½ at right]: (1)A',
      'Row 2, another part (L) [decrease 1½ at left, increase ½ at right]: (1)B',
      'Row 1, another part (L) [decrease ½ at left, increase ½ at right]: (1)B',
    ])
  })

  it('takes the side of a row from its first and last bead', () => {
    const chart = drawn('square', ['A B C', 'A B C'])
    const picks = [0, 1, 2, 5, 4, 3]
    expect(lines(chart, { worked: { index: indexBeads(chart), picks } })[1]).toBe(
      'Row 2 (R): (1)C, (1)B, (1)A',
    )
  })

  it('says how to read it', () => {
    expect(writeWordChart(sample('tidewrack-chart.csv')).intro[0]).toBe(
      'Brick stitch: 161 beads in 23 rows, numbered from the top.',
    )
    expect(writeWordChart({ stitch: 'brick', rows: [] })).toEqual({ intro: [], lines: [] })
  })

  it('tells every bead once', () => {
    fc.assert(
      fc.property(anyChart(), (chart) => {
        const text = lines(chart).join('\n')
        const told = [...text.matchAll(/\((\d+)\)[A-Z]/g)].reduce(
          (sum, [, n]) => sum + Number(n),
          0,
        )
        expect(told).toBe(countBeads(chart))
      }),
    )
  })
})

describe('parseWordChart', () => {
  it('reads what writeWordChart writes back to the same chart, in every stitch', () => {
    fc.assert(
      fc.property(anyChart({ slots: 30 }), (chart) => {
        fc.pre(countBeads(chart) > 0)
        const text = wordChartText(writeWordChart(chart))
        expect(parsed(text, chart.stitch)).toEqual(normaliseChart(chart).chart)
      }),
      { numRuns: 2000 },
    )
  })

  it('reads it back whatever row and side the work begins at', () => {
    fc.assert(
      fc.property(
        anyChart(),
        fc.nat(9),
        fc.constantFrom('left' as const, 'right' as const),
        (chart, startRow, startSide) => {
          fc.pre(countBeads(chart) > 0)
          const text = wordChartText(writeWordChart(chart, { startRow, startSide }))
          expect(parsed(text, chart.stitch)).toEqual(normaliseChart(chart).chart)
        },
      ),
      { numRuns: 2000 },
    )
  })

  it('reads it back whatever order a route picks the beads up in', () => {
    const shuffled = anyChart({ maxRows: 5, maxCells: 5 }).chain((chart) => {
      const index = indexBeads(chart)
      const beads = Array.from({ length: index.count }, (_, bead) => bead)
      return fc.record({
        chart: fc.constant(chart),
        picks: fc.shuffledSubarray(beads),
      })
    })
    fc.assert(
      fc.property(shuffled, ({ chart, picks }) => {
        fc.pre(countBeads(chart) > 0)
        const written = writeWordChart(chart, { worked: { index: indexBeads(chart), picks } })
        expect(parsed(wordChartText(written), chart.stitch)).toEqual(normaliseChart(chart).chart)
      }),
      { numRuns: 2000 },
    )
  })

  it.each(['tidewrack-chart.csv', 'mudflat-chart.csv'])('reads %s back from its words', (name) => {
    const chart = sample(name)
    expect(parsed(wordChartText(writeWordChart(chart)), chart.stitch)).toEqual(chart)
  })

  it('reads brick as makers type it, ends told by the number of beads', () => {
    const typed = 'Tidewrack, small\n\nRow 3: 3A\nrow 2: 2A\nR1 (L) A\n4. (1)A (1)B'
    expect(picture(parsed(typed, 'brick'))).toEqual(['  A', ' A A', 'A A A', ' B A'])
  })

  it('steps a straight brick strip out where each row begins', () => {
    const typed = 'Row 1 (L): (2)A\nRow 2 (R): (2)B\nRow 3 (L): (2)C'
    expect(picture(parsed(typed, 'brick'))).toEqual(['A A', ' B B', 'C C'])
  })

  it('reads peyote typed with an ampersand from either side', () => {
    const even = 'Row 1 & 2 (L): (1)A, (1)B, (2)C\nRow 3 (R): (2)D'
    // The last bead strung is a high one, so that an even count begun at the left begins low.
    expect(picture(parsed(even, 'peyote'))).toEqual(['  A B C C', '    D   D'])
  })

  it('reads signs, halves and decimals at the ends', () => {
    const told = [
      '[+½ left, -0.5 right]',
      '[left +1/2; right -1/2]',
      '[increase 0,5 at left, −½ right]',
    ]
    for (const marks of told) {
      expect(picture(parsed(`Row 1: 2A\nRow 2 ${marks}: 2B`, 'brick'))).toEqual([' A A', 'B B'])
    }
  })

  it.each([
    ['no rows', 'Tidewrack', 'brick', ['word-empty undefined']],
    ['a run that is none', 'Row 1: (2)A, (x)B', 'square', ['word-run-unknown 1']],
    ['a run of nothing', 'Row 1: (0)A', 'square', ['word-run-unknown 1']],
    ['a row of nothing', '\nRow 1:', 'square', ['word-row-empty 2']],
    ['row nought', 'Row 0: (2)A', 'square', ['word-row-unknown 1']],
    ['text between rows', 'Row 1: A\nthen turn', 'square', ['word-row-unknown 2']],
    ['two rows together that do not meet', 'Rows 1 and 3: (4)A', 'peyote', ['word-row-unknown 1']],
    ['two rows together in brick', 'Rows 1 and 2: (4)A', 'brick', ['word-row-unknown 1']],
    ['a row told twice', 'Row 1: (2)A\nRow 2: (2)A\nRow 2: (2)B', 'square', ['word-row-twice 3']],
    [
      'brick ends by whole beads',
      'Row 1: (3)A\nRow 2 [-1 left, +1 right]: (3)A',
      'brick',
      ['word-row-out-of-step 2'],
    ],
    [
      'ends that do not agree',
      'Row 1: (3)A\nRow 2 [-½ both ends]: (3)A',
      'brick',
      ['word-ends-disagree 2'],
    ],
    ['ends that cannot be told', 'Row 1: (5)A\nRow 2: (3)A', 'brick', ['word-ends-unclear 2']],
    ['narrower square rows', 'Row 1: (5)A\nRow 2: (3)A', 'square', ['word-ends-unclear 2']],
    ['marks that are none', 'Row 1: A\nRow 2 [wider]: A', 'square', ['word-ends-unknown 2']],
    ['a row past the limits', 'Row 1: (900000)A', 'loom', ['word-row-too-long 1']],
    ['a far row', 'Row 1: A\nRow 199999: A', 'loom', ['word-ends-unclear 2']],
  ] as const)('refuses %s and names the line', (_, text, stitch, expected) => {
    expect(refusals(text, stitch).map(({ code, line }) => `${code} ${line}`)).toEqual(expected)
  })

  it('answers any text at all with a chart or with refusals', () => {
    const scrap = fc.constantFrom(
      'Row ',
      '1',
      '2',
      ': ',
      '(3)A',
      ', ',
      'B',
      '[',
      '½ left',
      ']',
      '\n',
      '(R)',
      '-',
      '&',
    )
    const text = fc.oneof(
      fc.string(),
      fc.array(scrap, { maxLength: 30 }).map((parts) => parts.join('')),
    )
    fc.assert(
      fc.property(text, fc.constantFrom('brick' as const, 'peyote' as const), (typed, stitch) => {
        const outcome = parseWordChart(typed, { stitch })
        if (outcome.ok) expect(outcome.value.beads).toBe(countBeads(outcome.value.chart))
        else expect(outcome.error.length).toBeGreaterThan(0)
      }),
      { numRuns: 2000 },
    )
  })
})
