import { err, ok } from '../../../result.ts'
import { crc32 } from './crc32.ts'
import type { HeaderReading } from './picture-header.ts'

/** Walks a PNG's chunks to its end; `acTL` before the pixels makes it animated. */
export function readPngHeader(bytes: Uint8Array): HeaderReading {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const found = { width: 0, height: 0, bits: 0, isAnimated: false }
  let hasPixels = false
  for (let at = 8; ; ) {
    if (at + 12 > bytes.length) return err('torn')
    const length = view.getUint32(at)
    const end = at + 12 + length
    if (end > bytes.length) return err('torn')
    if (crc32(bytes.subarray(at + 4, end - 4)) !== view.getUint32(end - 4)) return err('broken')
    const name = String.fromCharCode(...bytes.subarray(at + 4, at + 8))
    if (at === 8) {
      if (name !== 'IHDR' || length !== 13) return err('broken')
      found.width = view.getUint32(at + 8)
      found.height = view.getUint32(at + 12)
      found.bits = bytes[at + 16] ?? 0
    }
    if (name === 'acTL' && length >= 4) found.isAnimated = view.getUint32(at + 8) > 1
    hasPixels ||= name === 'IDAT'
    if (name === 'IEND') break
    at = end
  }
  return hasPixels ? ok({ format: 'png', isCmyk: false, ...found }) : err('broken')
}
