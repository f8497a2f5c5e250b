import type { Measure } from '../draw-list.ts'

/**
 * A measure that sets each word once: a line is as wide as its words and the spaces between them.
 *
 * Kerning across a space is left out; it is under a hundredth of a millimetre in our faces.
 */
export function wordMeasure(measure: Measure): Measure {
  const known = new Map<string, number>()
  const widthOf: Measure = (word, face, sizePt) => {
    const key = `${face} ${sizePt} ${word}`
    const found = known.get(key)
    if (found !== undefined) return found
    const width = measure(word, face, sizePt)
    known.set(key, width)
    return width
  }
  return (text, face, sizePt) => {
    const words = text.split(' ')
    const space = widthOf(' ', face, sizePt)
    return words.reduce(
      (sum, word) => sum + widthOf(word, face, sizePt),
      space * (words.length - 1),
    )
  }
}
