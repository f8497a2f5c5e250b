import { useState } from 'react'
import { hrefTo } from '../../../app/place.ts'
import { Room } from '../../../app/room.tsx'
import { todayDate } from '../../../app/today.ts'
import { useAct } from '../../../app/use-act.ts'
import { useCall } from '../../../app/use-call.ts'
import { useFormat } from '../../../app/use-format.ts'
import { Button, ButtonLink } from '../../../ui/button.tsx'
import { EmptyState } from '../../../ui/empty-state.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { Select } from '../../../ui/select.tsx'
import type { DesignDetail, MaterialRow } from '../page/open-design.ts'
import { ViewTabs } from '../page/view-tabs.tsx'
import { useVersion } from './use-version.ts'
import { VersionComparison } from './version-comparison.tsx'
import './versions.css'

const NO_MATERIALS: readonly MaterialRow[] = []

/** The versions of a design: any two beside each other, and the way back to an old one. */
export function VersionsView({ id }: Readonly<{ id: string }>) {
  const { value, refusal } = useCall('designs.read', { id })
  const materials = useCall('materials.list', {})
  return (
    <Room title={value?.name ?? 'Design'} back={{ href: '#/designs', label: 'Designs' }}>
      <ViewTabs id={id} view="versions" />
      {refusal !== undefined && <RefusalNotice refusal={refusal} />}
      {value?.versions.length === 1 && (
        <EmptyState
          picture="ledger"
          action={
            <ButtonLink href={hrefTo({ room: 'designs', id, sub: 'parts' })}>
              Change its parts
            </ButtonLink>
          }
        >
          There is one version so far. Each time the design is saved otherwise, the one before is
          kept and can be compared with it here.
        </EmptyState>
      )}
      {value !== undefined && value.versions.length > 1 && (
        <TwoVersions design={value} materials={materials.value?.materials ?? NO_MATERIALS} />
      )}
    </Room>
  )
}

function TwoVersions({
  design,
  materials,
}: Readonly<{ design: DesignDetail; materials: readonly MaterialRow[] }>) {
  const format = useFormat()
  const { id, versions } = design
  const [latest, last] = versions.map(({ version }) => version)
  const [chosen, setChosen] = useState<Readonly<{ before?: number; after?: number }>>({})
  const [before, after] = [chosen.before ?? last, chosen.after ?? latest]
  const [old, now] = [useVersion(id, before, materials), useVersion(id, after, materials)]
  const options = versions.map(({ version, savedAtMs, note }) => ({
    value: String(version),
    label: `Version ${version}`,
    detail: [format.date(todayDate(new Date(savedAtMs))), note].filter(Boolean).join(', '),
  }))
  const refusal = old.refusal ?? now.refusal
  return (
    <>
      <div className="version-choice">
        <Select
          label="Compare"
          value={String(before)}
          options={options}
          onChange={(version) => setChosen({ ...chosen, before: Number(version) })}
        />
        <Select
          label="with"
          value={String(after)}
          options={options}
          onChange={(version) => setChosen({ ...chosen, after: Number(version) })}
        />
        {old.design !== undefined && before !== latest && (
          <BringBack design={old.design} onBack={() => setChosen({})} />
        )}
      </div>
      {refusal !== undefined && <RefusalNotice refusal={refusal} />}
      <VersionComparison before={old} after={now} format={format} />
    </>
  )
}

/** Saves an old version again as the newest: none that came after it is lost. */
function BringBack({ design, onBack }: Readonly<{ design: DesignDetail; onBack: () => void }>) {
  const { id, name, tags, body, version } = design
  const save = useAct('designs.save', {
    said: (saved) => `Version ${version} is back as version ${saved.version}`,
  })
  async function bringBack() {
    const saved = await save.act({ id, name, tags, body, note: `As version ${version}` })
    if (saved.ok) onBack()
  }
  return (
    <>
      <Button icon="undo" busy={save.isBusy} onClick={() => void bringBack()}>
        {`Bring version ${version} back`}
      </Button>
      {save.refusal !== undefined && <RefusalNotice refusal={save.refusal} />}
    </>
  )
}
