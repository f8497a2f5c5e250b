import type { BeadForm } from '../beads/bead-form.ts'
import { type Spread, weakerBasis } from '../units/spread.ts'
import type { Chart, StitchKind } from './chart.ts'
import { chartBounds, type LayoutOptions } from './layout.ts'
import { type BeadSize, stitchPitch } from './stitch-pitch.ts'

/** A chart's finished size in mm, with the range the bead form's own spread leaves. */
export type ChartSize = Readonly<{ widthMm: Spread; heightMm: Spread }>

/** Thread can add this much to each row of flat peyote (two trade rows of 0.02 to 0.05 mm). */
const PEYOTE_ROW_SLACK_MM = 0.1

/**
 * The finished size of a chart, worked flat.
 *
 * Nominal, least and greatest bead sizes each give a size: beads of one lot are small or large
 * together, so the range grows with the number of beads. Peyote may also gain the thread between its
 * rows, and square stitch the thread between its columns; both stand in the upper end alone. Looks at
 * row ends only.
 *
 * @source Trade practice: flat peyote is rows/2 x D long and 0.02 to 0.05 mm more a row; square
 *   stitch is columns x (L + thread) wide.
 */
export function chartSize(
  chart: Chart,
  form: BeadForm,
  { threadMm = 0 }: LayoutOptions = {},
): ChartSize {
  const [low, value, high] = (['low', 'value', 'high'] as const).map((end) =>
    extent(chart, sizeAt(form, end, threadMm)),
  ) as [Extent, Extent, Extent]
  const slack = threadSlack(chart, value, { form, threadMm })
  const basis = weakerBasis(form.diameterMm.basis, form.lengthMm.basis)
  return {
    widthMm: { low: low.width, value: value.width, high: high.width + slack.width, basis },
    heightMm: { low: low.height, value: value.height, high: high.height + slack.height, basis },
  }
}

/**
 * Beads in a square centimetre of work: 100 mm2 over the share of the lattice each bead takes.
 *
 * @example
 * // 11/0 cylinders, 1.6 by 1.3 mm, touching: 48 in brick or peyote.
 */
export function beadsPerCm2(
  stitch: StitchKind,
  form: BeadForm,
  { threadMm = 0 }: LayoutOptions = {},
): Spread {
  const density = (end: 'low' | 'value' | 'high'): number => {
    const { halfMm, downMm } = stitchPitch(stitch, sizeAt(form, end, threadMm))
    return 100 / (2 * halfMm * downMm)
  }
  return {
    low: density('high'),
    value: density('value'),
    high: density('low'),
    basis: weakerBasis(form.diameterMm.basis, form.lengthMm.basis),
  }
}

type Extent = Readonly<{ width: number; height: number }>

function extent(chart: Chart, size: BeadSize): Extent {
  const { left, top, right, bottom } = chartBounds(chart, stitchPitch(chart.stitch, size))
  return { width: right - left, height: bottom - top }
}

function sizeAt(form: BeadForm, end: 'low' | 'value' | 'high', threadMm: number): BeadSize {
  return { diameterMm: form.diameterMm[end], lengthMm: form.lengthMm[end], threadMm }
}

function threadSlack(
  { stitch }: Chart,
  { width, height }: Extent,
  { form, threadMm }: Readonly<{ form: BeadForm; threadMm: number }>,
): Extent {
  const rows = Math.round(height / form.diameterMm.value)
  const columns = Math.round(width / form.lengthMm.value)
  return {
    width: stitch === 'square' ? Math.max(0, columns - 1) * threadMm : 0,
    height: stitch === 'peyote' ? rows * PEYOTE_ROW_SLACK_MM : 0,
  }
}
