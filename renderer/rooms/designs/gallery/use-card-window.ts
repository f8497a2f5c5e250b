import { type RefObject, useLayoutEffect, useState } from 'react'

/** Cards of a long wall that are there, by their numbers, and the heights that stand for the others. */
export type CardWindow = Readonly<{ from: number; to: number; abovePx: number; belowPx: number }>

/** A wall of equal cards: how many stand in a row, and from one row to the next, px. */
export type Wall = Readonly<{ count: number; columns: number; stepPx: number }>

/** Rows kept ready above and below what is seen. */
const SPARE_ROWS = 1

/** Which cards of a wall to have on the page while it scrolls in whatever box holds it. */
export function useCardWindow(grid: RefObject<HTMLElement | null>, wall: Wall): CardWindow {
  const { stepPx } = wall
  const [rows, setRows] = useState<Rows>({ first: 0, last: 2 })
  useLayoutEffect(() => {
    const element = grid.current
    if (element === null) return
    const box = scrollerOf(element)
    const look = () => {
      const topPx = box.getBoundingClientRect().top - element.getBoundingClientRect().top
      const seen = rowsSeen({ topPx, heightPx: box.clientHeight }, stepPx)
      setRows((before) => (isSame(before, seen) ? before : seen))
    }
    const sizes = new ResizeObserver(look)
    sizes.observe(box)
    box.addEventListener('scroll', look, { passive: true })
    look()
    return () => {
      sizes.disconnect()
      box.removeEventListener('scroll', look)
    }
  }, [grid, stepPx])
  return cardsIn(rows, wall)
}

type Rows = Readonly<{ first: number; last: number }>

/** The rows of a wall that a view `topPx` below the wall's top needs. */
export function rowsSeen(
  { topPx, heightPx }: Readonly<{ topPx: number; heightPx: number }>,
  stepPx: number,
): Rows {
  const first = Math.floor(topPx / stepPx) - SPARE_ROWS
  const last = Math.floor((topPx + heightPx) / stepPx) + SPARE_ROWS
  return { first: Math.max(0, first), last: Math.max(0, last) }
}

/** The cards of those rows, and the height of the rows before and after them. */
export function cardsIn({ first, last }: Rows, { count, columns, stepPx }: Wall): CardWindow {
  const rows = Math.ceil(count / columns)
  // A search shortens the wall under a view that was further down.
  const from = Math.min(first, Math.max(0, rows - 1))
  const to = Math.min(rows, Math.max(from + 1, last + 1))
  return {
    from: from * columns,
    to: Math.min(count, to * columns),
    abovePx: from * stepPx,
    belowPx: (rows - to) * stepPx,
  }
}

function isSame(a: Rows, b: Rows): boolean {
  return a.first === b.first && a.last === b.last
}

function scrollerOf(element: HTMLElement): HTMLElement {
  for (let at = element.parentElement; at !== null; at = at.parentElement) {
    if (/auto|scroll/.test(getComputedStyle(at).overflowY)) return at
  }
  return document.documentElement
}
