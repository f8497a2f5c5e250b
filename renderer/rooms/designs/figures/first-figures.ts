import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { weakerBasis } from '../../../../shared-core/units/spread.ts'
import type { Format } from '../../../app/format.ts'
import type { FigureValue } from '../../../ui/figure.tsx'
import type { PlainReading } from '../reading/plain-reading.ts'
import { sizeRange, sizeWords } from './size-words.ts'

/** The four figures a chart is judged by at first sight; each holds its place while it is being read. */
export function firstFigures(
  reading: PlainReading | undefined,
  { unitName }: Pick<DesignBody, 'unitName'>,
  format: Format,
): readonly FigureValue[] {
  const thread = reading?.thread.inPieceMm
  const time = reading?.labour.totalS
  return [
    {
      label: `Beads a ${unitName}`,
      value: reading && format.count(reading.beads),
      ...(reading === undefined ? {} : { basis: 'exact' as const }),
    },
    sizeFigure(reading, format),
    {
      label: 'Thread in it',
      value: thread && format.thread(thread.value),
      basis: thread?.basis,
      range: thread && format.range(thread, format.thread),
    },
    {
      label: 'Time at the bench',
      value: time && format.duration(time.value),
      basis: time?.basis,
      range: time && format.range(time, format.duration),
    },
  ]
}

/** Finished size as it hangs. */
export function sizeFigure(reading: PlainReading | undefined, format: Format): FigureValue {
  return {
    label: 'Finished size',
    value: reading && sizeWords(reading, format),
    basis: reading && weakerBasis(reading.widthMm.basis, reading.heightMm.basis),
    range: reading && sizeRange(reading, format),
  }
}
