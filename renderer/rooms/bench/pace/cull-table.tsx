import type { CallOutput } from '../../../../shared-core/contract/calls.ts'
import type { Format } from '../../../app/format.ts'
import { Table } from '../../../ui/table.tsx'
import { percentWords } from './percent-words.ts'

type Pace = CallOutput<'workshop.pace'>

/** The share of beads put aside, form by form, beside the table's. */
export function CullTable({
  counts,
  rates,
  format,
}: Readonly<{
  counts: Pace['cullCounts']
  rates: Pace['learned']['cullRates']
  format: Format
}>) {
  const percent = (share: number) => percentWords(share, format)
  return (
    <Table
      caption="Beads put aside"
      captionShown
      rows={counts}
      rowKey={({ formId }) => formId}
      columns={[
        { key: 'form', head: 'Form', cell: ({ formName }) => formName },
        {
          key: 'counted',
          head: 'Counted',
          align: 'end',
          cell: ({ handled, culled }) => `${format.count(culled)} of ${format.count(handled)}`,
        },
        {
          key: 'own',
          head: 'Yours',
          align: 'end',
          cell: ({ formId, table }) => percent((rates[formId] ?? table).value),
        },
        {
          key: 'range',
          head: 'Range',
          align: 'end',
          cell: ({ formId, table }) => format.range(rates[formId] ?? table, percent),
        },
        {
          key: 'table',
          head: 'The trade’s',
          align: 'end',
          cell: ({ table }) => percent(table.value),
        },
      ]}
    />
  )
}
