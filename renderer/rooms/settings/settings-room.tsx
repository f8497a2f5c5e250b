import { useState } from 'react'
import { go, usePlace } from '../../app/place.ts'
import { Room } from '../../app/room.tsx'
import { useCall } from '../../app/use-call.ts'
import { RefusalNotice } from '../../ui/notice.tsx'
import { Tabs } from '../../ui/tabs.tsx'
import { AboutStudio } from './about-studio.tsx'
import { AppearanceSettings } from './appearance-settings.tsx'
import { BeadsSettings } from './beads/beads-settings.tsx'
import { ChannelSettings } from './channel-settings.tsx'
import { PlaceSettings } from './place-settings.tsx'
import { SupplierSettings } from './supplier-settings.tsx'
import { TagSettings } from './tag-settings.tsx'
import { WorkshopSettings } from './workshop-settings.tsx'
import './settings.css'

const views = [
  'workshop',
  'channels',
  'places',
  'suppliers',
  'beads',
  'tags',
  'appearance',
  'about',
] as const
type View = (typeof views)[number]

/** Settings: the workshop and its ways. */
export function SettingsRoom() {
  const { id } = usePlace()
  const [first] = useState<View>('workshop')
  const view = views.find((one) => one === id) ?? first
  const { value, refusal } = useCall('workshop.read', {})
  const { workshop } = value ?? {}
  return (
    <Room title="Settings">
      {refusal !== undefined && <RefusalNotice refusal={refusal} />}
      {value !== undefined && workshop !== null && workshop !== undefined && (
        <Tabs
          label="Settings"
          value={view}
          onChange={(next) => go({ room: 'settings', id: next }, { replace: true })}
          tabs={[
            {
              value: 'workshop',
              label: 'Workshop',
              panel: <WorkshopSettings key={workshop.decimalMark} workshop={workshop} />,
            },
            {
              value: 'channels',
              label: 'Channels',
              panel: <ChannelSettings channels={value.channels} />,
            },
            {
              value: 'places',
              label: 'Places',
              panel: <PlaceSettings places={value.places} channels={value.channels} />,
            },
            {
              value: 'suppliers',
              label: 'Suppliers',
              panel: <SupplierSettings suppliers={value.suppliers} />,
            },
            { value: 'beads', label: 'Beads and threads', panel: <BeadsSettings /> },
            { value: 'tags', label: 'Tags', panel: <TagSettings workshop={workshop} /> },
            { value: 'appearance', label: 'Appearance', panel: <AppearanceSettings /> },
            { value: 'about', label: 'About', panel: <AboutStudio /> },
          ]}
        />
      )}
    </Room>
  )
}
