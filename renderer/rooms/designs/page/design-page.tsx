import { useState } from 'react'
import { Room } from '../../../app/room.tsx'
import { useCall } from '../../../app/use-call.ts'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { DesignDesk } from './design-desk.tsx'
import type { ViewName } from './views.ts'

const UP = { href: '#/designs', label: 'Designs' } as const

/** One design, the version that is looked at. */
export function DesignPage({ id, view }: Readonly<{ id: string; view: ViewName }>) {
  const [version, setVersion] = useState<number>()
  const { value, refusal } = useCall('designs.read', {
    id,
    ...(version === undefined ? {} : { version }),
  })
  const materials = useCall('materials.list', {})
  if (value === undefined || value.id !== id) {
    return (
      <Room title="Design" back={UP}>
        {refusal === undefined ? (
          <p role="status">Reading the design…</p>
        ) : (
          <RefusalNotice refusal={refusal} />
        )}
      </Room>
    )
  }
  return (
    <DesignDesk
      design={value}
      materials={materials.value?.materials ?? []}
      view={view}
      onVersion={setVersion}
    />
  )
}
