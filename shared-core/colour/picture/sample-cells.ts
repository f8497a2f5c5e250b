import { LIGHT_OF_BYTE } from '../srgb.ts'
import type { CellLayout, Picture, PictureCrop, PictureFit } from './picture.ts'

/**
 * The mean light of each cell: `light` holds r, g, b (0 to 1, linear) a cell, `cover` the share of
 * the cell that opaque picture covers, 0 to 1.
 */
export type CellLight = Readonly<{ light: Float64Array; cover: Float64Array }>

/** Where the chart's box lies on the picture, in pixels: a cell at (x, y) mm covers a box around it. */
type Placing = Readonly<{
  perMmX: number
  perMmY: number
  originX: number
  originY: number
}>

/** Least and greatest of a list that may be long. */
function extent(values: ArrayLike<number>): readonly [number, number] {
  let low = Number.POSITIVE_INFINITY
  let high = Number.NEGATIVE_INFINITY
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number
    if (value < low) low = value
    if (value > high) high = value
  }
  return [low, high]
}

function placing(crop: PictureCrop, cells: CellLayout, fit: PictureFit): Placing {
  const [left, right] = extent(cells.x)
  const [top, bottom] = extent(cells.y)
  const widthMm = right - left + cells.pitchX
  const heightMm = bottom - top + cells.pitchY
  const acrossX = crop.width / widthMm
  const acrossY = crop.height / heightMm
  const even = fit === 'cover' ? Math.min(acrossX, acrossY) : Math.max(acrossX, acrossY)
  const perMmX = fit === 'stretch' ? acrossX : even
  const perMmY = fit === 'stretch' ? acrossY : even
  // The middle of the chart lies on the middle of the crop.
  return {
    perMmX,
    perMmY,
    originX: crop.x + crop.width / 2 - ((left + right) / 2) * perMmX,
    originY: crop.y + crop.height / 2 - ((top + bottom) / 2) * perMmY,
  }
}

/** Cells sampled between two reports of progress. */
const BATCH = 4096

/**
 * Averages the picture over each cell's own rectangle, in linear light.
 *
 * Pixels on a cell's border count by the share of them that lies inside; see-through pixels by their
 * alpha. Each pixel of the crop is read about once, so time grows with pixels plus cells.
 *
 * @returns a generator that yields the share done, 0 to 1, and returns the cells' light.
 */
export function* sampleCells(
  picture: Picture,
  crop: PictureCrop,
  cells: CellLayout,
  fit: PictureFit,
): Generator<number, CellLight> {
  const place = placing(crop, cells, fit)
  const halfX = (cells.pitchX * place.perMmX) / 2
  const halfY = (cells.pitchY * place.perMmY) / 2
  const count = cells.x.length
  const across = new Float64Array(Math.ceil(2 * halfX) + 2)
  const found = { light: new Float64Array(3 * count), cover: new Float64Array(count) }
  for (let cell = 0; cell < count; cell++) {
    if (cell > 0 && cell % BATCH === 0) yield cell / count
    const x = place.originX + (cells.x[cell] as number) * place.perMmX
    const y = place.originY + (cells.y[cell] as number) * place.perMmY
    const left = Math.max(x - halfX, crop.x)
    const right = Math.min(x + halfX, crop.x + crop.width)
    const top = Math.max(y - halfY, crop.y)
    const bottom = Math.min(y + halfY, crop.y + crop.height)
    if (left < right && top < bottom) {
      averageBox(picture, across, { left, right, top, bottom }, 4 * halfX * halfY, found, cell)
    }
  }
  return found
}

/** How much of each column of a cell lies inside: only the border columns lie partly outside. */
function weighColumns(
  across: Float64Array,
  { left, right, first, last }: Readonly<Record<'left' | 'right' | 'first' | 'last', number>>,
): void {
  const end = last - first
  for (let column = 1; column < end; column++) across[column] = 1
  across[0] = first + 1 - left
  if (end > 0) across[end] = right - last
  else across[0] = right - left
}

type Box = Readonly<{ left: number; right: number; top: number; bottom: number }>

/** Writes the mean light of a box of pixels as that of `cell`; `whole` is the cell's own area. */
function averageBox(
  { rgba, width }: Picture,
  across: Float64Array,
  { left, right, top, bottom }: Box,
  whole: number,
  { light, cover }: CellLight,
  cell: number,
): void {
  const first = Math.floor(left)
  const last = Math.ceil(right) - 1
  weighColumns(across, { left, right, first, last })
  let r = 0
  let g = 0
  let b = 0
  let alpha = 0
  for (let row = Math.floor(top); row < bottom; row++) {
    const share = (Math.min(row + 1, bottom) - Math.max(row, top)) / 255
    let at = 4 * (row * width + first)
    for (let column = 0; column <= last - first; column++, at += 4) {
      const weight = share * (across[column] as number) * (rgba[at + 3] as number)
      r += weight * (LIGHT_OF_BYTE[rgba[at] as number] as number)
      g += weight * (LIGHT_OF_BYTE[rgba[at + 1] as number] as number)
      b += weight * (LIGHT_OF_BYTE[rgba[at + 2] as number] as number)
      alpha += weight
    }
  }
  if (alpha === 0) return
  light[3 * cell] = r / alpha
  light[3 * cell + 1] = g / alpha
  light[3 * cell + 2] = b / alpha
  cover[cell] = alpha / whole
}
