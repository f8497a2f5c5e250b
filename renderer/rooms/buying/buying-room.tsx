import { Room } from '../../app/room.tsx'
import { ButtonLink } from '../../ui/button.tsx'
import { EmptyState } from '../../ui/empty-state.tsx'

/** Buying: not built yet. Says what it will do, and where the same can be seen meanwhile. */
export function BuyingRoom() {
  return (
    <Room title="Buying">
      <EmptyState
        picture="scale"
        action={
          <div className="button-row">
            <ButtonLink href="#/orders">What orders are short of</ButtonLink>
            <ButtonLink href="#/stock">What runs low</ButtonLink>
          </div>
        }
      >
        This room is not built yet. It will say what runs out when, and put together the cheapest
        basket of packs that is here in time. Until then an order says what it is short of, in packs
        and money.
      </EmptyState>
    </Room>
  )
}
