import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { Badge, type BadgeTone } from '../../../ui/badge.tsx'
import { Button } from '../../../ui/button.tsx'
import type { PlainReading } from '../reading/plain-reading.ts'
import './warning-list.css'

type Warning = PlainReading['warnings'][number]

/** The beads a warning points at, while it is shown on the drawing. */
export type ShownWarning = Pick<Warning, 'partId' | 'code' | 'beads'>

const tones: Readonly<Record<Warning['severity'], readonly [BadgeTone, string]>> = {
  note: ['quiet', 'Note'],
  warning: ['attention', 'Look at this'],
  impossible: ['bad', 'Cannot be stitched'],
}

/** What the maker must know of the work, each line pointing at its beads. */
export function WarningList({
  warnings,
  body,
  shown,
  onShow,
}: Readonly<{
  warnings: readonly Warning[]
  body: DesignBody
  shown: ShownWarning | undefined
  onShow: (warning: ShownWarning | undefined) => void
}>) {
  if (warnings.length === 0) return null
  const isShown = ({ partId, code }: Warning) => shown?.partId === partId && shown.code === code
  return (
    <ul className="design-warnings" aria-label="Warnings">
      {warnings.map((warning) => {
        const [tone, word] = tones[warning.severity]
        const part = body.parts.find(({ id }) => id === warning.partId)
        return (
          <li key={`${warning.partId} ${warning.code} ${warning.message}`}>
            <Badge tone={tone}>{word}</Badge>
            <span>
              {body.parts.length > 1 && part !== undefined && <strong>{part.name}: </strong>}
              {warning.message} <span className="designs-quiet">{warning.next}</span>
            </span>
            {warning.beads.length > 0 && (
              <Button
                small
                aria-pressed={isShown(warning)}
                onClick={() => onShow(isShown(warning) ? undefined : warning)}
              >
                {isShown(warning) ? 'Hide the beads' : 'Show the beads'}
              </Button>
            )}
          </li>
        )
      })}
    </ul>
  )
}
