import { runInNewContext } from 'node:vm'

import * as fc from 'fast-check'
import { expect, test } from 'vitest'

import { escapeBeyondAscii } from '../../scripts/build/ascii-only.ts'

const texts = fc
  .array(fc.integer({ min: 0, max: 0xffff }))
  .map((units) => String.fromCharCode(...units))

test('a text keeps its meaning when its letters beyond ASCII are escaped', () => {
  fc.assert(
    fc.property(texts, (text) => {
      const code = escapeBeyondAscii(JSON.stringify(text))
      expect(code).toMatch(/^[\0-\x7f]*$/)
      expect(JSON.parse(code)).toBe(text)
    }),
  )
})

test('a template and a pattern keep theirs', () => {
  expect(runInNewContext(escapeBeyondAscii('`3½ × 2 😀`'))).toBe('3½ × 2 😀')
  expect(runInNewContext(escapeBeyondAscii("/^[½😀]+$/u.test('½😀')"))).toBe(true)
})
