import { hrefTo } from '../../app/place.ts'
import { useFormat } from '../../app/use-format.ts'
import { ButtonLink } from '../../ui/button.tsx'
import { Table } from '../../ui/table.tsx'
import { START } from '../bench/bench-places.ts'
import type { Order } from './order-words.ts'

type Line = Order['lines'][number]

/** What an order promises, line by line, with a way to the design and to the bench. */
export function PromisedLines({ order, isOpen }: Readonly<{ order: Order; isOpen: boolean }>) {
  const format = useFormat()
  return (
    <Table
      caption="Lines"
      captionShown
      rows={order.lines}
      rowKey={(line) => line.id}
      columns={[
        {
          key: 'design',
          head: 'Design',
          cell: (line) => `${line.designName}, ${line.colourwayName}`,
        },
        {
          key: 'units',
          head: 'Promised',
          align: 'end',
          cell: (line) => format.counted(line.units, line.unitName),
        },
        { key: 'made', head: 'Made', align: 'end', cell: (line) => format.count(line.made) },
        {
          key: 'price',
          head: 'Price of one',
          align: 'end',
          cell: (line) => (line.priceMinor === null ? 'not agreed' : format.money(line.priceMinor)),
        },
      ]}
      actions={(line) => <LineActs line={line} isOpen={isOpen} />}
    />
  )
}

function LineActs({ line, isOpen }: Readonly<{ line: Line; isOpen: boolean }>) {
  return (
    <div className="order-line-acts">
      <ButtonLink small href={`#/designs/${line.designId}`}>
        Design
      </ButtonLink>
      {isOpen && line.made < line.units && (
        <ButtonLink small icon="thread" href={hrefTo({ room: 'bench', id: START, sub: line.id })}>
          Start
        </ButtonLink>
      )}
    </div>
  )
}
