import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { Format } from '../../../app/format.ts'
import { FigureList } from '../../../ui/figure-list.tsx'
import { sizeFigure } from '../figures/first-figures.ts'
import type { Colourway, DesignDetail } from '../page/open-design.ts'
import { workFigures } from '../page/work-figures.ts'
import type { PlainReading } from '../reading/plain-reading.ts'

type TableFiguresProps = Readonly<{
  design: DesignDetail
  body: DesignBody
  reading: PlainReading | undefined
  /** Whether the figures are still those of some strokes ago. */
  isLate: boolean
  colourway: Colourway | undefined
  format: Format
}>

/** What follows from the drawing as it stands under the brush. */
export function TableFigures({ body, reading, isLate, format }: TableFiguresProps) {
  return (
    <>
      <FigureList
        big={1}
        figures={[sizeFigure(reading, format), ...workFigures(reading, body, format)]}
      />
      <p className="designs-quiet" role="status">
        {isLate ? 'Reading the last strokes…' : ''}
      </p>
    </>
  )
}
