import type { StitchKind } from '../../../../../shared-core/chart/chart.ts'
import type { Extent } from '../../../../../shared-core/chart/outlines/parse-extent.ts'
import type { PictureCrop } from '../../../../../shared-core/colour/picture/picture.ts'
import type { Dithering } from '../../../../../shared-core/colour/picture/picture-request.ts'

/** Where colours come from: beads of stock, or as many as wanted. */
export type ColourSource = 'stock' | 'free'

/** What a maker asks of a picture; sizes as typed, tone in percent of no change. */
export type PictureSettings = Readonly<{
  crop: PictureCrop
  stitch: StitchKind
  across: string
  down: string
  /** Height follows the cropped part's own proportion. */
  isEven: boolean
  /** `undefined` until she chooses: stock where there is any. */
  source: ColourSource | undefined
  onHand: boolean
  colours: number
  dithering: Dithering
  smallestPatch: number
  brightness: number
  contrast: number
  colourfulness: number
}>

/** A picture whole, 40 mm wide, in six colours. */
export function firstSettings({
  width,
  height,
}: Readonly<{ width: number; height: number }>): PictureSettings {
  return {
    crop: { x: 0, y: 0, width, height },
    stitch: 'brick',
    across: '40 mm',
    down: '40 mm',
    isEven: true,
    source: undefined,
    onHand: false,
    colours: 6,
    dithering: 'none',
    smallestPatch: 1,
    brightness: 0,
    contrast: 0,
    colourfulness: 0,
  }
}

/** The height of a crop laid out at a width, in mm. */
export function evenHeight(widthMm: number, crop: PictureCrop): Extent {
  return { kind: 'mm', mm: (widthMm * crop.height) / crop.width }
}
