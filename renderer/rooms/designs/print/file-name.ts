/** A file's name from the words it is about: small letters and digits of any script, hyphens between. */
export function fileNameOf(words: readonly string[], ending: string): string {
  const stem = words
    .join(' ')
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 80)
  return `${stem}.${ending}`
}
