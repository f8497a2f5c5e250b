import type { CallOutput } from '../../../../shared-core/contract/calls.ts'
import type { Format } from '../../../app/format.ts'
import type { FigureValue } from '../../../ui/figure.tsx'

/** How many units stock allows beside what is promised, and what limits them. */
export function makeableFigure(
  cover: CallOutput<'orders.cover'> | undefined,
  unitName: string,
  format: Format,
): FigureValue {
  const line = cover?.lines[0]
  const limit = line?.limits[0]
  return {
    label: 'Makeable now',
    value: line && format.counted(line.coveredUnits, unitName),
    note: limit === undefined ? undefined : `Limited by ${limit.name}`,
  }
}
