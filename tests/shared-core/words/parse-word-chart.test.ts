import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { indexBeads } from '../../../shared-core/chart/bead-index.ts'
import type { StitchKind } from '../../../shared-core/chart/chart.ts'
import { countBeads } from '../../../shared-core/chart/count-slots.ts'
import { normaliseChart } from '../../../shared-core/chart/normalise-chart.ts'
import type { Refusal } from '../../../shared-core/refusal.ts'
import { parseWordChart } from '../../../shared-core/words/parse-word-chart.ts'
import { wordChartText, writeWordChart } from '../../../shared-core/words/write-word-chart.ts'
import { anyChart } from '../chart/any-chart.ts'
import { picture } from '../chart/picture.ts'
import { sample } from './sample-chart.ts'
import { parsed } from './words-of-charts.ts'

const refusals = (text: string, stitch: StitchKind): readonly Refusal[] => {
  const outcome = parseWordChart(text, { stitch })
  return outcome.ok ? [] : outcome.error
}

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
