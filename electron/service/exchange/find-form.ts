import { findForm, findThread } from '../../../shared-core/beads/bead-tables.ts'
import type { BeadTables } from '../../../shared-core/beads/user-forms.ts'
import { FINISH_WORDS } from './finish-words.ts'
import { KIND_WORDS, type KindWord } from './kind-words.ts'
import { plainWord } from './plain-word.ts'

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

/**
 * The bead form of a family and size in the tables: `11/0`, `11°`, `#3`, `3 mm`; where the reference
 * tables know none, one of the workshop's own that calls itself by that size.
 */
export function beadFormId(
  word: Extract<KindWord, { kind: 'bead' }>,
  size: string,
  tables: BeadTables,
): string | undefined {
  const sizes = sizesOf(size)
  const known = sizes
    .flatMap((one) => formIds(word, one))
    .find((id) => findForm(tables, id) !== undefined)
  if (known !== undefined) return known
  const alike = tables.forms.filter(
    ({ family, sizeLabel }) =>
      family === word.family && sizesOf(sizeLabel).some((one) => sizes.includes(one)),
  )
  return alike.length === 1 ? alike[0]?.id : undefined
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

/** The thread of a size in the tables, from the size and the name: `6 lb`, `nylon D`, `tex 135`, or its own name. */
export function threadFormId(size: string, name: string, tables: BeadTables): string | undefined {
  const text = `${size} ${name}`.toLowerCase()
  const pounds = /(\d+)\s*lb/.exec(text)?.[1]
  const tex = /tex\s*(\d+)|(\d+)\s*tex/.exec(text)
  const letter = /^(?:size\s*)?(000|00|0|a|b|d|f)$/.exec(size.trim().toLowerCase())?.[1]
  const candidates = [
    pounds === undefined ? '' : `braided-${pounds}lb`,
    tex === null ? '' : `cord-tex-${tex[1] ?? tex[2]}`,
    letter === undefined ? '' : `nylon-${letter}`,
  ]
  const known = candidates.find((id) => id !== '' && findThread(tables, id) !== undefined)
  return known ?? tables.threads.find((thread) => plainWord(thread.name) === plainWord(name))?.id
}
