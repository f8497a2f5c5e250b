import { type KeyboardEvent, type PointerEvent, type RefObject, useEffect, useRef } from 'react'
import type { PictureHandle } from './use-picture.ts'
import { pan, viewAfterKey, wheel } from './view-control.ts'

/** A tool that takes the left button of the mouse, either end of the pen (button 0 or 5) or the finger; points are mm of the work. */
export type PictureTool = Readonly<{
  cursor?: string
  onDown: (point: PointMm, event: PointerEvent) => void
  onMove: (point: PointMm, event: PointerEvent) => void
  onUp: (point: PointMm, event: PointerEvent) => void
}>

/** A point of the work, mm. */
export type PointMm = Readonly<{ xMm: number; yMm: number }>

/** What the picture's canvas listens to: keys and pointers. The wheel is heard by itself, because it must not scroll. */
export function usePictureInput(
  frame: RefObject<HTMLElement | null>,
  handle: PictureHandle,
  tool: PictureTool | undefined,
) {
  const drag = useRef<Readonly<{ x: number; y: number }>>(undefined)
  useWheel(frame, handle)

  function onPointerDown(event: PointerEvent): void {
    const isDrag = tool === undefined ? event.button <= 1 : event.button === 1 || event.button === 2
    event.currentTarget.setPointerCapture(event.pointerId)
    if (isDrag) drag.current = { x: event.clientX, y: event.clientY }
    else if (event.button === 0 || event.button === 5) tool?.onDown(handle.pointAt(event), event)
  }

  function onPointerMove(event: PointerEvent): void {
    const from = drag.current
    if (from === undefined) {
      tool?.onMove(handle.pointAt(event), event)
      return
    }
    const { ratio } = handle.picture()
    const [dx, dy] = [(event.clientX - from.x) * ratio, (event.clientY - from.y) * ratio]
    drag.current = { x: event.clientX, y: event.clientY }
    handle.setView(pan(handle.picture(), handle.view(), dx, dy))
  }

  function onPointerUp(event: PointerEvent): void {
    if (drag.current === undefined) tool?.onUp(handle.pointAt(event), event)
    drag.current = undefined
  }

  function onKeyDown(event: KeyboardEvent): void {
    if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return
    const next = viewAfterKey(handle.picture(), handle.view(), event.key)
    if (next === undefined) return
    event.preventDefault()
    if (next === 'fit') handle.fit()
    else handle.setView(next)
  }

  return { onPointerDown, onPointerMove, onPointerUp, onPointerCancel: onPointerUp, onKeyDown }
}

function useWheel(frame: RefObject<HTMLElement | null>, handle: PictureHandle): void {
  useEffect(() => {
    const element = frame.current
    if (element === null) return
    const onWheel = (event: WheelEvent) => {
      event.preventDefault()
      const box = element.getBoundingClientRect()
      const { ratio } = handle.picture()
      const at = { x: (event.clientX - box.left) * ratio, y: (event.clientY - box.top) * ratio }
      handle.setView(wheel(handle.picture(), handle.view(), event, at))
    }
    element.addEventListener('wheel', onWheel, { passive: false })
    return () => element.removeEventListener('wheel', onWheel)
  }, [frame, handle])
}
