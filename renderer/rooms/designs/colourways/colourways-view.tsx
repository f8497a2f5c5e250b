import { Room } from '../../../app/room.tsx'
import { ViewTabs } from '../page/view-tabs.tsx'

/** All colourways of a design side by side. */
export function ColourwaysView({ id }: Readonly<{ id: string }>) {
  return (
    <Room title="Design" back={{ href: '#/designs', label: 'Designs' }}>
      <ViewTabs id={id} view="colourways" />
    </Room>
  )
}
