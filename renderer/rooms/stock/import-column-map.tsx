import { refusalWords } from '../../ui/refusal-words.ts'
import { Select } from '../../ui/select.tsx'
import { isOfColumn, refusedColumn } from './import-faults.ts'
import { columnOptions, type StockColumn, type StockPreview } from './import-words.ts'

/** The file's columns as they stand, each with what the studio takes it for. */
export function ColumnMap({
  preview,
  onColumns,
}: Readonly<{ preview: StockPreview; onColumns: (columns: StockColumn[]) => void }>) {
  const { headings, columns, sampleRows, faults } = preview
  const [fault] = faults.filter(isOfColumn)
  const refused = fault && refusedColumn(fault, columns)
  const change = (at: number, column: StockColumn) =>
    onColumns(columns.map((now, index) => (index === at ? column : now)))
  return (
    <section className="import-part">
      <h2>Columns</h2>
      <ul className="import-columns">
        {headings.map((heading, at) => (
          // Headings may repeat; a column is known by where it stands.
          // biome-ignore lint/suspicious/noArrayIndexKey: columns never move
          <li key={at} className={columns[at] === 'ignore' ? 'import-ignored' : undefined}>
            <div className="import-heading">{heading === '' ? `Column ${at + 1}` : heading}</div>
            <div className="import-sample">{sample(sampleRows, at)}</div>
            <Select
              label={`What “${heading}” holds`}
              labelHidden
              error={fault && at === refused ? refusalWords(fault) : undefined}
              value={columns[at] ?? 'ignore'}
              options={columnOptions}
              onChange={(column) => change(at, column)}
            />
          </li>
        ))}
      </ul>
    </section>
  )
}

function sample(rows: readonly (readonly string[])[], at: number): string {
  const values = rows.map((row) => row[at]?.trim() ?? '').filter((value) => value !== '')
  return [...new Set(values)].slice(0, 3).join(' · ') || 'empty'
}
