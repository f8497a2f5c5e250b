import { useEffect, useRef } from 'react'
import { paintTray } from '../drawing/paint-tray.ts'
import { screenRatio } from '../drawing/screen-ratio.ts'

/** The first thing anyone sees: a tray of beads under a lamp. */
export function FirstPicture() {
  const frame = useRef<HTMLDivElement>(null)
  const canvas = useRef<HTMLCanvasElement>(null)
  useEffect(() => {
    const place = frame.current
    if (place === null) return
    const sizes = new ResizeObserver(() => paint(place, canvas.current))
    sizes.observe(place)
    return () => sizes.disconnect()
  }, [])
  return (
    <div ref={frame} className="first-picture" aria-hidden="true">
      <canvas ref={canvas} />
    </div>
  )
}

function paint(place: HTMLElement, canvas: HTMLCanvasElement | null): void {
  const brush = canvas?.getContext('2d')
  if (canvas === null || brush === null || brush === undefined) return
  // Not seen yet: there is no room to paint in.
  if (place.clientWidth === 0) return
  const ratio = screenRatio()
  canvas.width = Math.round(place.clientWidth * ratio)
  canvas.height = Math.round(place.clientHeight * ratio)
  paintTray(brush, canvas.width, canvas.height)
}
