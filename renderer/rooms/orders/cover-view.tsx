import type { Format } from '../../app/format.ts'
import { Badge } from '../../ui/badge.tsx'
import { ButtonLink } from '../../ui/button.tsx'
import { Table } from '../../ui/table.tsx'
import type { LineCover, OrderCover } from './order-words.ts'

/** What stock does for an order: how many can be made now, what limits them, what is short and what that costs. */
export function CoverView({ cover, format }: Readonly<{ cover: OrderCover; format: Format }>) {
  return (
    <section className="cover" aria-label="Cover">
      <Verdict cover={cover} format={format} />
      {cover.lines.map((line) => (
        <LineView key={line.lineId} line={line} format={format} />
      ))}
    </section>
  )
}

function Verdict({ cover, format }: Readonly<{ cover: OrderCover; format: Format }>) {
  if (cover.covered) {
    return (
      <p className="cover-verdict">
        <Badge tone="good">Covered</Badge> Stock covers all of it, beside what other orders hold.
      </p>
    )
  }
  const price =
    cover.costMinor === null ? 'at a price not known yet' : `for ${format.money(cover.costMinor)}`
  const when = cover.hereOn === null ? '' : `, here by ${format.date(cover.hereOn)} at the earliest`
  const unassigned = cover.lines.some(({ shortages }) =>
    shortages.some(({ materialId }) => materialId === null),
  )
  return (
    <p className="cover-verdict">
      <Badge tone="bad">Short</Badge>{' '}
      {unassigned
        ? 'Some places of the colourway have no material yet: choose them in Designs.'
        : `What is missing can be bought ${price}${when}.`}
    </p>
  )
}

function LineView({ line, format }: Readonly<{ line: LineCover; format: Format }>) {
  const done = line.units === 0
  return (
    <div className="cover-line">
      <h3>{line.designName}</h3>
      <p className="cover-now">
        <strong>
          {done
            ? 'All made'
            : `${line.coveredUnits} of ${format.counted(line.units, line.unitName)}`}
        </strong>
        {done ? '' : ' can be made now'}
        {line.proof === 'bounded' && ' at least; the search was cut off'}
      </p>
      {!done && <Bar share={line.coveredUnits / line.units} />}
      {line.shortages.length > 0 && <Shortages line={line} format={format} />}
      {line.limits.length > 0 && <Limits line={line} format={format} />}
    </div>
  )
}

function Bar({ share }: Readonly<{ share: number }>) {
  return (
    <div className="cover-bar" aria-hidden="true">
      <div style={{ inlineSize: `${Math.round(share * 100)}%` }} />
    </div>
  )
}

function Shortages({ line, format }: Readonly<{ line: LineCover; format: Format }>) {
  return (
    <Table
      caption="Short"
      captionShown
      rows={line.shortages}
      rowKey={({ key, materialId }) => `${key} ${materialId}`}
      columns={[
        { key: 'name', head: 'Material', cell: ({ name }) => name },
        {
          key: 'short',
          head: 'Short',
          align: 'end',
          cell: ({ short, unit }) => <strong>{format.quantity(short, unit)}</strong>,
        },
        {
          key: 'packs',
          head: 'Packs',
          cell: ({ packs, unit, materialId }) =>
            packs === null
              ? materialId === null
                ? 'no material chosen'
                : 'no pack known'
              : packs
                  .map(
                    ({ packs: count, packQuantity, supplier, leadDays }) =>
                      `${count} × ${format.quantity(packQuantity, unit)}, ${supplier}, ${format.counted(leadDays, 'day')}`,
                  )
                  .join('; '),
        },
        {
          key: 'cost',
          head: 'Cost',
          align: 'end',
          cell: ({ costMinor }) => (costMinor === null ? 'not known' : format.money(costMinor)),
        },
      ]}
      actions={({ materialId }) =>
        materialId !== null && (
          <ButtonLink small href={`#/stock/${materialId}`}>
            Look
          </ButtonLink>
        )
      }
    />
  )
}

function Limits({ line, format }: Readonly<{ line: LineCover; format: Format }>) {
  return (
    <details className="cover-limits" open={line.shortages.length === 0 ? undefined : true}>
      <summary>What limits it</summary>
      <Table
        caption="What limits it, most binding first"
        rows={line.limits}
        rowKey={({ key, materialId }) => `${key} ${materialId}`}
        columns={[
          { key: 'name', head: 'Material', cell: ({ name }) => name },
          {
            key: 'need',
            head: `One ${line.unitName} takes`,
            align: 'end',
            cell: ({ perUnit, unit }) => format.quantity(perUnit, unit),
          },
          {
            key: 'onHand',
            head: 'On hand',
            align: 'end',
            cell: ({ onHand, unit }) => format.quantity(onHand, unit),
          },
          {
            key: 'held',
            head: 'Other orders hold',
            align: 'end',
            cell: ({ heldByOthers, unit }) =>
              heldByOthers === 0 ? '' : format.quantity(heldByOthers, unit),
          },
          {
            key: 'enough',
            head: 'Enough for',
            align: 'end',
            cell: ({ enoughFor }) => <strong>{format.count(enoughFor)}</strong>,
          },
        ]}
      />
    </details>
  )
}
