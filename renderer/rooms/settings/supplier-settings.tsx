import { useState } from 'react'
import { parseCount } from '../../../shared-core/units/parse-count.ts'
import { withinBounds } from '../../../shared-core/units/within-bounds.ts'
import { useAct } from '../../app/use-act.ts'
import { useFormat } from '../../app/use-format.ts'
import { Button } from '../../ui/button.tsx'
import { EmptyState } from '../../ui/empty-state.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { QuantityInput } from '../../ui/quantity-input.tsx'
import { SideSheet } from '../../ui/side-sheet.tsx'
import { Table } from '../../ui/table.tsx'
import { TextArea, TextInput } from '../../ui/text-input.tsx'
import type { Supplier } from './settings-types.ts'

/** Who sells the materials, and how long they take. */
export function SupplierSettings({ suppliers }: Readonly<{ suppliers: readonly Supplier[] }>) {
  const format = useFormat()
  const [open, setOpen] = useState<Supplier | 'new'>()
  return (
    <div className="settings-list">
      <div>
        <Button icon="add" onClick={() => setOpen('new')}>
          Add a supplier
        </Button>
      </div>
      <Table
        caption="Suppliers"
        rows={suppliers}
        rowKey={({ id }) => id}
        onOpen={setOpen}
        columns={[
          { key: 'name', head: 'Supplier', cell: ({ name }) => name },
          {
            key: 'lead',
            head: 'Takes',
            align: 'end',
            cell: ({ leadDays }) => format.counted(leadDays, 'day'),
          },
          { key: 'note', head: 'Note', cell: ({ note }) => note },
        ]}
        empty={
          <EmptyState picture="tubes">
            Enter who you buy from, and the studio knows when what is short could be here.
          </EmptyState>
        }
      />
      {open !== undefined && (
        <SupplierForm
          key={open === 'new' ? 'new' : open.id}
          supplier={open === 'new' ? undefined : open}
          onClose={() => setOpen(undefined)}
        />
      )}
    </div>
  )
}

function SupplierForm({
  supplier,
  onClose,
}: Readonly<{ supplier: Supplier | undefined; onClose: () => void }>) {
  const { decimal, counted } = useFormat()
  const [name, setName] = useState(supplier?.name ?? '')
  const [note, setNote] = useState(supplier?.note ?? '')
  const [days, setDays] = useState<readonly [string, number | undefined]>([
    String(supplier?.leadDays ?? 7),
    supplier?.leadDays ?? 7,
  ])
  const save = useAct('supplier.save', { said: () => `Saved ${name}` })
  async function submit(leadDays: number) {
    const id = supplier === undefined ? {} : { id: supplier.id }
    if ((await save.act({ supplier: { ...id, name, note, leadDays } })).ok) onClose()
  }
  return (
    <SideSheet
      open
      title={supplier === undefined ? 'New supplier' : `Change ${supplier.name}`}
      onClose={onClose}
      actions={
        <Button
          kind="primary"
          busy={save.isBusy}
          disabled={days[1] === undefined}
          onClick={() => days[1] !== undefined && void submit(days[1])}
        >
          Save
        </Button>
      }
    >
      {save.refusal !== undefined && <RefusalNotice refusal={save.refusal} />}
      <TextInput label="Name" longest={120} value={name} onChange={setName} />
      <QuantityInput
        label="From order to your door"
        unit="days"
        text={days[0]}
        parse={(text) =>
          withinBounds(parseCount(text, { decimal }), text, {
            ...{ least: 0, most: 365, of: Number },
            write: (count) => counted(count, 'day'),
          })
        }
        onText={(text, value) => setDays([text, value])}
      />
      <TextArea label="Note" longest={2_000} optional rows={3} value={note} onChange={setNote} />
    </SideSheet>
  )
}
