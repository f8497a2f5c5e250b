import type { ReactNode } from 'react'

/** One column: its heading and what a row shows in it. The first column names the row. */
export type Column<R> = Readonly<{
  key: string
  head: string
  cell: (row: R) => ReactNode
  /** `end` for figures, which then line up by their last digit. */
  align?: 'start' | 'end'
  /** Makes the column sortable; `null` sorts last either way. */
  sortBy?: (row: R) => string | number | null
  width?: string
}>

/** Which column orders the rows. */
export type Sort = Readonly<{ key: string; descending: boolean }>

const collator = new Intl.Collator('en-GB', { numeric: true, sensitivity: 'base' })

/** The rows in the order asked for; equal rows keep the order they came in. */
export function sortRows<R>(
  rows: readonly R[],
  columns: readonly Column<R>[],
  sort: Sort | null,
): readonly R[] {
  const by = columns.find((column) => column.key === sort?.key)?.sortBy
  if (by === undefined || sort === null) return rows
  const direction = sort.descending ? -1 : 1
  return rows
    .map((row) => ({ row, value: by(row) }))
    .sort((a, b) => compare(a.value, b.value, direction))
    .map(({ row }) => row)
}

function compare(a: string | number | null, b: string | number | null, direction: 1 | -1): number {
  if (a === null || b === null) return Number(a === null) - Number(b === null)
  if (typeof a === 'number' && typeof b === 'number') return (a - b) * direction
  return collator.compare(String(a), String(b)) * direction
}
