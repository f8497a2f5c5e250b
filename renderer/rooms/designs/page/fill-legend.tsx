import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { Format } from '../../../app/format.ts'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import { countLevels } from '../layers/count-levels.ts'
import { fillLevels } from '../layers/pass-levels.ts'
import type { PlainReading } from '../reading/plain-reading.ts'
import { fillWords } from './fill-words.ts'
import { LegendChip } from './legend-chip.tsx'
import './legend.css'

const signs = ['', '╱', '✕'] as const

/** Free, tight and full beads, at which pass a hole sticks, and what the core advises. */
export function FillLegend({
  reading,
  body,
  levels,
  format,
}: Readonly<{
  reading: PlainReading | undefined
  body: DesignBody
  levels: Uint16Array
  format: Format
}>) {
  const counts = countLevels(levels)
  const tables = useBeadTables()
  return (
    <>
      <ul className="legend" aria-label="How full the holes are">
        {fillLevels.map(({ level, hex, ink, name, says }) => (
          <li key={level}>
            <LegendChip hex={hex} ink={ink}>
              {signs[level]}
            </LegendChip>
            <span>
              {name}:{' '}
              {format.counted(counts.find((one) => one.level === level)?.beads ?? 0, 'bead')}
              <span className="legend-count">{says}</span>
            </span>
          </li>
        ))}
      </ul>
      {reading !== undefined && (
        <div className="legend-says">
          <p>{fillWords(body, reading, tables).join(' ')}</p>
        </div>
      )}
    </>
  )
}
