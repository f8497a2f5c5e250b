import { err, ok } from '../../../result.ts'
import type { HeaderReading } from './picture-header.ts'

const ANIMATED = 0x02

/** Reads the first chunk of a WebP: extended, lossy or lossless. */
export function readWebpHeader(bytes: Uint8Array): HeaderReading {
  if (bytes.length < 30) return err('torn')
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  if (view.getUint32(4, true) + 8 > bytes.length) return err('torn')
  const name = String.fromCharCode(...bytes.subarray(12, 16))
  const plain = { format: 'webp', bits: 8, isAnimated: false, isCmyk: false } as const
  if (name === 'VP8X') {
    const isAnimated = ((bytes[20] ?? 0) & ANIMATED) !== 0
    return ok({ ...plain, isAnimated, width: uint24(bytes, 24) + 1, height: uint24(bytes, 27) + 1 })
  }
  if (name === 'VP8 ') {
    const [width, height] = [view.getUint16(26, true), view.getUint16(28, true)]
    return ok({ ...plain, width: width & 0x3fff, height: height & 0x3fff })
  }
  if (name !== 'VP8L' || bytes[20] !== 0x2f) return err('broken')
  const packed = view.getUint32(21, true)
  return ok({ ...plain, width: (packed & 0x3fff) + 1, height: ((packed >>> 14) & 0x3fff) + 1 })
}

function uint24(bytes: Uint8Array, at: number): number {
  return (bytes[at] ?? 0) | ((bytes[at + 1] ?? 0) << 8) | ((bytes[at + 2] ?? 0) << 16)
}
