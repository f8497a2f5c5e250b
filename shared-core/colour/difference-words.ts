/** How a colour difference looks: up to each CIEDE2000 value, in words. */
const WORDS = [
  [1, 'the same to the eye'],
  [2.5, 'hardly to be told apart'],
  [5, 'close, seen when looked for'],
  [10, 'different at a glance'],
  [20, 'far off'],
] as const

/**
 * A colour difference in words that follow a subject: `Colours are close, seen when looked for`.
 *
 * @param deltaE - CIEDE2000, 0 or more.
 * @source About 1 is just seen side by side; the other bounds chosen by us.
 */
export function differenceWords(deltaE: number): string {
  return WORDS.find(([to]) => deltaE < to)?.[1] ?? 'not the colours of the picture'
}
