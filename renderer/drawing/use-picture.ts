import { type RefObject, useEffect, useMemo, useRef } from 'react'
import { type BeadScene, beadReach } from './bead-scene.ts'
import type { OverlayLayer } from './overlay.ts'
import { PicturePainter } from './picture-painter.ts'
import { screenRatio } from './screen-ratio.ts'
import { fitView, type View } from './view.ts'
import type { Picture } from './view-control.ts'
import { watchPlace } from './watch-place.ts'

/** A picture on the page: what is seen of it now, and how to see something else. */
export type PictureHandle = Readonly<{
  picture: () => Picture
  view: () => View
  setView: (view: View) => void
  fit: () => void
  /** The point of the work under a pointer, mm. */
  pointAt: (event: Readonly<{ clientX: number; clientY: number }>) => Readonly<{
    xMm: number
    yMm: number
  }>
}>

type Canvases = Readonly<{
  frame: RefObject<HTMLElement | null>
  beads: RefObject<HTMLCanvasElement | null>
  over: RefObject<HTMLCanvasElement | null>
}>

/** Paints a scene on two canvases and keeps it fitted to its frame until the maker moves it. */
export function usePicture(
  { frame, beads, over }: Canvases,
  scene: BeadScene,
  layers: readonly OverlayLayer[],
): PictureHandle {
  const painter = useRef<PicturePainter>(undefined)
  const view = useRef<View>({ xMm: 0, yMm: 0, scale: 1 })
  const isFitted = useRef(true)
  const latest = useRef(scene)
  latest.current = scene

  const handle = useMemo((): PictureHandle => {
    const picture = () => pictureOf(latest.current, beads.current)
    const show = (next: View) => {
      view.current = next
      painter.current?.setView(next)
    }
    return {
      picture,
      view: () => view.current,
      setView: (next) => {
        isFitted.current = false
        show(next)
      },
      fit: () => {
        isFitted.current = true
        const { work, canvas } = picture()
        show(fitView(work, canvas))
      },
      pointAt: ({ clientX, clientY }) => {
        const box = beads.current?.getBoundingClientRect()
        const scale = view.current.scale / screenRatio()
        return {
          xMm: view.current.xMm + (clientX - (box?.left ?? 0)) / scale,
          yMm: view.current.yMm + (clientY - (box?.top ?? 0)) / scale,
        }
      },
    }
  }, [beads])

  useEffect(() => {
    const [place, lower, upper] = [frame.current, beads.current, over.current]
    if (place === null || lower === null || upper === null) return
    const made = new PicturePainter(lower, upper)
    painter.current = made
    let ratio = screenRatio()
    const stopWatching = watchPlace(place, {
      onSize: (width, height) => {
        made.resize(width, height)
        const finer = screenRatio() / ratio
        ratio = screenRatio()
        view.current = { ...view.current, scale: view.current.scale * finer }
        if (isFitted.current) handle.fit()
        else made.setView(view.current)
      },
      onTheme: () => made.changeTheme(),
    })
    return () => {
      stopWatching()
      made.close()
      painter.current = undefined
    }
  }, [frame, beads, over, handle])

  const { widthMm, heightMm } = scene
  useEffect(() => painter.current?.setScene(scene), [scene])
  useEffect(() => painter.current?.setLayers(layers), [layers])
  // biome-ignore lint/correctness/useExhaustiveDependencies: fitted again only when the work's size changes
  useEffect(() => {
    if (isFitted.current) handle.fit()
  }, [widthMm, heightMm, handle])
  return handle
}

function pictureOf(scene: BeadScene, canvas: HTMLCanvasElement | null): Picture {
  const reach = beadReach(scene)
  return {
    work: scene,
    beadMm: 2 * Math.min(reach.xMm, reach.yMm),
    canvas: { width: canvas?.width ?? 1, height: canvas?.height ?? 1 },
    ratio: screenRatio(),
  }
}
