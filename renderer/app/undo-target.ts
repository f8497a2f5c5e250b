import { useEffect } from 'react'
import { redo, undo } from './step-back.ts'

/** Something with an undo of its own, such as the drawing table with its strokes. */
export type UndoTarget = Readonly<{ undo: () => void; redo: () => void }>

const studio: UndoTarget = { undo: () => void undo(), redo: () => void redo() }
const targets: UndoTarget[] = []

/** Whom Ctrl+Z speaks to now: the latest screen that asked for it, else the studio's history. */
export function undoTarget(): UndoTarget {
  return targets.at(-1) ?? studio
}

/** Lets a screen answer undo and redo itself for as long as it is shown. */
export function useUndoTarget(target: UndoTarget): void {
  useEffect(() => {
    targets.push(target)
    return () => {
      targets.splice(targets.lastIndexOf(target), 1)
    }
  }, [target])
}
