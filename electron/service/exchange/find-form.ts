import { findForm, findThread, referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import { FINISH_WORDS, KIND_WORDS, type KindWord, plainWord } from './stock-words.ts'

/** What a text says of the kind; the whole text first, then each word of it. */
export function kindOf(text: string): KindWord | undefined {
  const words = [text, ...text.split(/[^\p{L}]+/u)].map(plainWord)
  for (const word of words) {
    // A plural says the same: `Zylinderperlen`, `bugles`.
    const singular = [word, word.replace(/(en|n|s)$/, '')].find((one) =>
      Object.hasOwn(KIND_WORDS, one),
    )
    if (singular !== undefined) return KIND_WORDS[singular]
  }
  return undefined
}

/** The finish a text names, if any. */
export function finishOf(text: string) {
  const words = [text, ...text.split(/[^\p{L}]+/u)].map(plainWord)
  const known = words.find((word) => Object.hasOwn(FINISH_WORDS, word))
  return known === undefined ? undefined : FINISH_WORDS[known]
}

/** The bead form of a family and size in the tables: `11/0`, `11°`, `#3`, `3 mm`. */
export function beadFormId(word: Extract<KindWord, { kind: 'bead' }>, size: string) {
  const candidates = sizesOf(size).flatMap((one) => formIds(word, one))
  return candidates.find((id) => findForm(referenceTables, id) !== undefined)
}

function sizesOf(size: string): readonly string[] {
  const number = /\d+(?:[.,]\d+)?/.exec(size)?.[0].replace(',', '.') ?? ''
  return number === '' ? [] : [`${number}/0`, number, String(Math.round(Number(number)))]
}

function formIds(word: Extract<KindWord, { kind: 'bead' }>, size: string): readonly string[] {
  switch (word.family) {
    case 'cylinder':
      return [`cylinder-${size}`]
    case 'rocaille':
      // Where the make is not told, the more even one is the safer guess for stitched work.
      return word.make === 'czech'
        ? [`rocaille-czech-${size}`]
        : word.make === 'japanese'
          ? [`rocaille-japanese-${size}`]
          : [`rocaille-japanese-${size}`, `rocaille-czech-${size}`]
    case 'two-hole':
      return [`two-hole-tile-${size}`]
    case 'bugle':
    case 'drop':
    case 'cube':
    case 'faceted':
      return [`${word.family}-${size}`]
  }
}

/** The thread of a size in the tables, from the size and the name: `6 lb`, `nylon D`, `tex 135`. */
export function threadFormId(size: string, name: string): string | undefined {
  const text = `${size} ${name}`.toLowerCase()
  const pounds = /(\d+)\s*lb/.exec(text)?.[1]
  const tex = /tex\s*(\d+)|(\d+)\s*tex/.exec(text)
  const letter = /^(?:size\s*)?(000|00|0|a|b|d|f)$/.exec(size.trim().toLowerCase())?.[1]
  const candidates = [
    pounds === undefined ? '' : `braided-${pounds}lb`,
    tex === null ? '' : `cord-tex-${tex[1] ?? tex[2]}`,
    letter === undefined ? '' : `nylon-${letter}`,
  ]
  return candidates.find((id) => id !== '' && findThread(referenceTables, id) !== undefined)
}
