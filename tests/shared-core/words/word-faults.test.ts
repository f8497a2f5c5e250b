import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { chartFromOutline } from '../../../shared-core/chart/outlines/chart-from-outline.ts'
import { parseWordChart } from '../../../shared-core/words/parse-word-chart.ts'
import { writeWordChart } from '../../../shared-core/words/write-word-chart.ts'

/** The lines of a brick diamond, in the order of work. */
function linesOf(columns: number): readonly string[] {
  const drawn = chartFromOutline({
    kind: 'diamond',
    stitch: 'brick',
    columns,
    rows: 2 * columns - 1,
  })
  if (!drawn.ok) throw new Error(drawn.error.message)
  return writeWordChart(drawn.value.chart).lines.map(({ text }) => text)
}

function faultsOf(lines: readonly string[]): readonly (number | undefined)[] {
  const read = parseWordChart(lines.join('\n'), { stitch: 'brick' })
  return read.ok ? [] : read.error.map(({ line }) => line)
}

describe('parseWordChart with faults', () => {
  it('names the line that cannot be read, and not the rows that hang on it', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 9 }).chain((columns) =>
          fc.record({
            lines: fc.constant(linesOf(columns)),
            at: fc.integer({ min: 0, max: 2 * columns - 2 }),
          }),
        ),
        ({ lines, at }) => {
          const broken = lines.with(at, `${lines[at]}, (1)?`)
          expect(faultsOf(broken)).toEqual([at + 1])
          expect(faultsOf(lines)).toEqual([])
        },
      ),
    )
  })

  it('names two lines that are wrong apart from each other', () => {
    const lines = linesOf(7)
    const broken = lines.with(2, `${lines[2]} (1)?`).with(9, `${lines[9]} two`)
    expect(faultsOf(broken)).toEqual([3, 10])
  })
})
