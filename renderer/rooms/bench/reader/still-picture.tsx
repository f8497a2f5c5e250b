import { useEffect, useRef } from 'react'
import type { BeadScene } from '../../../drawing/bead-scene.ts'
import type { OverlayLayer } from '../../../drawing/overlay.ts'
import { PicturePainter } from '../../../drawing/picture-painter.ts'
import type { SizePx, View } from '../../../drawing/view.ts'
import { watchPlace } from '../../../drawing/watch-place.ts'

type StillPictureProps = Readonly<{
  scene: BeadScene
  /** What the picture shows, in words. */
  label: string
  layers: readonly OverlayLayer[]
  /** What of the scene is seen on a canvas of a size. Keep it stable while it shows the same. */
  viewOf: (canvas: SizePx) => View
  className?: string
}>

/** Beads as they lie, in a view that follows the work: looked at, not moved by hand. */
export function StillPicture({ scene, label, layers, viewOf, className = '' }: StillPictureProps) {
  const frame = useRef<HTMLDivElement>(null)
  const beads = useRef<HTMLCanvasElement>(null)
  const over = useRef<HTMLCanvasElement>(null)
  const painter = useRef<PicturePainter>(undefined)
  const latest = useRef(viewOf)
  latest.current = viewOf
  useEffect(() => {
    const [place, lower, upper] = [frame.current, beads.current, over.current]
    if (place === null || lower === null || upper === null) return
    const made = new PicturePainter(lower, upper)
    painter.current = made
    const stop = watchPlace(place, {
      onSize: (width, height) => {
        made.resize(width, height)
        made.setView(latest.current(lower))
      },
      onTheme: () => made.changeTheme(),
    })
    return () => {
      stop()
      made.close()
      painter.current = undefined
    }
  }, [])
  useEffect(() => painter.current?.setScene(scene), [scene])
  useEffect(() => painter.current?.setLayers(layers), [layers])
  useEffect(() => {
    if (beads.current !== null) painter.current?.setView(viewOf(beads.current))
  }, [viewOf])
  return (
    <div ref={frame} className={`reader-picture ${className}`} role="img" aria-label={label}>
      <canvas ref={beads} />
      <canvas ref={over} />
    </div>
  )
}
