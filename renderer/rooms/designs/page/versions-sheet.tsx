import type { Format } from '../../../app/format.ts'
import { todayDate } from '../../../app/today.ts'
import { useAct } from '../../../app/use-act.ts'
import { Badge } from '../../../ui/badge.tsx'
import { Button } from '../../../ui/button.tsx'
import { Notice } from '../../../ui/notice.tsx'
import { SideSheet } from '../../../ui/side-sheet.tsx'
import type { DesignDetail } from './open-design.ts'
import './versions-sheet.css'

type OnVersion = (version: number | undefined) => void

/** Every version a design has had; orders and pieces keep the one they were made from. */
export function VersionsSheet({
  design,
  format,
  onVersion,
  onClose,
}: Readonly<{
  design: DesignDetail
  format: Format
  onVersion: OnVersion
  onClose: () => void
}>) {
  const latest = latestOf(design)
  return (
    <SideSheet open title="Versions" onClose={onClose}>
      <p className="designs-quiet">
        A version never changes: orders, makes and pieces keep the one they were made from.
      </p>
      <ol className="versions">
        {design.versions.map(({ id, version, savedAtMs, note }) => (
          <li key={id}>
            <div>
              <strong>Version {version}</strong>, {format.date(todayDate(new Date(savedAtMs)))}
              {note !== '' && <p className="designs-quiet">{note}</p>}
            </div>
            {version === design.version ? (
              <Badge tone="good">on the table</Badge>
            ) : (
              <Button small onClick={() => onVersion(version === latest ? undefined : version)}>
                {`Look at version ${version}`}
              </Button>
            )}
          </li>
        ))}
      </ol>
    </SideSheet>
  )
}

/** Says so while an older version is looked at, with the way back and the way on. */
export function VersionNotice({
  design,
  onVersion,
}: Readonly<{ design: DesignDetail; onVersion: OnVersion }>) {
  const save = useAct('designs.save', {
    said: ({ version }) => `Version ${design.version} is now version ${version}`,
  })
  const latest = latestOf(design)
  if (design.version === latest) return null
  async function takeUp() {
    const { id, name, tags, body, version } = design
    const saved = await save.act({ id, name, tags, body, note: `As version ${version}` })
    if (saved.ok) onVersion(undefined)
  }
  return (
    <Notice
      kind="attention"
      title={`You are looking at version ${design.version}; the latest is ${latest}.`}
      actions={
        <>
          <Button small onClick={() => onVersion(undefined)}>
            Go to the latest
          </Button>
          <Button small busy={save.isBusy} onClick={() => void takeUp()}>
            Take this one up again
          </Button>
        </>
      }
    />
  )
}

function latestOf({ versions, version }: DesignDetail): number {
  return Math.max(version, ...versions.map((one) => one.version))
}
