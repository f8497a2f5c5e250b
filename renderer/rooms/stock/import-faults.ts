import type { Refusal } from '../../../shared-core/refusal.ts'
import type { StockColumn } from './import-words.ts'

/** Whether a fault is mended by saying what a column holds, and so stands at that choice. */
export function isOfColumn({ code }: Pick<Refusal, 'code'>): boolean {
  return code === 'column-twice' || code === 'no-code-column'
}

/**
 * Where a fault of the columns is mended, counted from 0: at the last column that holds what another one
 * does; else at the first that holds nothing yet.
 */
export function refusedColumn(
  { code }: Pick<Refusal, 'code'>,
  columns: readonly StockColumn[],
): number {
  if (code === 'column-twice') {
    return columns.findLastIndex(
      (column, at) => column !== 'ignore' && columns.indexOf(column) !== at,
    )
  }
  return Math.max(0, columns.indexOf('ignore'))
}
