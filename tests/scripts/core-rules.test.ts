import { describe, expect, it } from 'vitest'

import { breachesIn } from '../../scripts/test/core-rules.ts'

const file = 'shared-core/beads/example.ts'

describe('breachesIn', () => {
  it('passes a documented export and codes that share a docstring', () => {
    const text = '/** One. */\nexport const one = 1\nexport const two = 2\n'
    expect(breachesIn(file, text)).toEqual([])
  })

  it.each([
    ['an export without a docstring', '\nexport function f(): void {}', 'f has no docstring'],
    ['a clock', 'const now = Date.now()', 'uses Date.now'],
    ['today', 'const now = new Date()', 'uses new Date()'],
    ['chance', 'const n = Math.random()', 'uses Math.random'],
    ['a locale', "const text = (1).toLocaleString('de')", 'uses .toLocaleString('],
    ['a long file', 'let a\n'.repeat(301), 'has 301 lines'],
  ])('finds %s', (_, text, breach) => {
    expect(breachesIn(file, text)).toEqual([expect.stringContaining(breach)])
  })

  it('lets a comment speak of a clock', () => {
    expect(breachesIn(file, '/**\n * Never Date.now() here.\n */\n')).toEqual([])
  })
})
