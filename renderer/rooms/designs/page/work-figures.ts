import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { Format } from '../../../app/format.ts'
import type { FigureValue } from '../../../ui/figure.tsx'
import type { PlainReading } from '../reading/plain-reading.ts'
import { pieceMass } from './piece-mass.ts'

/** Beads, weight, thread and hours of one unit; each holds its place while it is being read. */
export function workFigures(
  reading: PlainReading | undefined,
  body: DesignBody,
  format: Format,
): readonly FigureValue[] {
  const thread = reading?.thread
  const labour = reading?.labour
  const mass = reading && pieceMass(reading, body)
  return [
    {
      label: `Beads a ${body.unitName}`,
      value: reading && format.count(reading.beads),
      basis: reading && 'exact',
    },
    {
      label: mass?.isHalf === true ? 'Weight of one' : `Weight of a ${body.unitName}`,
      value: mass && format.mass(mass.massMg.value),
      basis: mass?.massMg.basis,
      range: mass && format.range(mass.massMg, format.mass),
      note: mass?.drags === true ? 'Over 10 g an earring drags' : undefined,
    },
    {
      label: 'Thread in it',
      value: thread && format.thread(thread.inPieceMm.value),
      basis: thread?.inPieceMm.basis,
      range: thread && format.range(thread.inPieceMm, format.thread),
    },
    {
      label: 'Thread to cut',
      value: thread && format.thread(thread.spoolMm.value),
      basis: thread?.spoolMm.basis,
      range: thread && format.range(thread.spoolMm, format.thread),
      note: thread && cutWords(thread.cutMm, format),
    },
    {
      label: 'Time at the bench',
      value: labour && format.duration(labour.totalS.value),
      basis: labour?.totalS.basis,
      range: labour && format.range(labour.totalS, format.duration),
      note: labour && `${format.duration(labour.stitchingS.value)} stitching`,
    },
  ]
}

/** Lengths told one by one; more are told by their range. */
const MOST_TOLD = 4

/** The lengths to cut: `2 of 1.23 m`, `1.33, 1.32 and 1.35 m`, `9 of 1.2 m to 1.4 m`. */
export function cutWords(cutMm: readonly number[], format: Format): string {
  const lengths = cutMm.map((mm) => format.thread(mm))
  const distinct = [...new Set(lengths)]
  if (distinct.length <= 1) return distinct.map((one) => `${cutMm.length} of ${one}`).join('')
  if (lengths.length <= MOST_TOLD) return lengths.join(' + ')
  const [least, most] = [Math.min(...cutMm), Math.max(...cutMm)]
  return `${cutMm.length} of ${format.thread(least)} to ${format.thread(most)}`
}
