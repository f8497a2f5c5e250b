import { useLayoutEffect, useRef, useState } from 'react'
import { SheetPageView } from './sheet-page.tsx'
import type { SheetWish } from './sheet-wish.ts'

const MOST_PX = 720
const GAP_PX = 24
/** From this room on two pages lie side by side. */
const TWO_FROM_PX = 980

/** All pages of a sheet, side by side where there is room. */
export function PageList({
  wish,
  pages,
  shape,
}: Readonly<{ wish: SheetWish; pages: number; shape: number }>) {
  const list = useRef<HTMLOListElement>(null)
  const [roomPx, setRoomPx] = useState(0)
  useLayoutEffect(() => {
    if (list.current === null) return
    const watch = new ResizeObserver(([entry]) => {
      if (entry !== undefined) setRoomPx(Math.floor(entry.contentRect.width))
    })
    watch.observe(list.current)
    return () => watch.disconnect()
  }, [])
  const across = roomPx >= TWO_FROM_PX ? 2 : 1
  const widthPx = Math.min(MOST_PX, Math.floor((roomPx - (across - 1) * GAP_PX) / across))
  return (
    <ol ref={list} className="print-pages">
      {widthPx > 0 &&
        Array.from({ length: pages }, (_, at) => (
          <SheetPageView
            // biome-ignore lint/suspicious/noArrayIndexKey: a page is its number
            key={at}
            wish={wish}
            number={at + 1}
            pages={pages}
            widthPx={widthPx}
            shape={shape}
          />
        ))}
    </ol>
  )
}
