import type { Stroke } from './body-edit.ts'

/** Two strokes as one step for the maker: `second` is drawn on the body that `first` leaves. */
export function joinStrokes(label: string, first: Stroke, second: Stroke): Stroke {
  return {
    label,
    redo: [...first.redo, ...second.redo],
    undo: [...second.undo, ...first.undo],
  }
}
