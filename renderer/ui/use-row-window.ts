import { type RefObject, useEffect, useState } from 'react'

/** Rows of a long table that are drawn, and the heights that stand for the others. */
export type RowWindow = Readonly<{ from: number; to: number; abovePx: number; belowPx: number }>

/** Height of a row in px; long tables hold every row to it. */
export const ROW_PX = 44
/** Shorter tables are drawn whole. */
export const WHOLE_UP_TO = 150
const SPARE_ROWS = 12

/** Which of `count` rows to draw in a scrolling box; all of them while the table is short. */
export function useRowWindow(box: RefObject<HTMLElement | null>, count: number): RowWindow {
  const [view, setView] = useState({ top: 0, height: 800 })
  const isLong = count > WHOLE_UP_TO
  useEffect(() => {
    const element = box.current
    if (element === null || !isLong) return
    const look = () => setView({ top: element.scrollTop, height: element.clientHeight })
    const sizes = new ResizeObserver(look)
    sizes.observe(element)
    element.addEventListener('scroll', look, { passive: true })
    look()
    return () => {
      sizes.disconnect()
      element.removeEventListener('scroll', look)
    }
  }, [box, isLong])
  return isLong ? rowsIn(view, count) : { from: 0, to: count, abovePx: 0, belowPx: 0 }
}

/** The rows that a view of a scrolled box needs. */
export function rowsIn(view: Readonly<{ top: number; height: number }>, count: number): RowWindow {
  const from = Math.min(count, Math.max(0, Math.floor(view.top / ROW_PX) - SPARE_ROWS))
  const to = Math.min(count, Math.ceil((view.top + view.height) / ROW_PX) + SPARE_ROWS)
  return { from, to, abovePx: from * ROW_PX, belowPx: (count - to) * ROW_PX }
}
