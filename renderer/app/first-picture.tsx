import { useEffect, useRef } from 'react'
import { inTurns } from '../drawing/in-turns.ts'
import { paintTray } from '../drawing/paint-tray.ts'
import { screenRatio } from '../drawing/screen-ratio.ts'

/** The first thing anyone sees: a tray of beads under a lamp. */
export function FirstPicture() {
  const frame = useRef<HTMLDivElement>(null)
  useEffect(() => {
    const place = frame.current
    if (place === null) return
    let leave: () => void = nothing
    const sizes = new ResizeObserver(() => {
      leave()
      leave = paintAside(place)
    })
    sizes.observe(place)
    return () => {
      sizes.disconnect()
      leave()
    }
  }, [])
  return <div ref={frame} className="first-picture" aria-hidden="true" />
}

const nothing = () => undefined

/**
 * Paints the tray for the size of its place out of sight, in turns, and shows it whole in one: nobody
 * waits for it and nothing is seen to build up. The picture before stays until then.
 */
function paintAside(place: HTMLElement): () => void {
  // Not seen yet: there is no room to paint in.
  if (place.clientWidth === 0) return nothing
  const canvas = document.createElement('canvas')
  const ratio = screenRatio()
  canvas.width = Math.round(place.clientWidth * ratio)
  canvas.height = Math.round(place.clientHeight * ratio)
  const brush = canvas.getContext('2d')
  if (brush === null) return nothing
  const steps = paintTray(brush, canvas.width, canvas.height)
  return inTurns(steps, () => place.replaceChildren(canvas))
}
