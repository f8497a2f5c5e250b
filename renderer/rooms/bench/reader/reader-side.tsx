import type { PlacedLine, ReaderMap } from '../../../../shared-core/bench/reader-place.ts'
import type { WorkClock } from '../../../../shared-core/bench/work-clock.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { Format } from '../../../app/format.ts'
import { Tabs } from '../../../ui/tabs.tsx'
import type { Assembly } from '../../designs/assembly/assemble.ts'
import { PieceView } from './piece-view.tsx'
import type { ReaderSettings } from './reader-settings.ts'
import { RowList } from './row-list.tsx'
import { SettingsPanel } from './settings-panel.tsx'
import type { Telling } from './tell-line.ts'

export type SideView = 'piece' | 'rows' | 'settings'

type ReaderSideProps = Readonly<{
  view: SideView
  map: ReaderMap
  at: number
  placed: PlacedLine
  body: DesignBody
  assembly: Assembly | undefined
  clock: WorkClock
  format: Format
  tell: Telling
  settings: ReaderSettings
  isLearning: boolean
  onView: (view: SideView) => void
  onJump: (at: number) => void
  onChange: (more: Partial<ReaderSettings>) => void
  onLearning: (isLearning: boolean) => void
}>

/** Beside the row: the whole piece, the list of rows to go to, and what can be set. */
export function ReaderSide(props: ReaderSideProps) {
  const { view, onView } = props
  return (
    <aside
      className={`reader-side${view === 'piece' ? '' : ' reader-side-wide'}`}
      aria-label="The piece"
      data-reader-own-keys
    >
      <Tabs
        label="Beside the row"
        value={view}
        onChange={onView}
        tabs={[
          { value: 'piece', label: 'Piece', panel: <PieceView {...props} /> },
          { value: 'rows', label: 'Rows', panel: <RowList {...props} /> },
          { value: 'settings', label: 'Settings', panel: <SettingsPanel {...props} /> },
        ]}
      />
    </aside>
  )
}
