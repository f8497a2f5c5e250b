/** A number of beads given in half beads, as it is written: `½`, `1½`, `2`; 0 or more. */
export function writeHalves(halves: number): string {
  const whole = Math.floor(halves / 2)
  if (halves % 2 === 0) return String(whole)
  return whole === 0 ? '½' : `${whole}½`
}

/** Half beads from a number as written or typed: `½`, `1½`, `1 1/2`, `1.5`, `1,5`, `2`; `undefined` for anything else. */
export function readHalves(text: string): number | undefined {
  const match = /^(\d{0,6})(?:[.,]([05])|\s?(½|1\/2))?$/.exec(text.trim())
  if (match === null || match[0] === '') return undefined
  const isHalf = match[2] === '5' || match[3] !== undefined
  return 2 * Number(match[1] === '' ? 0 : match[1]) + (isHalf ? 1 : 0)
}
