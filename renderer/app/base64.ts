/** Bytes as base64, as files go over the contract. */
export function toBase64(bytes: Uint8Array): string {
  const parts: string[] = []
  // A call takes only so many arguments.
  for (let from = 0; from < bytes.length; from += 0x8000) {
    parts.push(String.fromCharCode(...bytes.subarray(from, from + 0x8000)))
  }
  return btoa(parts.join(''))
}

/** A text as base64 of its UTF-8 bytes. */
export function textToBase64(text: string): string {
  return toBase64(new TextEncoder().encode(text))
}

/** The bytes that base64 stands for. */
export function fromBase64(base64: string): Uint8Array<ArrayBuffer> {
  const text = atob(base64)
  const bytes = new Uint8Array(text.length)
  for (let at = 0; at < text.length; at += 1) bytes[at] = text.charCodeAt(at)
  return bytes
}
