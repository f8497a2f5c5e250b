import { Tabs as Base } from '@base-ui/react/tabs'
import type { ReactNode } from 'react'
import './tabs.css'

/** Several views of one thing, one at a time; arrow keys move between them. */
export function Tabs<V extends string>({
  label,
  value,
  onChange,
  tabs,
}: Readonly<{
  label: string
  value: V
  onChange: (value: V) => void
  tabs: readonly Readonly<{ value: V; label: ReactNode; panel: ReactNode }>[]
}>) {
  return (
    <Base.Root value={value} onValueChange={(next) => onChange(next as V)} className="tabs">
      <Base.List className="tabs-list" aria-label={label}>
        {tabs.map((tab) => (
          <Base.Tab key={tab.value} value={tab.value} className="tab">
            {tab.label}
          </Base.Tab>
        ))}
      </Base.List>
      {tabs.map((tab) => (
        <Base.Panel key={tab.value} value={tab.value} className="tab-panel">
          {tab.panel}
        </Base.Panel>
      ))}
    </Base.Root>
  )
}
