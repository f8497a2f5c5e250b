import { readFileSync } from 'node:fs'
import { wcagContrast } from 'culori'
import { describe, expect, it } from 'vitest'

const css = readFileSync(new URL('../../../renderer/styles/tokens.css', import.meta.url), 'utf8')

/** Colour tokens by name: the light value, then the dark one. */
const tokens = new Map(
  [...css.matchAll(/--([\w-]+): light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\)/g)].map(
    ([, name = '', light = '', dark = '']) => [name, [light, dark] as const],
  ),
)

function contrast(ink: string, ground: string): readonly number[] {
  const a = tokens.get(ink)
  const b = tokens.get(ground)
  if (a === undefined || b === undefined) throw new Error(`no token ${ink} or ${ground}`)
  return [wcagContrast(a[0], b[0]), wcagContrast(a[1], b[1])]
}

const GROUNDS = ['paper', 'sheet', 'well'] as const
const INKS = [
  'ink',
  'ink-soft',
  'ink-faint',
  'tide',
  'tide-deep',
  'lamp-ink',
  'good-ink',
  'bad-ink',
]
const TEXT: readonly (readonly [string, string])[] = [
  ...INKS.flatMap((ink) => GROUNDS.map((ground) => [ink, ground] as const)),
  ['on-tide', 'tide'],
  ['on-tide', 'tide-deep'],
  ['on-bad', 'bad-ink'],
  ['tide', 'tide-wash'],
  ['ink', 'tide-wash'],
  ['ink-soft', 'tide-wash'],
  ['lamp-ink', 'lamp-wash'],
  ['ink', 'lamp-wash'],
  ['good-ink', 'good-wash'],
  ['bad-ink', 'bad-wash'],
  ['ink', 'bad-wash'],
  ['ink-soft', 'tray'],
]

describe('colour tokens', () => {
  it('are designed in light and dark', () => {
    expect(tokens.size).toBeGreaterThanOrEqual(20)
  })

  it.each(TEXT)('%s is readable on %s in both themes', (ink, ground) => {
    for (const ratio of contrast(ink, ground)) expect(ratio).toBeGreaterThanOrEqual(4.5)
  })

  it.each(GROUNDS)('edges of controls stand out from %s in both themes', (ground) => {
    for (const ratio of contrast('edge', ground)) expect(ratio).toBeGreaterThanOrEqual(3)
  })
})
