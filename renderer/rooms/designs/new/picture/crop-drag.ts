import type { PictureCrop } from '../../../../../shared-core/colour/picture/picture.ts'

/** The whole of a picture, in pixels. */
export type PictureSize = Readonly<{ width: number; height: number }>

/** What of a crop is held: all of it, or one of its corners. */
export type CropHandle = 'move' | 'nw' | 'ne' | 'sw' | 'se'

export const CORNERS = ['nw', 'ne', 'sw', 'se'] as const

/** A crop after it is moved, or one of its corners, by whole pixels; it stays inside and keeps a pixel. */
export function dragCrop(
  crop: PictureCrop,
  { handle, dx, dy }: Readonly<{ handle: CropHandle; dx: number; dy: number }>,
  size: PictureSize,
): PictureCrop {
  const across = along(crop.x, crop.width, {
    handle,
    by: Math.round(dx),
    from: 'w',
    most: size.width,
  })
  const down = along(crop.y, crop.height, {
    handle,
    by: Math.round(dy),
    from: 'n',
    most: size.height,
  })
  return { x: across.at, width: across.length, y: down.at, height: down.length }
}

/** The crop between two corners, in any order. */
export function cropBetween(
  a: Readonly<{ x: number; y: number }>,
  b: Readonly<{ x: number; y: number }>,
  size: PictureSize,
): PictureCrop {
  const across = between(a.x, b.x, size.width)
  const down = between(a.y, b.y, size.height)
  return { x: across.at, width: across.length, y: down.at, height: down.length }
}

/** A crop brought inside the picture, whole pixels, at least one each way. */
export function clampCrop({ x, y, width, height }: PictureCrop, size: PictureSize): PictureCrop {
  const left = clamp(Math.round(x), 0, size.width - 1)
  const top = clamp(Math.round(y), 0, size.height - 1)
  return {
    x: left,
    y: top,
    width: clamp(Math.round(width), 1, size.width - left),
    height: clamp(Math.round(height), 1, size.height - top),
  }
}

type Line = Readonly<{ at: number; length: number }>
type Pull = Readonly<{ handle: CropHandle; by: number; from: 'w' | 'n'; most: number }>

function along(at: number, length: number, { handle, by, from, most }: Pull): Line {
  if (handle === 'move') return { at: clamp(at + by, 0, most - length), length }
  const end = at + length
  if (!handle.includes(from)) return { at, length: clamp(end + by, at + 1, most) - at }
  const begin = clamp(at + by, 0, end - 1)
  return { at: begin, length: end - begin }
}

function between(a: number, b: number, most: number): Line {
  const at = clamp(Math.floor(Math.min(a, b)), 0, most - 1)
  return { at, length: clamp(Math.ceil(Math.max(a, b)), at + 1, most) - at }
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value))
}
