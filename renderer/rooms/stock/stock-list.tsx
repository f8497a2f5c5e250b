import { useDeferredValue, useState } from 'react'
import type { Format } from '../../app/format.ts'
import { go, hrefTo } from '../../app/place.ts'
import { Room } from '../../app/room.tsx'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { Badge } from '../../ui/badge.tsx'
import { Button, ButtonLink } from '../../ui/button.tsx'
import { EmptyState } from '../../ui/empty-state.tsx'
import { FigureList } from '../../ui/figure-list.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import { Swatch } from '../../ui/swatch.tsx'
import { Table } from '../../ui/table.tsx'
import type { Column } from '../../ui/table-column.ts'
import { TextInput } from '../../ui/text-input.tsx'
import { MaterialForm } from './material-form.tsx'
import { alertWords, kindWords, lookOf, type MaterialRow, unknownWords } from './material-words.ts'
import { BRING_IN } from './stock-places.ts'

type KindChoice = 'all' | MaterialRow['kind']

const kindChoices = [
  { value: 'all', label: 'All' },
  ...(['bead', 'thread', 'finding', 'packaging'] as const).map((kind) => ({
    value: kind,
    label: kindWords[kind],
  })),
] satisfies readonly { value: KindChoice; label: string }[]

/** Everything in the drawers. */
export function StockList() {
  const format = useFormat()
  const [kind, setKind] = useState<KindChoice>('all')
  const [search, setSearch] = useState('')
  const [isAdding, setAdding] = useState(false)
  const deferred = useDeferredValue(search.trim())
  const all = useCall('materials.list', {})
  const found = useCall('materials.list', {
    ...(deferred === '' ? {} : { search: deferred }),
    ...(kind === 'all' ? {} : { kind }),
  })
  const isEmpty = all.value?.materials.length === 0
  return (
    <Room
      title="Stock"
      actions={
        isEmpty ? undefined : (
          <>
            <ButtonLink icon="file" href={hrefTo({ room: 'stock', id: BRING_IN })}>
              Bring in a spreadsheet
            </ButtonLink>
            <Button kind="primary" icon="add" onClick={() => setAdding(true)}>
              New material
            </Button>
          </>
        )
      }
    >
      {all.refusal !== undefined && <RefusalNotice refusal={all.refusal} />}
      {isEmpty ? (
        <EmptyStock onAdd={() => setAdding(true)} />
      ) : (
        <>
          <StockFigures materials={all.value?.materials} format={format} />
          <div className="stock-filter">
            <SegmentedChoice
              label="Kind"
              labelHidden
              value={kind}
              options={kindChoices}
              onChange={setKind}
            />
            <TextInput
              label="Find a material"
              labelHidden
              type="search"
              placeholder="Name, code, drawer or dye lot"
              value={search}
              onChange={setSearch}
            />
          </div>
          <MaterialTable materials={found.value?.materials ?? []} format={format} />
        </>
      )}
      <MaterialForm open={isAdding} onClose={() => setAdding(false)} />
    </Room>
  )
}

function EmptyStock({ onAdd }: Readonly<{ onAdd: () => void }>) {
  return (
    <EmptyState
      picture="tubes"
      action={
        <div className="button-row">
          <ButtonLink kind="primary" icon="file" href={hrefTo({ room: 'stock', id: BRING_IN })}>
            Bring in a spreadsheet
          </ButtonLink>
          <Button icon="add" onClick={onAdd}>
            New material
          </Button>
        </div>
      }
    >
      Put in what stands in your drawers, and every design can tell you whether it covers it.
    </EmptyState>
  )
}

function StockFigures({
  materials,
  format,
}: Readonly<{ materials: readonly MaterialRow[] | undefined; format: Format }>) {
  const waiting = materials?.filter(({ alert }) => alert !== 'none').length
  const value = materials?.reduce((sum, { valueMinor }) => sum + valueMinor, 0)
  return (
    <FigureList
      row
      figures={[
        { label: 'Worth at cost', value: value === undefined ? undefined : format.money(value) },
        { label: 'Materials', value: materials && format.count(materials.length) },
        { label: 'Need a look', value: waiting === undefined ? undefined : format.count(waiting) },
      ]}
    />
  )
}

function MaterialTable({
  materials,
  format,
}: Readonly<{ materials: readonly MaterialRow[]; format: Format }>) {
  return (
    <Table
      caption="Materials"
      rows={materials}
      columns={columns(format)}
      rowKey={({ id }) => id}
      onOpen={({ id }) => go({ room: 'stock', id })}
      firstSort={{ key: 'drawer', descending: false }}
      empty={<p className="quiet">Nothing in stock answers to that.</p>}
    />
  )
}

function columns(format: Format): readonly Column<MaterialRow>[] {
  return [
    {
      key: 'name',
      head: 'Material',
      sortBy: ({ name }) => name,
      cell: (row) => (
        <span className="stock-name">
          <Swatch look={lookOf(row)} name={row.name} />
          <span className="stock-code">{row.code}</span>
        </span>
      ),
    },
    { key: 'drawer', head: 'Drawer', sortBy: ({ drawer }) => drawer, cell: ({ drawer }) => drawer },
    {
      key: 'onHand',
      head: 'On hand',
      align: 'end',
      cell: ({ onHand, unit }) => format.quantity(onHand, unit),
    },
    {
      key: 'reserved',
      head: 'Promised',
      align: 'end',
      cell: ({ reserved, unit }) => (reserved === 0 ? '' : format.quantity(reserved, unit)),
    },
    {
      key: 'available',
      head: 'Free',
      align: 'end',
      cell: ({ available, unit }) => <strong>{format.quantity(available, unit)}</strong>,
    },
    {
      key: 'beads',
      head: 'Beads',
      align: 'end',
      sortBy: ({ beads }) => beads?.value ?? null,
      cell: ({ beads }) =>
        beads === null || beads.value === 0
          ? ''
          : `${beads.basis === 'exact' ? '' : 'about '}${format.count(rounded(beads.value))}`,
    },
    {
      key: 'value',
      head: 'Worth',
      align: 'end',
      sortBy: ({ valueMinor }) => valueMinor,
      cell: ({ valueMinor }) => format.money(valueMinor),
    },
    {
      key: 'alert',
      head: 'State',
      sortBy: ({ alert }) => Object.keys(alertWords).indexOf(alert),
      cell: (row) => <AlertBadge {...row} />,
    },
  ]
}

/** Two digits are more than a table weighing knows of a tube. */
function rounded(beads: number): number {
  const step = 10 ** Math.max(0, Math.floor(Math.log10(Math.max(1, beads))) - 2)
  return Math.round(beads / step) * step
}

export function AlertBadge({ alert, unit }: Pick<MaterialRow, 'alert' | 'unit'>) {
  const [tone, words] = alertWords[alert]
  return <Badge tone={tone}>{alert === 'unweighed' ? unknownWords[unit] : words}</Badge>
}
