/** The bytes of a blob as base64. */
export async function blobBase64(blob: Blob): Promise<string> {
  const bytes = new Uint8Array(await blob.arrayBuffer())
  const parts: string[] = []
  // A call takes only so many arguments.
  for (let from = 0; from < bytes.length; from += 0x8000) {
    parts.push(String.fromCharCode(...bytes.subarray(from, from + 0x8000)))
  }
  return btoa(parts.join(''))
}
