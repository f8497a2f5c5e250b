import { bindUnits } from '../../../shared-core/units/bind-units.ts'
import type { Face, Measure } from './draw-list.ts'

export type TextBox = Readonly<{
  text: string
  face: Face
  sizePt: number
  widthMm: number
  maxLines: number
}>

/** A number stays on the line of its unit, and what was bound by hand stays bound. */
const BREAKS = /[^\S\u00a0\u202f]+/u

/**
 * Breaks a text into lines no wider than the box, at spaces, inside a word only when it is wider
 * than a line; what is past `maxLines` ends in an ellipsis.
 */
export function wrapText(box: TextBox, measure: Measure): readonly string[] {
  const fits = (line: string) => measure(line, box.face, box.sizePt) <= box.widthMm
  const lines: string[] = []
  let line = ''
  for (const word of bindUnits(box.text.trim()).split(BREAKS)) {
    const longer = line === '' ? word : `${line} ${word}`
    if (fits(longer)) {
      line = longer
      continue
    }
    if (line !== '') lines.push(line)
    const pieces = breakWord(word, fits)
    lines.push(...pieces.slice(0, -1))
    line = pieces.at(-1) ?? ''
  }
  if (line !== '') lines.push(line)
  keepLastCompany(lines, fits)
  return lines.length <= box.maxLines ? lines : shorten(lines.slice(0, box.maxLines), fits)
}

/** A last line of a few letters looks lost: it gets the word before it, where that leaves the line above one. */
function keepLastCompany(lines: string[], fits: (line: string) => boolean): void {
  const last = lines.at(-1) ?? ''
  const above = lines.at(-2)
  const cut = above?.lastIndexOf(' ') ?? -1
  if (last.length > 3 || above === undefined || cut < 1) return
  const joined = `${above.slice(cut + 1)} ${last}`
  if (fits(joined)) lines.splice(-2, 2, above.slice(0, cut), joined)
}

function breakWord(word: string, fits: (line: string) => boolean): readonly string[] {
  const pieces: string[] = []
  let piece = ''
  for (const letter of word) {
    if (piece === '' || fits(piece + letter)) piece += letter
    else {
      pieces.push(piece)
      piece = letter
    }
  }
  return [...pieces, piece]
}

function shorten(lines: readonly string[], fits: (line: string) => boolean): readonly string[] {
  const letters = [...(lines.at(-1) ?? '')]
  while (letters.length > 0 && !fits(`${letters.join('').trimEnd()}…`)) letters.pop()
  return [...lines.slice(0, -1), `${letters.join('').trimEnd()}…`]
}
