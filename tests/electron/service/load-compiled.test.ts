import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'

import { loadCompiled } from '../../../electron/service/load-compiled.ts'

let scratch: string
beforeEach(() => {
  vi.useFakeTimers()
  scratch = mkdtempSync(join(tmpdir(), 'tallystrand-compiled-'))
})
afterEach(() => {
  vi.useRealTimers()
  rmSync(scratch, { recursive: true, force: true })
})

/** Writes a bundle under a name of its own, since Node keeps what it has loaded by file. */
function bundle(name: string, text: string): string {
  const file = join(scratch, `${name}.cjs`)
  writeFileSync(file, text)
  return file
}

const kept = () => readdirSync(join(scratch, 'compiled'))
/** The files that are kept: another number once one was written anew. */
const keptFiles = () => kept().map((name) => statSync(join(scratch, 'compiled', name)).ino)
const load = (file: string) => loadCompiled(file, join(scratch, 'compiled'))

describe('loadCompiled', () => {
  it('gives what the bundle exports and keeps its compiled form for the next time', () => {
    const text = 'exports.answer = () => 6 * 7'
    expect(load(bundle('a', text))).toMatchObject({ answer: expect.any(Function) })
    vi.runAllTimers()
    expect(kept()).toEqual([expect.stringMatching(/^[\w.-]+\.compiled$/)])
    const again = load(bundle('b', text)) as { answer: () => number }
    expect(again.answer()).toBe(42)
  })

  it('never takes the compiled form of another text of the same length', () => {
    load(bundle('a', 'exports.n = 1'))
    vi.runAllTimers()
    expect(load(bundle('b', 'exports.n = 2'))).toEqual({ n: 2 })
    vi.runAllTimers()
    expect(kept()).toHaveLength(1)
  })

  it('takes no notice of a damaged compiled form, and replaces it', () => {
    const text = 'exports.n = 3'
    load(bundle('a', text))
    vi.runAllTimers()
    const [name = ''] = kept()
    const file = join(scratch, 'compiled', name)
    writeFileSync(file, 'damaged')
    expect(load(bundle('b', text))).toEqual({ n: 3 })
    vi.runAllTimers()
    expect(readFileSync(file, 'latin1')).not.toBe('damaged')
  })

  it('gives parts that are loaded later the same module, not a second one', () => {
    bundle('part', "exports.whole = require('./whole.cjs')")
    const whole = bundle('whole', "exports.part = () => require('./part.cjs').whole")
    const loaded = load(whole) as { part: () => unknown }
    expect(loaded.part()).toBe(loaded)
  })

  it('keeps the parts too, and what it kept of the whole', () => {
    bundle('part', 'exports.n = 5')
    const whole = bundle('whole', "exports.part = () => require('./part.cjs')")
    ;(load(whole) as { part: () => unknown }).part()
    vi.runAllTimers()
    const first = keptFiles()
    expect(first).toHaveLength(2)
    const again = load(whole) as { part: () => unknown }
    expect(again.part()).toEqual({ n: 5 })
    expect(again.part()).toBe(again.part())
    // What was kept was taken: nothing had to be kept anew.
    vi.runAllTimers()
    expect(keptFiles()).toEqual(first)
  })

  it('works where nothing can be kept', () => {
    writeFileSync(join(scratch, 'compiled'), 'a file where the folder would be')
    expect(load(bundle('a', 'exports.n = 4'))).toEqual({ n: 4 })
    expect(() => vi.runAllTimers()).not.toThrow()
  })
})
