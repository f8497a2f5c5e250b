import { useEffect, useMemo, useSyncExternalStore } from 'react'
import { useUndoTarget } from '../../../app/undo-target.ts'
import type { ClipBoard } from './table-clip.ts'
import { TableModel } from './table-model.ts'
import type { TableView } from './table-state.ts'
import type { Draft } from './use-draft.ts'

/** What is copied on one design can be pasted on another, as long as the window is open. */
const clipBoard: ClipBoard = { kept: undefined }

/** The table's own state over a draft; undo and redo of the whole app speak to it while it is shown. */
export function useTableModel({
  session,
  undo,
  redo,
}: Pick<Draft, 'session' | 'undo' | 'redo'>): TableModel {
  const model = useMemo(
    () =>
      new TableModel({
        view: session.view,
        stroke: (label, partId, edit, palette) => session.stroke(label, partId, edit, palette),
        clipBoard,
      }),
    [session],
  )
  useEffect(() => session.subscribe(model.refresh), [session, model])
  const target = useMemo(() => {
    const leaving = (step: () => void, word: string, label: () => string | undefined) => () => {
      const what = label()
      // A stroke under way rests on the drawing as it was.
      model.cancel()
      step()
      model.tell(what === undefined ? `Nothing to ${word.toLowerCase()}` : `${word}: ${what}`)
    }
    return {
      undo: leaving(undo, 'Undo', () => session.view().undoLabel),
      redo: leaving(redo, 'Redo', () => session.view().redoLabel),
    }
  }, [model, undo, redo, session])
  useUndoTarget(target)
  return model
}

/**
 * What a component shows of the table. It is drawn again only when that changes and not at every move of
 * the brush; `select` gives values that stay the same while they mean the same.
 */
export function useTableView<T>(model: TableModel, select: (view: TableView) => T): T {
  return useSyncExternalStore(model.subscribe, () => select(model.view()))
}
