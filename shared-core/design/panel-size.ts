import type { BeadForm } from '../beads/bead-form.ts'
import type { Thread } from '../beads/thread.ts'
import type { Chart } from '../chart/chart.ts'
import { chartBounds } from '../chart/layout.ts'
import { stitchPitch, threadGapMm } from '../chart/stitch-pitch.ts'
import { type Spread, weakerBasis } from '../units/spread.ts'

/** Finished size of a panel in mm, with the range its beads and thread leave. */
export function panelSize(
  chart: Chart,
  form: BeadForm,
  thread: Thread,
): Readonly<{ widthMm: Spread; heightMm: Spread }> {
  const at = (which: 'low' | 'value' | 'high') => {
    const size = {
      diameterMm: form.diameterMm[which],
      lengthMm: form.lengthMm[which],
      threadMm: threadGapMm(thread.diameterMm[which]),
    }
    const { left, top, right, bottom } = chartBounds(chart, stitchPitch(chart.stitch, size))
    return { width: right - left, height: bottom - top }
  }
  const [low, value, high] = [at('low'), at('value'), at('high')]
  const basis = weakerBasis(form.diameterMm.basis, form.lengthMm.basis)
  return {
    widthMm: { value: value.width, low: low.width, high: high.width, basis },
    heightMm: { value: value.height, low: low.height, high: high.height, basis },
  }
}
