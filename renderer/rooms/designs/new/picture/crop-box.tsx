import { type KeyboardEvent, type PointerEvent, useEffect, useId, useRef } from 'react'
import type { Picture, PictureCrop } from '../../../../../shared-core/colour/picture/picture.ts'
import { CORNERS, type CropHandle, cropBetween, dragCrop } from './crop-drag.ts'
import './crop-box.css'

type CropBoxProps = Readonly<{
  picture: Picture
  crop: PictureCrop
  onCrop: (crop: PictureCrop) => void
}>

/** The longest side the picture is shown at, in pixels of its own canvas. */
const SHOWN_PX = 900

/** The picture with the part that is used: drawn anew, moved or sized by mouse, pen or keys. */
export function CropBox({ picture, crop, onCrop }: CropBoxProps) {
  const canvas = useRef<HTMLCanvasElement>(null)
  const id = useId()
  useEffect(() => {
    if (canvas.current !== null) showPicture(canvas.current, picture)
  }, [picture])
  const drag = useCropDrag(canvas, { picture, crop, onCrop })
  const percent = (part: number, whole: number) => `${(100 * part) / whole}%`
  return (
    <div className="crop">
      <div
        className="crop-frame"
        onPointerDown={drag.draw}
        onPointerMove={drag.go}
        onPointerUp={drag.end}
      >
        <canvas ref={canvas} role="img" aria-label="The picture as it came" />
        <button
          type="button"
          className="crop-part"
          aria-label="The part that is used"
          aria-describedby={id}
          style={{
            left: percent(crop.x, picture.width),
            top: percent(crop.y, picture.height),
            width: percent(crop.width, picture.width),
            height: percent(crop.height, picture.height),
          }}
          onPointerDown={(event) => drag.hold('move', event)}
          onKeyDown={(event) => cropByKey(event, { picture, crop, onCrop })}
        >
          {CORNERS.map((corner) => (
            <span
              key={corner}
              className={`crop-corner crop-corner-${corner}`}
              onPointerDown={(event) => drag.hold(corner, event)}
            />
          ))}
        </button>
      </div>
      <p id={id} className="unseen">
        Arrow keys move it, with Shift they size it, with Control ten pixels at a time.
      </p>
    </div>
  )
}

function showPicture(canvas: HTMLCanvasElement, { rgba, width, height }: Picture): void {
  const scale = SHOWN_PX / Math.max(width, height)
  canvas.width = Math.max(1, Math.round(width * scale))
  canvas.height = Math.max(1, Math.round(height * scale))
  const whole = new OffscreenCanvas(width, height)
  const pixels = new ImageData(new Uint8ClampedArray(rgba), width, height)
  whole.getContext('2d')?.putImageData(pixels, 0, 0)
  const brush = canvas.getContext('2d')
  if (brush === null) return
  // A few large pixels are shown as they are.
  brush.imageSmoothingEnabled = scale < 1
  brush.imageSmoothingQuality = 'high'
  brush.drawImage(whole, 0, 0, canvas.width, canvas.height)
}

type Held = Readonly<{
  handle: CropHandle | 'draw'
  from: Readonly<{ x: number; y: number }>
  crop: PictureCrop
}>

function useCropDrag(
  canvas: Readonly<{ current: HTMLCanvasElement | null }>,
  { picture, crop, onCrop }: CropBoxProps,
) {
  const held = useRef<Held>(undefined)
  const at = ({ clientX, clientY }: PointerEvent) => {
    const box = canvas.current?.getBoundingClientRect()
    if (box === undefined) return { x: 0, y: 0 }
    return {
      x: ((clientX - box.left) / box.width) * picture.width,
      y: ((clientY - box.top) / box.height) * picture.height,
    }
  }
  const hold = (handle: Held['handle'], event: PointerEvent) => {
    if (event.button !== 0) return
    event.stopPropagation()
    event.currentTarget.closest('.crop-frame')?.setPointerCapture(event.pointerId)
    // The whole picture has nowhere to go, so a part of it is drawn instead.
    const isWhole = crop.width === picture.width && crop.height === picture.height
    const drawn = handle === 'move' && isWhole ? 'draw' : handle
    held.current = { handle: drawn, from: at(event), crop }
  }
  return {
    hold,
    draw: (event: PointerEvent) => hold('draw', event),
    go: (event: PointerEvent) => {
      if (held.current === undefined) return
      const { handle, from, crop: before } = held.current
      const to = at(event)
      if (handle === 'draw') onCrop(cropBetween(from, to, picture))
      else onCrop(dragCrop(before, { handle, dx: to.x - from.x, dy: to.y - from.y }, picture))
    },
    end: () => {
      held.current = undefined
    },
  }
}

const KEYS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
}

function cropByKey(event: KeyboardEvent, { picture, crop, onCrop }: CropBoxProps): void {
  const way = KEYS[event.key]
  if (way === undefined) return
  event.preventDefault()
  const step = event.ctrlKey ? 10 : 1
  const handle = event.shiftKey ? 'se' : 'move'
  onCrop(dragCrop(crop, { handle, dx: way[0] * step, dy: way[1] * step }, picture))
}
