/** A file's bytes as text, and which encoding they were in. */
export type DecodedText = Readonly<{
  text: string
  encoding: 'UTF-8' | 'UTF-8 with mark' | 'UTF-16' | 'Windows-1252'
}>

/**
 * Text from the bytes of a file, its encoding told by its mark, else UTF-8 if the bytes are valid
 * UTF-8, else Windows-1252, which every sequence of bytes is.
 */
export function decodeText(bytes: Uint8Array): DecodedText {
  if (startsWith(bytes, [0xef, 0xbb, 0xbf])) {
    return { text: new TextDecoder('utf-8').decode(bytes), encoding: 'UTF-8 with mark' }
  }
  if (startsWith(bytes, [0xff, 0xfe])) {
    return { text: new TextDecoder('utf-16le').decode(bytes), encoding: 'UTF-16' }
  }
  if (startsWith(bytes, [0xfe, 0xff])) return { text: decodeBigEndian(bytes), encoding: 'UTF-16' }
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes)
    return { text, encoding: 'UTF-8' }
  } catch {
    return { text: decodeWindows1252(bytes), encoding: 'Windows-1252' }
  }
}

function startsWith(bytes: Uint8Array, mark: readonly number[]): boolean {
  return mark.every((byte, at) => bytes[at] === byte)
}

function decodeBigEndian(bytes: Uint8Array): string {
  const swapped = new Uint8Array(bytes.length - (bytes.length % 2))
  for (let at = 0; at < swapped.length; at += 2) {
    swapped[at] = bytes[at + 1] ?? 0
    swapped[at + 1] = bytes[at] ?? 0
  }
  return new TextDecoder('utf-16le').decode(swapped)
}

// Our own table: some runtimes' decoders take these bytes for control characters.
const FROM_0X80 = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ'

function decodeWindows1252(bytes: Uint8Array): string {
  return Array.from(bytes, (byte) =>
    byte >= 0x80 && byte <= 0x9f ? FROM_0X80.charAt(byte - 0x80) : String.fromCharCode(byte),
  ).join('')
}
