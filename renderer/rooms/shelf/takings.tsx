import { useState } from 'react'
import { isCalendarDate } from '../../../shared-core/units/calendar-date.ts'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { DateInput } from '../../ui/date-input.tsx'
import { Table } from '../../ui/table.tsx'

/** What was sold between two days, by channel. */
export function Takings() {
  const format = useFormat()
  const [from, setFrom] = useState(`${format.today.slice(0, 8)}01`)
  const [to, setTo] = useState(format.today)
  const areDays = isCalendarDate(from) && isCalendarDate(to)
  const isRange = areDays && from <= to
  const { value } = useCall('takings.read', isRange ? { from, to } : null)
  return (
    <section className="shelf-takings">
      <header>
        <h2>Takings</h2>
        <DateInput label="From" today={format.today} value={from} onChange={setFrom} />
        <DateInput label="To" today={format.today} value={to} onChange={setTo} />
      </header>
      {areDays && !isRange && <p className="quiet">The first day must not be after the last.</p>}
      {isRange && (
        <Table
          caption="Takings by channel"
          rows={value?.channels ?? []}
          rowKey={({ channelId }) => channelId}
          columns={[
            { key: 'name', head: 'Channel', cell: ({ name }) => name },
            {
              key: 'pieces',
              head: 'Pieces',
              align: 'end',
              cell: ({ pieces }) => format.count(pieces),
            },
            {
              key: 'price',
              head: 'Buyers paid',
              align: 'end',
              cell: (row) => format.money(row.priceMinor),
            },
            { key: 'tax', head: 'Tax', align: 'end', cell: (row) => format.money(row.taxMinor) },
            { key: 'fees', head: 'Fees', align: 'end', cell: (row) => format.money(row.feesMinor) },
            {
              key: 'cost',
              head: 'They cost',
              align: 'end',
              cell: (row) => format.money(row.costMinor),
            },
            {
              key: 'profit',
              head: 'Earned',
              align: 'end',
              cell: (row) => <strong>{format.money(row.profitMinor)}</strong>,
            },
          ]}
          foot={
            value === undefined
              ? {}
              : {
                  name: 'All',
                  price: format.money(value.priceMinor),
                  profit: <strong>{format.money(value.profitMinor)}</strong>,
                }
          }
          empty={<p className="quiet">Nothing was sold in these days.</p>}
        />
      )}
    </section>
  )
}
