/** A made file's name as any system takes it: letters of any script stay, what it is at the end. */
export function fileStem(name: string, what: string): string {
  const stem = name
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60)
  return stem === '' ? what : `${stem}-${what}`
}
