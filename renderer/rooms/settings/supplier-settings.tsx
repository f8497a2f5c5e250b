import { useState } from 'react'
import { useFormat } from '../../app/use-format.ts'
import { Button } from '../../ui/button.tsx'
import { EmptyState } from '../../ui/empty-state.tsx'
import { Table } from '../../ui/table.tsx'
import type { Supplier } from './settings-types.ts'
import { SupplierForm } from './supplier-form.tsx'

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
