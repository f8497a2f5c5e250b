import type { CallOutput } from '../../../shared-core/contract/calls.ts'
import type { Format } from '../../app/format.ts'
import { FigureList } from '../../ui/figure-list.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { Table } from '../../ui/table.tsx'

/** What leaves which drawer and lot, what it costs and takes; or why it cannot be made now. */
export function PickList({
  plan,
  format,
}: Readonly<{ plan: CallOutput<'makes.plan'>; format: Format }>) {
  if (plan.faults.length > 0) {
    return plan.faults.map((fault) => (
      <RefusalNotice key={`${fault.code} ${fault.field} ${fault.message}`} refusal={fault} />
    ))
  }
  const { labourS } = plan
  return (
    <>
      <FigureList
        row
        figures={[
          { label: 'Costs', value: format.money(plan.costMinor) },
          {
            label: 'Takes',
            value: format.duration(labourS.value),
            basis: labourS.basis,
            range: format.range(labourS, format.duration),
          },
        ]}
      />
      <Table
        caption="From the drawers"
        captionShown
        rows={plan.draws}
        rowKey={({ lotId }) => lotId}
        firstSort={{ key: 'drawer', descending: false }}
        columns={[
          { key: 'name', head: 'Material', cell: ({ name }) => name },
          {
            key: 'drawer',
            head: 'Drawer',
            sortBy: ({ drawer }) => drawer,
            cell: ({ drawer }) => drawer,
          },
          { key: 'lot', head: 'Dye lot', cell: ({ dyeLot }) => dyeLot },
          {
            key: 'quantity',
            head: 'Quantity',
            align: 'end',
            cell: ({ quantity, unit }) => format.quantity(quantity, unit),
          },
        ]}
      />
    </>
  )
}
