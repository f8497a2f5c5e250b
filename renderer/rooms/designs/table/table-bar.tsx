import { memo, type Ref } from 'react'
import { undoTarget } from '../../../app/undo-target.ts'
import { IconButton } from '../../../ui/button.tsx'
import { Select } from '../../../ui/select.tsx'
import { ActMenu, type MenuAct } from './act-menu.tsx'
import { startMenu } from './start-acts.ts'
import { type TableAct, tableActs } from './table-acts.ts'
import type { TableModel } from './table-model.ts'
import { mirrorWays } from './tools.ts'
import type { Draft } from './use-draft.ts'
import { useTableView } from './use-table-model.ts'

type TableBarProps = Readonly<{
  model: TableModel
  draft: Draft
  isWide: boolean
  onWide: (from: HTMLElement) => void
  /** The button that folds the palette away and brings it back. */
  foldButton: Ref<HTMLButtonElement>
}>

/** Over the picture: which panel, undo and redo, the mirror, and what is done to rows, columns and the chart. */
export const TableBar = memo(function TableBar({
  model,
  draft,
  isWide,
  onWide,
  foldButton,
}: TableBarProps) {
  const panelId = useTableView(model, ({ panel }) => panel?.id)
  const mirror = useTableView(model, (view) => view.mirror)
  const panels = draft.body.parts.filter(({ kind }) => kind === 'panel')
  const { undoLabel, redoLabel } = draft
  return (
    <section className="table-bar" aria-label="Drawing">
      <IconButton
        icon="undo"
        label={undoLabel === undefined ? 'Nothing to undo' : `Undo: ${undoLabel}`}
        disabled={undoLabel === undefined}
        onClick={() => undoTarget().undo()}
      />
      <IconButton
        icon="redo"
        label={redoLabel === undefined ? 'Nothing to redo' : `Redo: ${redoLabel}`}
        disabled={redoLabel === undefined}
        onClick={() => undoTarget().redo()}
      />
      {panels.length > 1 && (
        <Select
          label="Panel"
          labelHidden
          value={panelId ?? null}
          options={panels.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={(id) => model.choosePart(id)}
        />
      )}
      <Select
        label="Mirror while drawing"
        labelHidden
        value={mirror}
        options={mirrorWays}
        onChange={(way) =>
          model.chooseMirror(way, mirrorWays.find(({ value }) => value === way)?.label ?? '')
        }
      />
      <ActMenu label="Selection" groups={() => selectionMenu(model)} />
      <ActMenu
        label="Rows"
        groups={() => [actsOf(model, 'rows'), actsOf(model, 'ends'), startMenu(model, draft)]}
      />
      <ActMenu label="Columns" groups={() => [actsOf(model, 'columns')]} />
      <ActMenu label="Chart" groups={() => [actsOf(model, 'chart')]} />
      <IconButton
        ref={foldButton}
        className="table-fold"
        icon="side"
        label={isWide ? 'Show palette and figures (W)' : 'Fold palette and figures away (W)'}
        aria-keyshortcuts="W"
        onClick={(event) => onWide(event.currentTarget)}
      />
    </section>
  )
})

function actsOf(model: TableModel, group: TableAct['group']): readonly MenuAct[] {
  return tableActs
    .filter((act) => act.group === group)
    .map((act) => ({ name: act.name, label: act.label, key: act.key, run: () => model.act(act) }))
}

function selectionMenu(model: TableModel): readonly (readonly MenuAct[])[] {
  const { selection, hasClip } = model.view()
  const disabled = selection === undefined
  return [
    [
      { name: 'all', label: 'Select everything', key: 'Ctrl A', run: () => model.selectAll() },
      { name: 'cut', label: 'Cut', key: 'Ctrl X', run: () => model.cut() },
      { name: 'copy', label: 'Copy', key: 'Ctrl C', run: () => void model.copy() },
      {
        name: 'paste',
        label: 'Paste at the crosshair',
        key: 'Ctrl V',
        disabled: !hasClip,
        run: () => model.paste(),
      },
      { name: 'remove', label: 'Take its beads away', key: 'Delete', run: () => model.remove() },
    ],
    [
      {
        name: 'mirror-left-right',
        label: 'Mirror it left to right',
        disabled,
        run: () => model.mirrorSelected('left-right'),
      },
      {
        name: 'mirror-top-bottom',
        label: 'Mirror it top to bottom',
        disabled,
        run: () => model.mirrorSelected('top-bottom'),
      },
      {
        name: 'half-turn',
        label: 'Turn it half round',
        disabled,
        run: () => model.mirrorSelected('both'),
      },
    ],
  ]
}
