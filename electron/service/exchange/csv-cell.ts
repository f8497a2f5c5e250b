// What a spreadsheet takes for the beginning of a formula, full-width forms included.
// Source: OWASP, CSV Injection; ASVS 1.2.10 adds the null character.
const FORMULA_START = /^[=+\-@\t\r\n\0＝＋－＠]/
const PLAIN_NUMBER = /^[+-]?\d+(?:[.,]\d+)?$/

/**
 * A text as a field of an exported file: always in quotes, inner quotes doubled, and with an
 * apostrophe in front where a spreadsheet would take it for a formula. True numbers stay as they are.
 *
 * @example csvCell('=1+2";=1+2') // "'=1+2"";=1+2"
 */
export function csvCell(text: string): string {
  const isFormula = FORMULA_START.test(text) && !PLAIN_NUMBER.test(text)
  const safe = isFormula ? `'${text}` : text
  return `"${safe.replaceAll('"', '""')}"`
}
