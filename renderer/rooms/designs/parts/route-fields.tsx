import type { Panel, RouteSettings } from '../../../../shared-core/design/design.ts'
import { parseCount } from '../../../../shared-core/units/parse-count.ts'
import { parseThread } from '../../../../shared-core/units/parse-length.ts'
import type { Format } from '../../../app/format.ts'
import { Checkbox } from '../../../ui/checkbox.tsx'
import { SegmentedChoice } from '../../../ui/segmented-choice.tsx'
import { Select } from '../../../ui/select.tsx'
import { KeptFigure } from './kept-field.tsx'

type Change = Readonly<{ [K in keyof RouteSettings]?: RouteSettings[K] | undefined }>

/** Where a panel is begun, how it is locked and what thread is left over; what stays open the studio chooses. */
export function RouteFields({
  panel: { chart, route },
  format,
  asTyped = false,
  onChange,
}: Readonly<{
  panel: Panel
  format: Format
  /** Figures are kept at every key, for what follows the typing; else once a field is done. */
  asTyped?: boolean
  onChange: (what: string, route: RouteSettings) => void
}>) {
  const set = (what: string, change: Change) => onChange(what, withoutOpen({ ...route, ...change }))
  const count = (text: string) => parseCount(text, { decimal: format.decimal })
  const { stitch } = chart
  return (
    <>
      {(stitch === 'brick' || stitch === 'peyote') && (
        <KeptFigure
          label="Start row"
          optional
          asTyped={asTyped}
          hint={`From the top, 1 to ${format.count(chart.rows.length)}`}
          value={route.startRow === undefined ? undefined : route.startRow + 1}
          write={format.count}
          parse={count}
          range={[1, chart.rows.length]}
          onKeep={(row) =>
            set('the start row', { startRow: row === undefined ? undefined : row - 1 })
          }
        />
      )}
      <SegmentedChoice
        label="Side it starts at"
        value={route.startSide ?? 'open'}
        options={[
          { value: 'open', label: 'Studio’s choice' },
          { value: 'left', label: 'Left' },
          { value: 'right', label: 'Right' },
        ]}
        onChange={(side) =>
          set('the side it starts at', { startSide: side === 'open' ? undefined : side })
        }
      />
      {stitch === 'brick' && <BrickFields route={route} onChange={set} />}
      {(stitch === 'square' || stitch === 'ladder') && (
        <Checkbox
          label="A second pass through each row"
          checked={route.reinforce ?? false}
          onChange={(reinforce) =>
            set('the second pass', { reinforce: reinforce ? true : undefined })
          }
        />
      )}
      <KeptFigure
        label="Times round a loop"
        optional
        asTyped={asTyped}
        hint="3 unless you say otherwise"
        value={route.loopPasses}
        write={format.count}
        parse={count}
        range={[1, 6]}
        onKeep={(loopPasses) => set('the times round a loop', { loopPasses })}
      />
      <ThreadFields {...{ route, format, asTyped }} onChange={set} />
    </>
  )
}

type RouteChange = (what: string, change: Change) => void

function BrickFields({
  route,
  onChange,
}: Readonly<{ route: RouteSettings; onChange: RouteChange }>) {
  return (
    <>
      <Select
        label="Start"
        value={route.start ?? 'open'}
        options={[
          { value: 'open', label: 'Studio’s choice' },
          { value: 'ladder', label: 'Ladder row' },
          { value: 'two-bead', label: 'Two beads' },
        ]}
        onChange={(start) => onChange('the start', { start: start === 'open' ? undefined : start })}
      />
      <Checkbox
        label="Lock pass at every row’s start"
        hint="It is made anyway where a row shrinks at its start."
        checked={route.lockEveryRow ?? false}
        onChange={(lock) => onChange('the lock pass', { lockEveryRow: lock ? true : undefined })}
      />
    </>
  )
}

function ThreadFields({
  route,
  format,
  asTyped,
  onChange,
}: Readonly<{
  route: RouteSettings
  format: Format
  asTyped: boolean
  onChange: RouteChange
}>) {
  const thread = (unit: 'cm' | 'm') => (text: string) =>
    parseThread(text, { decimal: format.decimal, unit })
  return (
    <>
      <div className="designs-pair">
        <KeptFigure
          label="Tail at the start"
          optional
          asTyped={asTyped}
          value={route.startTailMm}
          write={format.thread}
          parse={thread('cm')}
          range={[0, 5_000]}
          onKeep={(startTailMm) => onChange('the first tail', { startTailMm })}
        />
        <KeptFigure
          label="Tail at the end"
          optional
          asTyped={asTyped}
          value={route.endTailMm}
          write={format.thread}
          parse={thread('cm')}
          range={[0, 5_000]}
          onKeep={(endTailMm) => onChange('the last tail', { endTailMm })}
        />
      </div>
      <KeptFigure
        label="Longest thread you like to work with"
        optional
        asTyped={asTyped}
        hint={`Such as ${format.thread(1_600)}`}
        value={route.workingLengthMm}
        write={format.thread}
        parse={thread('m')}
        range={[300, 20_000]}
        onKeep={(workingLengthMm) => onChange('the longest thread', { workingLengthMm })}
      />
    </>
  )
}

/** Settings without what was left open. */
function withoutOpen(change: Change): RouteSettings {
  return Object.fromEntries(
    Object.entries(change).filter(([, value]) => value !== undefined),
  ) as RouteSettings
}
