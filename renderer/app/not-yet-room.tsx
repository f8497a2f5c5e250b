import { ButtonLink } from '../ui/button.tsx'
import { EmptyState } from '../ui/empty-state.tsx'
import { hrefTo } from './place.ts'
import { Room } from './room.tsx'
import { type RoomName, rooms } from './rooms.ts'

/** A room that this version does not have yet: says so, and leads back to one that works. */
export function NotYetRoom({ name }: Readonly<{ name: RoomName }>) {
  const room = rooms.find((one) => one.name === name)
  return (
    <Room title={room?.title ?? name}>
      <EmptyState
        picture="needle"
        action={<ButtonLink href={hrefTo({ room: 'today' })}>Go to Today</ButtonLink>}
      >
        This room is not built yet. It will hold {room?.purpose}.
      </EmptyState>
    </Room>
  )
}
