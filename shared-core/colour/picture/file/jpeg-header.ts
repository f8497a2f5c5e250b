import { err, ok } from '../../../result.ts'
import type { HeaderReading } from './picture-header.ts'

const START_OF_SCAN = 0xda

/** Walks a JPEG's segments to its first scan, then looks for the end marker after it. */
export function readJpegHeader(bytes: Uint8Array): HeaderReading {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  let frame: Readonly<{ bits: number; width: number; height: number; channels: number }> | undefined
  for (let at = 2; ; ) {
    if (at + 4 > bytes.length) return err('torn')
    if (bytes[at] !== 0xff) return err('broken')
    const marker = bytes[at + 1] ?? 0
    if (marker === 0xff) {
      at += 1
      continue
    }
    const length = view.getUint16(at + 2)
    if (length < 2) return err('broken')
    if (at + 2 + length > bytes.length) return err('torn')
    if (isFrame(marker) && length >= 8) {
      frame = {
        bits: bytes[at + 4] ?? 0,
        height: view.getUint16(at + 5),
        width: view.getUint16(at + 7),
        channels: bytes[at + 9] ?? 0,
      }
    }
    at += 2 + length
    if (marker !== START_OF_SCAN) continue
    if (frame === undefined) return err('broken')
    if (!hasEnd(bytes, at)) return err('torn')
    const { width, height, bits, channels } = frame
    return ok({ format: 'jpeg', width, height, bits, isAnimated: false, isCmyk: channels === 4 })
  }
}

/** SOF0 to SOF15, without the tables that stand between them. */
function isFrame(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker)
}

/** From the end: cameras append other things, but rarely much. */
function hasEnd(bytes: Uint8Array, from: number): boolean {
  for (let at = bytes.length - 2; at >= from; at -= 1) {
    if (bytes[at] === 0xff && bytes[at + 1] === 0xd9) return true
  }
  return false
}
