import { err, ok } from '../../../result.ts'
import type { HeaderReading } from './picture-header.ts'

const IMAGE = 0x2c
const EXTENSION = 0x21
const TRAILER = 0x3b

/** Walks a GIF's blocks to its trailer and counts the pictures in it. */
export function readGifHeader(bytes: Uint8Array): HeaderReading {
  if (bytes.length < 13) return err('torn')
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  let pictures = 0
  for (let at = 13 + tableBytes(bytes[10] ?? 0); ; ) {
    const block = bytes[at]
    if (block === undefined) return err('torn')
    if (block === TRAILER) break
    if (block === IMAGE) {
      pictures += 1
      at = afterSubBlocks(bytes, at + 11 + tableBytes(bytes[at + 9] ?? 0))
    } else if (block === EXTENSION) {
      at = afterSubBlocks(bytes, at + 2)
    } else {
      return err('broken')
    }
  }
  if (pictures === 0) return err('broken')
  const size = { width: view.getUint16(6, true), height: view.getUint16(8, true) }
  return ok({ format: 'gif', ...size, bits: 8, isAnimated: pictures > 1, isCmyk: false })
}

/** Bytes of a colour table, by the packed field that announces it. */
function tableBytes(packed: number): number {
  return (packed & 0x80) === 0 ? 0 : 3 * 2 ** ((packed & 7) + 1)
}

function afterSubBlocks(bytes: Uint8Array, from: number): number {
  let at = from
  while ((bytes[at] ?? 0) > 0) at += (bytes[at] ?? 0) + 1
  return at + 1
}
