import type { DecimalMark } from '../../../../shared-core/units/parse-options.ts'
import type { Spread } from '../../../../shared-core/units/spread.ts'
import { figure, rangeWords } from './table-words.ts'

/** A figure with its range under it. */
export function SpreadCell({
  spread,
  decimal,
}: Readonly<{ spread: Spread; decimal: DecimalMark }>) {
  return (
    <span className="tables-figure tabular">
      {figure(spread.value, decimal)}
      <small>{rangeWords(spread, decimal)}</small>
    </span>
  )
}
