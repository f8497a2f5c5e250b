import { useState } from 'react'
import type { CallOutput } from '../../../shared-core/contract/calls.ts'
import type { Format } from '../../app/format.ts'
import { Room } from '../../app/room.tsx'
import { todayDate } from '../../app/today.ts'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { Button } from '../../ui/button.tsx'
import { EmptyState } from '../../ui/empty-state.tsx'
import { FigureList } from '../../ui/figure-list.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { Swatch } from '../../ui/swatch.tsx'
import { Table } from '../../ui/table.tsx'
import { CalibrateSheet } from './calibrate-sheet.tsx'
import { CountSheet, type LotRow } from './count-sheet.tsx'
import { MaterialForm } from './material-form.tsx'
import { lookOf } from './material-words.ts'
import { OfferSheet } from './offer-sheet.tsx'
import { ReceiveSheet } from './receive-sheet.tsx'
import { AlertBadge } from './stock-list.tsx'

export type MaterialDetail = CallOutput<'materials.read'>
type Open = 'change' | 'receive' | 'calibrate' | 'offer' | LotRow | undefined

/** One material: what is on hand by lot, how it came and went, what it weighs, who sells it. */
export function MaterialPage({ id }: Readonly<{ id: string }>) {
  const format = useFormat()
  const { value, refusal } = useCall('materials.read', { id })
  const [open, setOpen] = useState<Open>()
  const close = () => setOpen(undefined)
  const title = value?.material.name ?? 'Material'
  return (
    <Room
      title={title}
      back={{ href: '#/stock', label: 'Stock' }}
      actions={
        value !== undefined && (
          <>
            <Button icon="edit" onClick={() => setOpen('change')}>
              Change
            </Button>
            <Button kind="primary" icon="add" onClick={() => setOpen('receive')}>
              Take in a lot
            </Button>
          </>
        )
      }
      aside={value && <Figures detail={value} format={format} />}
    >
      {refusal !== undefined && <RefusalNotice refusal={refusal} />}
      {value !== undefined && <Detail detail={value} format={format} onOpen={setOpen} />}
      {value !== undefined && open === 'change' && (
        <MaterialForm open material={value.material} onClose={close} />
      )}
      {value !== undefined && open === 'receive' && <ReceiveSheet detail={value} onClose={close} />}
      {value !== undefined && open === 'calibrate' && (
        <CalibrateSheet detail={value} onClose={close} />
      )}
      {value !== undefined && open === 'offer' && <OfferSheet detail={value} onClose={close} />}
      {value !== undefined && typeof open === 'object' && (
        <CountSheet detail={value} lot={open} onClose={close} />
      )}
    </Room>
  )
}

function Figures({ detail, format }: Readonly<{ detail: MaterialDetail; format: Format }>) {
  const { material, beadsPerGram } = detail
  const { unit, beads } = material
  return (
    <>
      <FigureList
        figures={[
          { label: 'Free', value: format.quantity(material.available, unit) },
          { label: 'On hand', value: format.quantity(material.onHand, unit) },
          { label: 'Promised', value: format.quantity(material.reserved, unit) },
          ...(beads === null
            ? []
            : [
                {
                  label: 'Beads on hand',
                  value: format.count(Math.round(beads.value)),
                  basis: beads.basis,
                  range: format.range(beads, (count) => format.count(Math.round(count))),
                },
              ]),
          { label: 'Worth at cost', value: format.money(material.valueMinor) },
        ]}
      />
      {beadsPerGram !== null && (
        <FigureList
          label="Weight of a bead"
          big={0}
          figures={[
            {
              label: 'Beads in a gram',
              value: format.count(Math.round(beadsPerGram.value)),
              basis: beadsPerGram.basis,
              range: format.range(beadsPerGram, (count) => format.count(Math.round(count))),
            },
          ]}
        />
      )}
    </>
  )
}

type DetailProps = Readonly<{
  detail: MaterialDetail
  format: Format
  onOpen: (open: Open) => void
}>

function Detail({ detail, format, onOpen }: DetailProps) {
  const { material } = detail
  return (
    <div className="stock-detail">
      <p className="stock-said">
        <Swatch look={lookOf(material)} size={40} />
        <span className="stock-code">{material.code}</span>
        {material.drawer !== '' && <span>drawer {material.drawer}</span>}
        <AlertBadge {...material} />
      </p>
      {material.declaration !== '' && (
        <p className="quiet">
          {material.declaration} A supplier’s claim, not a test: local rules decide.
        </p>
      )}
      {material.note !== '' && <p className="stock-note">{material.note}</p>}
      <LotTable detail={detail} format={format} onOpen={onOpen} />
      {material.kind === 'bead' && <Weighings detail={detail} format={format} onOpen={onOpen} />}
      <Offers detail={detail} format={format} onOpen={onOpen} />
      <Movements detail={detail} format={format} />
    </div>
  )
}

function LotTable({ detail, format, onOpen }: DetailProps) {
  const { unit } = detail.material
  return (
    <Table
      caption="Lots"
      captionShown
      rows={detail.lots}
      rowKey={({ id }) => id}
      columns={[
        { key: 'lot', head: 'Dye lot', cell: ({ dyeLot }) => dyeLot || 'not marked' },
        {
          key: 'bought',
          head: 'Bought',
          sortBy: ({ boughtOn }) => boughtOn,
          cell: ({ boughtOn }) =>
            boughtOn === null ? '' : <span className="nowrap">{format.date(boughtOn)}</span>,
        },
        {
          key: 'cost',
          head: 'Cost',
          align: 'end',
          cell: ({ costMinor, costQuantity }) =>
            costMinor === null
              ? 'not known'
              : `${format.money(costMinor)}${costQuantity === null ? '' : ` for ${format.quantity(costQuantity, unit)}`}`,
        },
        {
          key: 'onHand',
          head: 'On hand',
          align: 'end',
          cell: ({ onHand }) => <strong>{format.quantity(onHand, unit)}</strong>,
        },
        { key: 'note', head: 'Note', cell: ({ note }) => note },
      ]}
      actions={(lot) => (
        <Button small icon="scale" onClick={() => onOpen(lot)}>
          {unit === 'mg' ? 'Weigh' : 'Count'}
        </Button>
      )}
      empty={
        <EmptyState picture="tubes">
          No lot yet. Take one in, and designs can be covered by it.
        </EmptyState>
      }
    />
  )
}

function Weighings({ detail, format, onOpen }: DetailProps) {
  return (
    <section className="stock-section">
      <header>
        <h2>Weighings</h2>
        <Button small icon="scale" onClick={() => onOpen('calibrate')}>
          Weigh counted beads
        </Button>
      </header>
      {detail.weighings.length === 0 ? (
        <p className="quiet">
          Count some beads onto the scale once, and grams turn into beads by your own scale instead
          of a table.
        </p>
      ) : (
        <ul className="stock-lines">
          {detail.weighings.map(({ id, beads, grossMg, tareMg }) => (
            <li key={id}>
              {format.counted(beads, 'bead')} weighed {format.mass(grossMg - tareMg)}
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}

function Offers({ detail, format, onOpen }: DetailProps) {
  const shop = useCall('workshop.read', {})
  const name = (id: string) =>
    shop.value?.suppliers.find((supplier) => supplier.id === id)?.name ?? ''
  return (
    <section className="stock-section">
      <header>
        <h2>Packs</h2>
        <Button small icon="add" onClick={() => onOpen('offer')}>
          Add a pack
        </Button>
      </header>
      {detail.offers.length === 0 ? (
        <p className="quiet">No supplier’s pack is known, so what is short cannot be priced.</p>
      ) : (
        <ul className="stock-lines">
          {detail.offers.map(({ id, supplierId, packQuantity, priceMinor }) => (
            <li key={id}>
              {name(supplierId)}: {format.quantity(packQuantity, detail.material.unit)} for{' '}
              {format.money(priceMinor)}
            </li>
          ))}
        </ul>
      )}
    </section>
  )
}

function Movements({ detail, format }: Readonly<{ detail: MaterialDetail; format: Format }>) {
  const { unit } = detail.material
  const lotName = (id: string) => detail.lots.find((lot) => lot.id === id)?.dyeLot ?? ''
  return (
    <Table
      caption="Movements"
      captionShown
      rows={detail.movements}
      rowKey={({ id }) => String(id)}
      columns={[
        { key: 'label', head: 'What', cell: ({ label }) => label },
        {
          key: 'on',
          head: 'On',
          sortBy: ({ atMs }) => atMs,
          cell: ({ atMs }) => (
            <span className="nowrap">{format.date(todayDate(new Date(atMs)))}</span>
          ),
        },
        { key: 'lot', head: 'Dye lot', cell: ({ lotId }) => lotName(lotId) },
        {
          key: 'quantity',
          head: 'Quantity',
          align: 'end',
          cell: ({ quantity }) => `${quantity > 0 ? '+' : ''}${format.quantity(quantity, unit)}`,
        },
      ]}
      empty={<p className="quiet">Nothing has moved yet.</p>}
    />
  )
}
