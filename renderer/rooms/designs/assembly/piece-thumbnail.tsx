import { useEffect, useRef } from 'react'
import { screenRatio } from '../../../drawing/screen-ratio.ts'
import type { Assembly } from './assemble.ts'
import { drawAssembly } from './draw-assembly.ts'
import { drawWhenIdle } from './draw-when-idle.ts'
import { keepPicture, keptPicture } from './picture-store.ts'
import '../../../drawing/bead-thumbnail.css'

type PieceThumbnailProps = Readonly<{
  /** Made only when it is not drawn yet; keep its identity while it shows the same. */
  assembly: (() => Assembly | undefined) | undefined
  /** Names what is drawn: the same key is the same picture. */
  pictureKey: string
  label: string
  width: number
  height: number
}>

/** A small still picture of a whole piece: panels, strands and findings on their tray. */
export function PieceThumbnail({
  assembly,
  pictureKey,
  label,
  width,
  height,
}: PieceThumbnailProps) {
  const canvas = useRef<HTMLCanvasElement>(null)
  useEffect(() => {
    const target = canvas.current
    if (target === null || assembly === undefined) return
    const key = `${pictureKey} ${width} ${height} ${screenRatio()}`
    const before = keptPicture(key)
    if (before !== undefined) return show(target, before)
    return drawWhenIdle(() => {
      const made = assembly()
      if (made === undefined) return
      drawAssembly(target, made, { width, height })
      keepPicture(key, target)
    })
  }, [assembly, pictureKey, width, height])
  return (
    <div className="bead-thumbnail" role="img" aria-label={label} style={{ width, height }}>
      <canvas ref={canvas} style={{ width, height }} />
    </div>
  )
}

function show(target: HTMLCanvasElement, picture: HTMLCanvasElement): void {
  target.width = picture.width
  target.height = picture.height
  target.getContext('2d')?.drawImage(picture, 0, 0)
}
