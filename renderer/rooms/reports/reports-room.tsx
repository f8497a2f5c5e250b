import { Room } from '../../app/room.tsx'
import { ButtonLink } from '../../ui/button.tsx'
import { EmptyState } from '../../ui/empty-state.tsx'

/** Reports: not built yet. Says what it will do, and where the same can be seen meanwhile. */
export function ReportsRoom() {
  return (
    <Room title="Reports">
      <EmptyState
        picture="ledger"
        action={<ButtonLink href="#/shelf">Sales and takings on the Shelf</ButtonLink>}
      >
        This room is not built yet. It will show money and time by design, channel and month, and
        write the bookkeeper’s files. Until then the Shelf shows every sale and what was taken.
      </EmptyState>
    </Room>
  )
}
