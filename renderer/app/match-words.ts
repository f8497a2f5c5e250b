/** How well a text answers what was typed: 0 is not at all, higher is better. Every typed word must be found. */
export function matchWords(typed: string, text: string): number {
  const words = fold(typed).split(/\s+/).filter(Boolean)
  const folded = fold(text)
  let score = 1
  for (const word of words) {
    const found = scoreWord(word, folded)
    if (found === 0) return 0
    score += found
  }
  return score
}

function scoreWord(word: string, text: string): number {
  if (text === word) return 6
  if (text.startsWith(word)) return 4
  const at = text.indexOf(word)
  if (at < 0) return 0
  return /[\s\-_/(]/.test(text[at - 1] ?? '') ? 3 : 1
}

/** Lower case without accents: what is typed plainly finds what is written with care. */
function fold(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().trim()
}
