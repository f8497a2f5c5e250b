import { existsSync } from 'node:fs'
import { createRequire } from 'node:module'
import { basename, join } from 'node:path'
import bidiFactory, { type Bidi } from 'bidi-js'
import { type Font, openSync } from 'fontkit'
import type { Face, Measure } from './draw-list.ts'
import { MM_PER_PT } from './draw-list.ts'
import fontFiles from './font-files.json' with { type: 'json' }

export type FontName = keyof typeof fontFiles

/** A stretch of text set in one font. */
export type TextRun = Readonly<{ font: FontName; text: string; isRightToLeft: boolean }>

/** Where a letter is looked for that its face lacks: most alphabets, then Chinese and Japanese, then Devanagari. */
const WIDE: Readonly<Record<Face, readonly [FontName, ...FontName[]]>> = {
  text: ['wide', 'han', 'devanagari'],
  'text-strong': ['wide-strong', 'han', 'devanagari'],
  title: ['wide-strong', 'han', 'devanagari'],
}

// Its types tell of another form of the module than Node and the bundler give.
const bidi = (bidiFactory as unknown as () => Bidi)()

const opened = new Map<FontName, Font>()
const paths = new Map<FontName, string>()

/** Where a font's file lies: beside the built service, or in its package when run from source. */
export function fontPath(name: FontName): string {
  const known = paths.get(name)
  if (known !== undefined) return known
  const built = join(import.meta.dirname, '..', 'fonts', basename(fontFiles[name]))
  const path = existsSync(built) ? built : createRequire(import.meta.url).resolve(fontFiles[name])
  paths.set(name, path)
  return path
}

/**
 * Splits a text so that each letter is set in its face, or in the first wider font that has it, in the
 * order the runs stand on the line from the left.
 *
 * @source Unicode Standard Annex 9, rules L2 (reordering) and L4 (mirroring)
 */
export function textRuns(text: string, face: Face): readonly TextRun[] {
  const whole = text.normalize('NFC')
  const { levels } = bidi.getEmbeddingLevels(whole)
  const runs: { font: FontName; text: string; level: number }[] = []
  let at = 0
  for (const letter of whole) {
    const level = levels[at] ?? 0
    at += letter.length
    const shown = level % 2 === 1 ? (bidi.getMirroredCharacter(letter) ?? letter) : letter
    const last = runs.at(-1)
    const font = fontFor(shown, face, last?.level === level ? last.font : undefined)
    if (last !== undefined && last.font === font && last.level === level) last.text += shown
    else runs.push({ font, text: shown, level })
  }
  return inSight(runs).map(({ font, text: words, level }) => ({
    font,
    text: words,
    isRightToLeft: level % 2 === 1,
  }))
}

/** Marks, stops and spaces stay in the font of the word before them. */
function fontFor(letter: string, face: Face, before: FontName | undefined): FontName {
  const stays = /[\p{M}\p{P}\p{Z}]/u.test(letter)
  if (stays && before !== undefined && hasGlyph(before, letter)) return before
  return [face, ...WIDE[face]].find((font) => hasGlyph(font, letter)) ?? WIDE[face][0]
}

/** Runs from the left of the line: every stretch of a level or more is turned round, the highest first. */
function inSight<T extends Readonly<{ level: number }>>(runs: readonly T[]): readonly T[] {
  const placed = [...runs]
  const most = runs.reduce((highest, { level }) => Math.max(highest, level), 0)
  for (let level = most; level > 0; level -= 1) {
    for (let from = 0; from < placed.length; from += 1) {
      let to = from
      while ((placed[to]?.level ?? -1) >= level) to += 1
      if (to > from) placed.splice(from, to - from, ...placed.slice(from, to).reverse())
      from = Math.max(from, to)
    }
  }
  return placed
}

/** Width of a text in mm as the painter sets it. */
export const measureText: Measure = (text, face, sizePt) => emWidth(text, face) * sizePt * MM_PER_PT

const emWidths = new Map<string, number>()
/** Words of a large sheet or two; then counting begins anew. */
const MOST_WIDTHS = 20_000

/** Width of a text in sizes of its font; words come again and again, and shaping one is slow. */
function emWidth(text: string, face: Face): number {
  const key = `${face} ${text}`
  const known = emWidths.get(key)
  if (known !== undefined) return known
  const width = textRuns(text, face).reduce((sum, run) => sum + runEms(run), 0)
  if (emWidths.size >= MOST_WIDTHS) emWidths.clear()
  emWidths.set(key, width)
  return width
}

/** Width of a run in sizes of its font. */
export function runEms(run: TextRun): number {
  const font = openFont(run.font)
  return font.layout(run.text).advanceWidth / font.unitsPerEm
}

/** Scripts a name may come in that the fonts may lack, as people call them. */
const SCRIPTS: readonly (readonly [name: string, letter: RegExp])[] = [
  ['Chinese or Japanese characters', /\p{Script=Han}/u],
  ['Japanese kana', /[\p{Script=Hiragana}\p{Script=Katakana}]/u],
  ['Korean', /\p{Script=Hangul}/u],
  ['Devanagari', /\p{Script=Devanagari}/u],
  ['Bengali', /\p{Script=Bengali}/u],
  ['Tamil', /\p{Script=Tamil}/u],
  ['Thai', /\p{Script=Thai}/u],
  ['Hebrew', /\p{Script=Hebrew}/u],
  ['Arabic', /\p{Script=Arabic}/u],
  ['Greek', /\p{Script=Greek}/u],
  ['Cyrillic', /\p{Script=Cyrillic}/u],
  ['picture letters (emoji)', /\p{Extended_Pictographic}/u],
]

/** The scripts of letters that no font of ours has, in words; empty when all can be printed. */
export function missingScripts(texts: Iterable<string>): readonly string[] {
  const missing = new Set<string>()
  for (const text of texts) {
    for (const letter of text.normalize('NFC')) {
      if (['text', ...WIDE.text].some((font) => hasGlyph(font as FontName, letter))) continue
      missing.add(SCRIPTS.find(([, sign]) => sign.test(letter))?.[0] ?? 'rare signs')
    }
  }
  return [...missing]
}

function hasGlyph(name: FontName, letter: string): boolean {
  const point = letter.codePointAt(0) ?? 0
  // Variation and joining signs shape their neighbours and have no glyph of their own.
  return (
    /\p{Default_Ignorable_Code_Point}/u.test(letter) || openFont(name).hasGlyphForCodePoint(point)
  )
}

function openFont(name: FontName): Font {
  const known = opened.get(name)
  if (known !== undefined) return known
  const font = openSync(fontPath(name))
  if ('fonts' in font) throw new Error(`Font ${name}: expected one font, got a collection`)
  opened.set(name, font)
  return font
}
