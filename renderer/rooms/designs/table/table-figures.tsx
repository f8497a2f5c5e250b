import { memo, useMemo } from 'react'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { Format } from '../../../app/format.ts'
import { useCall } from '../../../app/use-call.ts'
import type { FigureValue } from '../../../ui/figure.tsx'
import { FigureList } from '../../../ui/figure-list.tsx'
import { sizeFigure } from '../figures/first-figures.ts'
import { costFigures } from '../page/cost-figures.ts'
import type { Colourway, DesignDetail } from '../page/open-design.ts'
import { workFigures } from '../page/work-figures.ts'
import type { PlainReading } from '../reading/plain-reading.ts'
import { type DrawnMoney, drawnMoney } from './drawn-money.ts'

type TableFiguresProps = Readonly<{
  design: DesignDetail
  body: DesignBody
  reading: PlainReading | undefined
  /** Whether the figures are still those of some strokes ago. */
  isLate: boolean
  colourway: Colourway | undefined
  format: Format
}>

/** What follows from the drawing as it stands under the brush; still while the brush moves over a giant. */
export const TableFigures = memo(function TableFigures(props: TableFiguresProps) {
  const { body, reading, isLate, format } = props
  const impossible = reading?.warnings.filter(({ severity }) => severity === 'impossible') ?? []
  return (
    <>
      <FigureList
        big={1}
        figures={[
          sizeFigure(reading, format),
          ...workFigures(reading, body, format),
          ...useMoneyFigures(props),
        ]}
      />
      {impossible.slice(0, 3).map(({ code, partId, message, next }) => (
        <p key={`${code} ${partId} ${message}`} className="table-warning">
          <strong>{message}</strong> {next}
        </p>
      ))}
      <p className="designs-quiet" role="status">
        {isLate ? 'Reading the last strokes…' : ''}
      </p>
    </>
  )
})

function useMoneyFigures({
  design,
  body,
  reading,
  colourway,
  format,
}: TableFiguresProps): readonly FigureValue[] {
  const isFilled = colourway !== undefined && Object.keys(colourway.materials).length > 0
  const stock = useCall(
    'drafts.stock',
    colourway === undefined ? null : { designId: design.id, colourwayId: colourway.id },
  )
  const money = useMemo(
    () =>
      stock.value === undefined || reading === undefined
        ? undefined
        : drawnMoney(stock.value, reading, body),
    [stock.value, reading, body],
  )
  if (colourway === undefined) return []
  const answer = money && stock.value && { inputs: stock.value.inputs, sheet: money.sheet }
  return [
    ...costFigures(answer, body.unitName, format),
    ...(isFilled ? [makeableNow(money, stock.value?.materials ?? [], body.unitName, format)] : []),
  ]
}

function makeableNow(
  money: DrawnMoney | undefined,
  materials: readonly Readonly<{ materialId: string; name: string }>[],
  unitName: string,
  format: Format,
): FigureValue {
  const found = money?.makeable
  const limit = materials.find(({ materialId }) => materialId === found?.limits[0]?.materialId)
  const gaps = found?.unassigned.length ?? 0
  const note =
    gaps > 0
      ? `${format.counted(gaps, 'material')} not chosen yet`
      : limit && `Limited by ${limit.name}`
  return {
    label: 'Makeable now',
    value: found && format.counted(found.units, unitName),
    note,
  }
}
