import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { indexBeads } from '../../../shared-core/chart/bead-index.ts'
import { countBeads } from '../../../shared-core/chart/count-slots.ts'
import { writeWordChart } from '../../../shared-core/words/write-word-chart.ts'
import { anyChart } from '../chart/any-chart.ts'
import { drawn } from '../chart/picture.ts'
import { sample } from './sample-chart.ts'
import { lines } from './words-of-charts.ts'

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
