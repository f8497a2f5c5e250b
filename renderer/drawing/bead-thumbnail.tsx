import { useEffect, useRef } from 'react'
import type { BeadScene } from './bead-scene.ts'
import { drawThumbnail } from './draw-thumbnail.ts'
import './bead-thumbnail.css'

/** A small still picture of beads on their tray. The name stands beside it, so the picture is described by it. */
export function BeadThumbnail({
  scene,
  label,
  width,
  height,
}: Readonly<{ scene: BeadScene | null; label: string; width: number; height: number }>) {
  const canvas = useRef<HTMLCanvasElement>(null)
  useEffect(() => {
    if (canvas.current !== null && scene !== null) {
      drawThumbnail(canvas.current, scene, { width, height })
    }
  }, [scene, width, height])
  return (
    <div className="bead-thumbnail" role="img" aria-label={label} style={{ width, height }}>
      {scene !== null && <canvas ref={canvas} style={{ width, height }} />}
    </div>
  )
}
