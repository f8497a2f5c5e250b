import type { Format } from '../../../app/format.ts'
import { countLevels } from '../layers/count-levels.ts'
import { passHexes, passInk } from '../layers/pass-levels.ts'
import { LegendChip } from './legend-chip.tsx'
import './legend.css'

/** What each colour means, with its number of passes and how many beads have it. */
export function PassLegend({ levels, format }: Readonly<{ levels: Uint16Array; format: Format }>) {
  const most = passHexes.length - 1
  return (
    <ul className="legend" aria-label="Passes of the thread through a bead">
      {countLevels(levels).map(({ level, beads }) => (
        <li key={level}>
          <LegendChip hex={passHexes[Math.min(level, most)] ?? ''} ink={passInk(level)}>
            {level}
          </LegendChip>
          <span>
            {format.counted(level, 'pass', 'passes')}
            <span className="legend-count">{format.counted(beads, 'bead')}</span>
          </span>
        </li>
      ))}
    </ul>
  )
}
