import type { Format } from '../../app/format.ts'
import { useFormat } from '../../app/use-format.ts'
import { Badge } from '../../ui/badge.tsx'
import { Swatch } from '../../ui/swatch.tsx'
import { Table } from '../../ui/table.tsx'
import type { Column } from '../../ui/table-column.ts'
import { counted, type StockPreview } from './import-words.ts'
import { kindWords, unknownWords } from './material-words.ts'

type Row = StockPreview['rows'][number]

/** Rows that can be taken, as they would be written. */
export function GoodRows({ rows }: Readonly<{ rows: readonly Row[] }>) {
  const format = useFormat()
  return (
    <section className="import-part">
      <h2>
        <Badge tone="good">{`${counted(rows.length, 'row')} ready`}</Badge>
      </h2>
      <Table
        caption="Rows that would be written"
        rows={rows}
        rowKey={({ line }) => String(line)}
        columns={columns(format)}
        empty={<p className="quiet">No row can be taken yet. Look at the columns above.</p>}
      />
    </section>
  )
}

function columns(format: Format): readonly Column<Row>[] {
  return [
    { key: 'line', head: 'Line', align: 'end', width: '4rem', cell: ({ line }) => line },
    {
      key: 'name',
      head: 'Material',
      cell: ({ name, code, colourHex, finish, remarks }) => (
        <span className="stock-name">
          <Swatch
            look={colourHex === null ? null : { hex: colourHex, finish: finish ?? 'opaque' }}
            name={name}
          />
          <span className="stock-code">{code}</span>
          {remarks.map((remark) => (
            <span key={remark} className="import-remark">
              {remark}
            </span>
          ))}
        </span>
      ),
    },
    { key: 'kind', head: 'Kind', cell: ({ kind }) => kindWords[kind] },
    {
      key: 'quantity',
      head: 'On hand',
      align: 'end',
      cell: ({ quantity, unit }) =>
        quantity === null ? unknownWords[unit].toLowerCase() : format.exactly(quantity, unit),
    },
    { key: 'lot', head: 'Dye lot', cell: ({ dyeLot }) => dyeLot },
    {
      key: 'pack',
      head: 'Pack',
      align: 'end',
      cell: ({ packQuantity, packPriceMinor, unit }) =>
        packQuantity === null || packPriceMinor === null
          ? ''
          : `${format.exactly(packQuantity, unit)} for ${format.money(packPriceMinor)}`,
    },
    { key: 'supplier', head: 'Supplier', cell: ({ supplier }) => supplier },
    {
      key: 'becomes',
      head: 'Becomes',
      width: '8.5rem',
      cell: ({ becomes }) => (becomes === 'new-material' ? 'a new material' : 'another lot'),
    },
  ]
}
