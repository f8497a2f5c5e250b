const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte
  for (let bit = 0; bit < 8; bit += 1) value = (value >>> 1) ^ (value & 1 ? 0xedb88320 : 0)
  return value
})

/**
 * The 32-bit cyclic redundancy check of bytes, 0 to 2^32 - 1.
 *
 * @source ISO 3309, as PNG (Third Edition) annex D writes it.
 * @example
 * crc32(new TextEncoder().encode('123456789')) // 0xcbf43926
 */
export function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff
  for (let at = 0; at < bytes.length; at += 1) {
    crc = (TABLE[(crc ^ (bytes[at] as number)) & 0xff] as number) ^ (crc >>> 8)
  }
  return (crc ^ 0xffffffff) >>> 0
}
