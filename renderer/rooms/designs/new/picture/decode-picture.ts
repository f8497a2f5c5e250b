import { pixelGridTooLarge } from '../../../../../shared-core/chart/read-pixel-grid.ts'
import {
  readPictureHeader,
  undecodable,
} from '../../../../../shared-core/colour/picture/file/picture-header.ts'
import { planPicture } from '../../../../../shared-core/colour/picture/file/picture-plan.ts'
import type { Picture } from '../../../../../shared-core/colour/picture/picture.ts'
import type { Refusal } from '../../../../../shared-core/refusal.ts'
import { err, ok, type Result } from '../../../../../shared-core/result.ts'
import { fromBase64 } from '../../../../app/base64.ts'
import type { FileBytes } from '../../../../app/files.ts'

/** A picture ready to work with, and what to say of how it was read. */
export type DecodedPicture = Readonly<{ picture: Picture; notes: readonly string[] }>

/**
 * Decodes a picture file to pixels. `exact` keeps every pixel's own numbers, for grids of one pixel a
 * bead; otherwise its colours are brought to sRGB and a giant is made smaller on the way in.
 */
export async function decodePicture(
  file: FileBytes,
  { exact }: Readonly<{ exact: boolean }>,
): Promise<Result<DecodedPicture, Refusal>> {
  const bytes = fromBase64(file.base64)
  const header = readPictureHeader(bytes, file)
  if (!header.ok) return header
  const plan = planPicture(header.value, file)
  if (!plan.ok) return plan
  const { resizeWidth, notes } = plan.value
  // A grid made smaller is another grid.
  if (exact && resizeWidth !== undefined) return err(pixelGridTooLarge(header.value))
  try {
    const bitmap = await createImageBitmap(new Blob([bytes]), {
      premultiplyAlpha: 'none',
      colorSpaceConversion: exact ? 'none' : 'default',
      ...(resizeWidth === undefined ? {} : { resizeWidth, resizeQuality: 'high' }),
    })
    return ok({ picture: pixelsOf(bitmap), notes })
  } catch {
    return err(undecodable(file.fileName))
  }
}

function pixelsOf(bitmap: ImageBitmap): Picture {
  const { width, height } = bitmap
  const brush = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true })
  if (brush === null) throw new Error('There is no canvas to read the picture from.')
  brush.drawImage(bitmap, 0, 0)
  bitmap.close()
  return { rgba: brush.getImageData(0, 0, width, height).data, width, height }
}
