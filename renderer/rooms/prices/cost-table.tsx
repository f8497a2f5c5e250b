import type { PriceInputs, PriceSheet } from '../../../shared-core/pricing/price-sheet.ts'
import type { Format } from '../../app/format.ts'
import { BasisMark } from '../../ui/basis-mark.tsx'
import { Notice } from '../../ui/notice.tsx'
import { Table } from '../../ui/table.tsx'

type CostLine = PriceSheet['cost'][number]

const groupWords: Readonly<Record<CostLine['group'], string>> = {
  materials: 'Beads',
  thread: 'Thread',
  findings: 'Findings',
  labour: 'Labour',
  overhead: 'Overhead',
  packaging: 'Packaging',
}

/** Everything a unit costs, line by line; the lines add up to the whole. */
export function CostTable({
  sheet,
  inputs,
  format,
}: Readonly<{ sheet: PriceSheet; inputs: PriceInputs; format: Format }>) {
  const unknown = sheet.cost.filter(({ known }) => !known)
  return (
    <section className="prices-cost">
      {unknown.length > 0 && (
        <Notice kind="attention" title="Some costs are not known, and stand at nothing">
          {unknown.map(({ label }) => label).join(', ')}. Choose the material in Designs, or enter
          what its lot cost in Stock.
        </Notice>
      )}
      <Shares sheet={sheet} format={format} />
      <Table
        caption="Cost sheet"
        captionShown
        rows={sheet.cost}
        rowKey={({ key }) => key}
        columns={[
          { key: 'label', head: 'What', cell: ({ label }) => label },
          { key: 'group', head: 'Kind', cell: ({ group }) => groupWords[group] },
          {
            key: 'quantity',
            head: 'Quantity',
            align: 'end',
            cell: ({ key }) => quantityOf(key, inputs, format),
          },
          { key: 'basis', head: 'Rests on', cell: ({ basis }) => <BasisMark basis={basis} /> },
          {
            key: 'amount',
            head: 'Cost',
            align: 'end',
            cell: ({ amountMinor, known }) => (known ? format.money(amountMinor) : 'not known'),
          },
        ]}
        foot={{ label: 'All', amount: <strong>{format.money(sheet.costMinor)}</strong> }}
      />
    </section>
  )
}

function quantityOf(key: string, inputs: PriceInputs, format: Format): string {
  const material = inputs.materials.find((line) => line.key === key)
  return material === undefined ? '' : format.quantity(material.quantity, material.unit)
}

/** The cost as one bar, so that the dearest part is seen at once. */
function Shares({ sheet, format }: Readonly<{ sheet: PriceSheet; format: Format }>) {
  const groups = (Object.keys(groupWords) as CostLine['group'][])
    .map((group) => ({
      group,
      minor: sheet.cost.reduce(
        (sum, line) => sum + (line.group === group ? line.amountMinor : 0),
        0,
      ),
    }))
    .filter(({ minor }) => minor > 0)
  return (
    <ul className="prices-shares" aria-label="Shares of the cost">
      {groups.map(({ group, minor }) => (
        <li key={group} className={`prices-share prices-${group}`} style={{ flexGrow: minor }}>
          <span className="prices-share-bar" aria-hidden="true" />
          <span>
            {groupWords[group]} <strong>{format.money(minor)}</strong>
          </span>
        </li>
      ))}
    </ul>
  )
}
