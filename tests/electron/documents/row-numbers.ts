import type { Mark } from '../../../electron/service/documents/draw-list.ts'

/** Numbers of rows are the small ones at a side; those of columns stand centred. */
export function rowNumbersOf(marks: readonly Mark[]): readonly number[] {
  return marks.flatMap((mark) =>
    mark.kind === 'text' && mark.sizePt === 6.5 && mark.align !== 'centre'
      ? [Number(mark.text)]
      : [],
  )
}
