/** A word as it is compared: small letters and digits only, umlauts and accents as plain letters. */
export function plainWord(text: string): string {
  return text
    .toLowerCase()
    .replace(/ß/g, 'ss')
    .normalize('NFD')
    .replace(/[^a-z0-9]/g, '')
}
