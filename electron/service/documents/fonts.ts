import { existsSync } from 'node:fs'
import { createRequire } from 'node:module'
import { basename, join } from 'node:path'
import { type Font, openSync } from 'fontkit'
import type { Face, Measure } from './draw-list.ts'
import { MM_PER_PT } from './draw-list.ts'
import fontFiles from './font-files.json' with { type: 'json' }

export type FontName = keyof typeof fontFiles

/** A stretch of text set in one font. */
export type TextRun = Readonly<{ font: FontName; text: string }>

const WIDE: Readonly<Record<Face, FontName>> = {
  text: 'wide',
  'text-strong': 'wide-strong',
  title: 'wide-strong',
}

const opened = new Map<FontName, Font>()

/** Where a font's file lies: beside the built service, or in its package when run from source. */
export function fontPath(name: FontName): string {
  const built = join(import.meta.dirname, '..', 'fonts', basename(fontFiles[name]))
  return existsSync(built) ? built : createRequire(import.meta.url).resolve(fontFiles[name])
}

/** Splits a text so that each letter is set in its face, or in the wide font where the face lacks it. */
export function textRuns(text: string, face: Face): readonly TextRun[] {
  const runs: { font: FontName; text: string }[] = []
  for (const letter of text.normalize('NFC')) {
    const font = hasGlyph(face, letter) ? face : WIDE[face]
    const last = runs.at(-1)
    if (last?.font === font) last.text += letter
    else runs.push({ font, text: letter })
  }
  return runs
}

/** Width of a text in mm as the painter sets it. */
export const measureText: Measure = (text, face, sizePt) =>
  textRuns(text, face).reduce((sum, run) => {
    const font = openFont(run.font)
    return sum + (font.layout(run.text).advanceWidth / font.unitsPerEm) * sizePt * MM_PER_PT
  }, 0)

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

/** The scripts of letters that neither the face nor the wide font has, in words; empty when all can be printed. */
export function missingScripts(texts: Iterable<string>): readonly string[] {
  const missing = new Set<string>()
  for (const text of texts) {
    for (const letter of text.normalize('NFC')) {
      if (hasGlyph('text', letter) || hasGlyph('wide', letter)) continue
      missing.add(SCRIPTS.find(([, sign]) => sign.test(letter))?.[0] ?? 'rare signs')
    }
  }
  return [...missing]
}

function hasGlyph(name: FontName, letter: string): boolean {
  return openFont(name).hasGlyphForCodePoint(letter.codePointAt(0) ?? 0)
}

function openFont(name: FontName): Font {
  const known = opened.get(name)
  if (known !== undefined) return known
  const font = openSync(fontPath(name))
  if ('fonts' in font) throw new Error(`Font ${name}: expected one font, got a collection`)
  opened.set(name, font)
  return font
}
