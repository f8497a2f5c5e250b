import { type RefObject, useEffect } from 'react'
import type { PictureHandle } from '../../../drawing/use-picture.ts'
import type { PointMm } from '../../../drawing/use-picture-input.ts'

/** The needle is kept this far from the picture's edges, as a share of it. */
const MARGIN = 0.12

/** Moves the picture so that a point which has left it is in its middle again; near views follow the needle. */
export function useFollow(
  picture: RefObject<PictureHandle | null>,
  point: PointMm | undefined,
): void {
  const [xMm, yMm] = [point?.xMm, point?.yMm]
  useEffect(() => {
    const handle = picture.current
    if (handle === null || xMm === undefined || yMm === undefined) return
    const { canvas } = handle.picture()
    const view = handle.view()
    const [wide, high] = [canvas.width / view.scale, canvas.height / view.scale]
    const [right, down] = [(xMm - view.xMm) / wide, (yMm - view.yMm) / high]
    const isSeen = Math.min(right, 1 - right, down, 1 - down) > MARGIN
    if (isSeen || isAllSeen(handle)) return
    handle.setView({ ...view, xMm: xMm - wide / 2, yMm: yMm - high / 2 })
  }, [picture, xMm, yMm])
}

/** Whether the whole work is in the picture: then nothing needs following. */
function isAllSeen(handle: PictureHandle): boolean {
  const { canvas, work } = handle.picture()
  const { xMm, yMm, scale } = handle.view()
  return (
    xMm <= 0 &&
    yMm <= 0 &&
    xMm + canvas.width / scale >= work.widthMm &&
    yMm + canvas.height / scale >= work.heightMm
  )
}
