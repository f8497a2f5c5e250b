/** A picture: sRGB bytes r, g, b, a for each pixel, row by row from the top, `width` x `height`. */
export type Picture = Readonly<{
  rgba: Uint8Array | Uint8ClampedArray
  width: number
  height: number
}>

/** A part of a picture in pixels from its upper left corner. */
export type PictureCrop = Readonly<{ x: number; y: number; width: number; height: number }>

/**
 * Where a chart's cells lie, whatever its stitch.
 *
 * `x` and `y` are the cells' centres in mm, y downwards; a cell covers `pitchX` x `pitchY` mm around
 * its centre. Rows may be half a bead out of step and end anywhere.
 */
export type CellLayout = Readonly<{
  x: ArrayLike<number>
  y: ArrayLike<number>
  pitchX: number
  pitchY: number
}>

/** How the cropped picture is laid on the chart: to fill it, to fit in it, or stretched to its sides. */
export type PictureFit = 'cover' | 'contain' | 'stretch'

/** What a long piece of work says while it runs: its stage and the share done, 0 to 1. */
export type PictureProgress = Readonly<{ stage: PictureStage; done: number }>

/** How far a picture has come on its way to a chart. */
export type PictureStage = 'sampling' | 'choosing' | 'matching' | 'tidying'
