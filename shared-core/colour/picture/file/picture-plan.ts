import type { Refusal } from '../../../refusal.ts'
import { err, ok, type Result } from '../../../result.ts'
import { formatCount } from '../../../units/format-number.ts'
import type { PictureHeader } from './picture-header.ts'

/** Pixels above which a picture is not decoded: 100 million take 400 MB. */
export const MAX_PICTURE_PIXELS = 100_000_000

/** The longest side of a picture that can be decoded. */
export const MAX_PICTURE_SIDE = 32_000

/** Pixels kept to work with: more than the finest chart can show. */
export const WORKING_PIXELS = 12_000_000

/** How to decode a picture, and what to say of it in plain sentences. */
export type PicturePlan = Readonly<{
  /** Width to decode to, in pixels, where the picture is made smaller. */
  resizeWidth?: number
  notes: readonly string[]
}>

/**
 * Decides how a picture is decoded: whole, or made smaller on the way in.
 *
 * @returns The plan; or `picture-too-large` when a side or the number of pixels passes its limit.
 */
export function planPicture(
  header: PictureHeader,
  { fileName }: Readonly<{ fileName: string }>,
): Result<PicturePlan, Refusal> {
  const { width, height } = header
  const isLarge = width * height > MAX_PICTURE_PIXELS
  if (isLarge || Math.max(width, height) > MAX_PICTURE_SIDE) return err(tooLarge(header, fileName))
  const notes = notesOf(header)
  if (width * height <= WORKING_PIXELS) return ok({ notes })
  const resizeWidth = Math.max(1, Math.floor(width * Math.sqrt(WORKING_PIXELS / (width * height))))
  const note = `A picture of ${formatCount(width)} by ${formatCount(height)} pixels is more than beads can show; it was made ${formatCount(resizeWidth)} pixels wide on the way in.`
  return ok({ resizeWidth, notes: [...notes, note] })
}

function notesOf({ format, width, height, bits, isAnimated, isCmyk }: PictureHeader): string[] {
  return [
    ...(isAnimated ? ['The picture moves; only its first picture is used.'] : []),
    ...(isCmyk
      ? ['Its colours are meant for print (CMYK), so on screen and in beads they may differ.']
      : []),
    ...(format === 'png' && bits > 8
      ? ['Its 16-bit colours are read as 8-bit, finer than beads can tell.']
      : []),
    ...(width === 1 && height === 1 ? ['It is a single pixel: every bead gets its colour.'] : []),
  ]
}

function tooLarge({ width, height }: PictureHeader, fileName: string): Refusal {
  return {
    code: 'picture-too-large',
    message: `${fileName} has ${formatCount(width)} by ${formatCount(height)} pixels.`,
    next: `Make it smaller first: at most ${formatCount(MAX_PICTURE_SIDE)} pixels a side and ${MAX_PICTURE_PIXELS / 1_000_000} million in all.`,
  }
}
