import { type KeyboardEvent, type ReactNode, useMemo, useRef, useState } from 'react'
import { Icon } from './icon.tsx'
import { type Column, type Sort, sortRows } from './table-column.ts'
import { useRowWindow, WHOLE_UP_TO } from './use-row-window.ts'
import './table.css'

type TableProps<R> = Readonly<{
  /** Names the table; spoken, and shown when `captionShown`. */
  caption: string
  captionShown?: boolean
  rows: readonly R[]
  columns: readonly Column<R>[]
  rowKey: (row: R) => string
  /** Makes each row open something: its name becomes a button, and the whole row takes a click. */
  onOpen?: (row: R) => void
  /** The row that is open now. */
  openKey?: string | undefined
  /** Small buttons at the end of each row. */
  actions?: (row: R) => ReactNode
  /** What stands in place of rows when there are none. */
  empty?: ReactNode
  firstSort?: Sort
  /** A last row of sums, cell by column key. */
  foot?: Readonly<Record<string, ReactNode>>
}>

/** Rows of figures: sticky heads, tabular digits, sortable, opened by click, Enter or arrow keys. */
export function Table<R>(props: TableProps<R>) {
  const { caption, captionShown = false, rows, columns, actions, empty, foot } = props
  const [sort, setSort] = useState<Sort | null>(props.firstSort ?? null)
  const sorted = useMemo(() => sortRows(rows, columns, sort), [rows, columns, sort])
  const box = useRef<HTMLDivElement>(null)
  const { from, to, abovePx, belowPx } = useRowWindow(box, sorted.length)
  const width = columns.length + (actions === undefined ? 0 : 1)
  if (rows.length === 0 && empty !== undefined) return empty
  const isLong = sorted.length > WHOLE_UP_TO
  return (
    // What scrolls must scroll by key too.
    <div
      ref={box}
      className={`table-box${isLong ? ' table-long' : ''}`}
      tabIndex={isLong ? 0 : undefined}
    >
      <table className="table" aria-rowcount={sorted.length + 1}>
        <caption className={captionShown ? 'table-caption' : 'unseen'}>{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <Head key={column.key} column={column} sort={sort} onSort={setSort} />
            ))}
            {actions !== undefined && (
              <th scope="col">
                <span className="unseen">Actions</span>
              </th>
            )}
          </tr>
        </thead>
        <tbody onKeyDown={moveBetweenRows}>
          <Spacer px={abovePx} width={width} />
          {sorted.slice(from, to).map((row, index) => (
            <Row key={props.rowKey(row)} {...props} row={row} number={from + index + 2} />
          ))}
          <Spacer px={belowPx} width={width} />
        </tbody>
        {foot !== undefined && (
          <tfoot>
            <tr>
              {columns.map(({ key, align }) => (
                <td key={key} className={cellClass(align)}>
                  {foot[key]}
                </td>
              ))}
              {actions !== undefined && <td />}
            </tr>
          </tfoot>
        )}
      </table>
    </div>
  )
}

function Head<R>({
  column,
  sort,
  onSort,
}: Readonly<{ column: Column<R>; sort: Sort | null; onSort: (sort: Sort) => void }>) {
  const isSorted = sort?.key === column.key
  const order = !isSorted ? 'none' : sort.descending ? 'descending' : 'ascending'
  const isSortable = column.sortBy !== undefined
  return (
    <th
      scope="col"
      className={cellClass(column.align)}
      style={{ width: column.width }}
      aria-sort={isSortable ? order : undefined}
    >
      {isSortable ? (
        <button
          type="button"
          className="table-sort"
          onClick={() => onSort({ key: column.key, descending: order === 'ascending' })}
        >
          {column.head}
          {isSorted && <Icon name={sort.descending ? 'down' : 'up'} size={14} />}
        </button>
      ) : (
        column.head
      )}
    </th>
  )
}

function Row<R>({
  row,
  columns,
  rowKey,
  onOpen,
  openKey,
  actions,
  number,
}: TableProps<R> & Readonly<{ row: R; number: number }>) {
  const [first, ...others] = columns
  return (
    <tr
      className={onOpen === undefined ? undefined : 'table-opens'}
      aria-rowindex={number}
      data-open={rowKey(row) === openKey || undefined}
      onClick={onOpen === undefined ? undefined : () => onOpen(row)}
    >
      {first !== undefined && (
        <th scope="row" className={cellClass(first.align)}>
          {onOpen === undefined ? (
            first.cell(row)
          ) : (
            <button type="button" className="table-open">
              {first.cell(row)}
            </button>
          )}
        </th>
      )}
      {others.map((column) => (
        <td key={column.key} className={cellClass(column.align)}>
          {column.cell(row)}
        </td>
      ))}
      {actions !== undefined && (
        // biome-ignore lint/a11y/useKeyWithClickEvents: keeps a press on an action from opening the row
        <td className="table-actions" onClick={(event) => event.stopPropagation()}>
          {actions(row)}
        </td>
      )}
    </tr>
  )
}

function Spacer({ px, width }: Readonly<{ px: number; width: number }>) {
  if (px === 0) return null
  return (
    <tr>
      <td colSpan={width} className="table-spacer" style={{ height: px }} />
    </tr>
  )
}

function cellClass(align: 'start' | 'end' | undefined): string | undefined {
  return align === 'end' ? 'table-end' : undefined
}

function moveBetweenRows(event: KeyboardEvent<HTMLElement>): void {
  const step = { ArrowDown: 1, ArrowUp: -1 }[event.key]
  if (step === undefined || !(event.target instanceof HTMLElement)) return
  if (!event.target.matches('.table-open')) return
  const row = event.target.closest('tr')
  const next = step === 1 ? row?.nextElementSibling : row?.previousElementSibling
  const button = next?.querySelector<HTMLElement>('.table-open')
  if (button === null || button === undefined) return
  event.preventDefault()
  button.focus()
}
