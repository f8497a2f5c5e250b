const VULGAR_FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
}

/**
 * Typed text with its look-alike signs made plain: every kind of space becomes one space, every
 * minus `-`, every apostrophe `'`, `1½` becomes `1 1/2`; ends trimmed.
 */
export function tidyText(text: string): string {
  return text
    .replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/g, (sign) => ` ${VULGAR_FRACTIONS[sign] ?? ''}`)
    .replace(/[\u2212\u2010-\u2013\ufe63\uff0d]/g, '-')
    .replace(/[\u2018\u2019\u02bc]/g, "'")
    .replace(/\u2044/g, '/')
    .replace(/\s+/g, ' ')
    .trim()
}
