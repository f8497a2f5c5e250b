import { Room } from '../../../app/room.tsx'
import { useCall } from '../../../app/use-call.ts'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { TableDesk } from './table-desk.tsx'
import { useDraft } from './use-draft.ts'
import './table.css'

/** The drawing table with a design on it. */
export function DrawingTable({ id }: Readonly<{ id: string }>) {
  const { draft, refusal } = useDraft(id)
  const design = useCall('designs.read', { id })
  const materials = useCall('materials.list', {})
  const refused = refusal ?? design.refusal
  if (draft === undefined || design.value === undefined || materials.value === undefined) {
    return (
      <Room title="Drawing table" back={{ href: '#/designs', label: 'Designs' }}>
        {refused === undefined ? (
          <p role="status">Laying the design on the table…</p>
        ) : (
          <RefusalNotice refusal={refused} />
        )}
      </Room>
    )
  }
  return <TableDesk draft={draft} design={design.value} materials={materials.value.materials} />
}
