import { type RefObject, useLayoutEffect, useState } from 'react'

const LEAST_PX = 228
/** Between two cards, across and down. */
export const GAP_PX = 20

/** How wide a card stands in a grid of equal columns, px; pictures on cards are drawn at their true size. */
export function useCardWidth(grid: RefObject<HTMLElement | null>): number {
  return cardWidth(useGridWidth(grid))
}

/** How wide a grid is, px; as wide as one card until it is measured. */
export function useGridWidth(grid: RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(LEAST_PX)
  useLayoutEffect(() => {
    const element = grid.current
    if (element === null) return
    const measure = () => setWidth(element.clientWidth)
    const sizes = new ResizeObserver(measure)
    sizes.observe(element)
    measure()
    return () => sizes.disconnect()
  }, [grid])
  return width
}

/** The width of one of as many columns as fit. */
export function cardWidth(gridPx: number): number {
  const columns = cardColumns(gridPx)
  return Math.floor((gridPx - GAP_PX * (columns - 1)) / columns)
}

/** How many columns of cards fit. */
export function cardColumns(gridPx: number): number {
  return Math.max(1, Math.floor((gridPx + GAP_PX) / (LEAST_PX + GAP_PX)))
}
