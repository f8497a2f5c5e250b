import { type KeyboardEvent, memo, type Ref, useId, useImperativeHandle, useRef } from 'react'
import { IconButton } from '../ui/button.tsx'
import type { BeadScene } from './bead-scene.ts'
import type { OverlayLayer } from './overlay.ts'
import { type PictureHandle, usePicture } from './use-picture.ts'
import { type PictureTool, usePictureInput } from './use-picture-input.ts'
import { zoom } from './view-control.ts'
import './bead-picture.css'

type BeadPictureProps = Readonly<{
  scene: BeadScene
  /** What the picture shows: `Tidewrack diamond, front`. */
  label: string
  /** The picture in words, for those who do not see it: size, rows, beads by colour. */
  description: string
  /** Drawn over the beads, first to last. Keep the array stable. */
  layers?: readonly OverlayLayer[]
  tool?: PictureTool | undefined
  /** Keys before the picture's own; call `preventDefault` to keep one. */
  onKeyDown?: (event: KeyboardEvent) => void
  /** `application` where keys draw, so that a screen reader hands them through. */
  role?: 'img' | 'application'
  ref?: Ref<PictureHandle>
}>

const NO_LAYERS: readonly OverlayLayer[] = []

/** Beads as they lie under the lamp: wheel, pinch, drag and keys move it; only what changed is painted. */
export function BeadPicture({
  scene,
  label,
  description,
  layers = NO_LAYERS,
  tool,
  onKeyDown,
  role = 'img',
  ref,
}: BeadPictureProps) {
  const frame = useRef<HTMLDivElement>(null)
  const beads = useRef<HTMLCanvasElement>(null)
  const over = useRef<HTMLCanvasElement>(null)
  const handle = usePicture({ frame, beads, over }, scene, layers)
  const input = usePictureInput(frame, handle, tool)
  const id = useId()
  useImperativeHandle(ref, () => handle, [handle])
  return (
    <div className="bead-picture">
      {/* biome-ignore lint/a11y/noStaticElementInteractions: it always has one of two roles */}
      {/* biome-ignore lint/a11y/useAriaPropsSupportedByRole: both roles have a name */}
      <div
        ref={frame}
        className="bead-picture-frame"
        role={role}
        tabIndex={0}
        aria-label={label}
        aria-describedby={id}
        style={{ cursor: tool?.cursor ?? 'grab' }}
        {...input}
        onKeyDown={(event) => {
          onKeyDown?.(event)
          input.onKeyDown(event)
        }}
        onContextMenu={(event) => event.preventDefault()}
      >
        <canvas ref={beads} />
        <canvas ref={over} />
      </div>
      <p id={id} className="unseen">
        {description}
      </p>
      <ViewButtons handle={handle} />
    </div>
  )
}

const ViewButtons = memo(function ViewButtons({ handle }: Readonly<{ handle: PictureHandle }>) {
  const step = (factor: number) => handle.setView(zoom(handle.picture(), handle.view(), factor))
  return (
    <div className="bead-picture-buttons">
      <IconButton icon="less" label="Farther" onClick={() => step(1 / 1.4)} />
      <IconButton icon="add" label="Nearer" onClick={() => step(1.4)} />
      <IconButton icon="fit" label="Show all of it" onClick={() => handle.fit()} />
    </div>
  )
})
