import { expect, it } from 'vitest'
import { clockText } from '../../../renderer/rooms/bench/reader/clock-text.ts'
import { lineMs } from '../../../renderer/rooms/bench/reader/line-ms.ts'
import { mapOf } from '../../shared-core/bench/written.ts'
import { designOf, panelOf } from '../../shared-core/design/a-design.ts'
import { drawChart } from '../../shared-core/stitches/draw-chart.ts'

const { lines } = mapOf(designOf([panelOf(drawChart('brick', ['A-A-A-', '.A-A-', 'A-A-A-']))]))

it('the timer leaves a row its beads, a step its own, and waits at thread and ends', () => {
  const row = lines.find(({ line }) => line.kind === 'row' && line.steps.length > 1)?.line
  const ends = lines.find(({ line }) => line.kind === 'ends')?.line
  const beads = row?.steps.reduce((sum, step) => sum + step.beads.length, 0) ?? 0
  expect(row && lineMs(row, 0, { stride: 'row', beadS: 5 })).toBe(beads * 5_000)
  expect(row && lineMs(row, 0, { stride: 'step', beadS: 5 })).toBe(
    (row?.steps[0]?.beads.length ?? 0) * 5_000,
  )
  expect(ends && lineMs(ends, 0, { stride: 'row', beadS: 5 })).toBeUndefined()
})

it('the clock shows hours, minutes and seconds', () => {
  expect([0, 59.6, 3_725].map(clockText)).toEqual(['0:00:00', '0:01:00', '1:02:05'])
})
