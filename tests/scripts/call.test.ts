import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'

import { calls } from '../../shared-core/contract/calls.ts'
import { engineInputs } from '../electron/service/engine-inputs.ts'
import { smallBody } from '../electron/service/small-workshop.ts'

const scratch = mkdtempSync(join(tmpdir(), 'tallystrand-call-'))
const script = join(import.meta.dirname, '../../scripts/call.ts')
const file = join(scratch, 'workshop.tallystrand')

afterAll(() => rmSync(scratch, { recursive: true, force: true }))

/** Runs the command as a shell would: arguments and standard input in, code and JSON out. */
function call(args: readonly string[], input = '') {
  const { status, stdout, stderr } = spawnSync(process.execPath, [script, ...args], {
    input,
    encoding: 'utf8',
  })
  return { status, stderr, value: stdout === '' ? undefined : JSON.parse(stdout) }
}

describe('npm run call', () => {
  it('lists every call of the contract with its schemas', () => {
    const { status, value } = call(['--list'])
    expect(status).toBe(0)
    expect(value.map(({ name }: { name: string }) => name)).toEqual(Object.keys(calls))
    for (const { summary, input, output } of value) {
      expect(summary).not.toBe('')
      expect(input.type).toBe('object')
      expect(output).toBeTypeOf('object')
    }
  })

  it('makes a file, changes it and reads it back', () => {
    const begin = {
      with: 'empty',
      name: 'Saltmarsh Beadworks',
      currency: 'EUR',
      decimalMark: ',',
      today: '2026-11-25',
    }
    const began = call(['--db', file, 'workshop.begin'], JSON.stringify(begin))
    expect(began).toMatchObject({ status: 0, value: {} })
    const read = call(['--db', file, 'workshop.read'])
    expect(read.status).toBe(0)
    expect(read.value.workshop.name).toBe('Saltmarsh Beadworks')
  })

  it('prints a refusal as JSON and ends with 1', () => {
    const { status, value } = call(['--db', file, 'stock.lots'], '{"materialId": 7}')
    expect(status).toBe(1)
    expect(value.error).toMatchObject({ code: expect.any(String), message: expect.any(String) })
  })

  it('refuses a call that is not in the contract, and makes no file for it', () => {
    const other = join(scratch, 'other.tallystrand')
    const { status, value } = call(['--db', other, 'workshop.burn'])
    expect(status).toBe(1)
    expect(value.error.code).toBe('unknown-call')
    expect(existsSync(other)).toBe(false)
  })

  it('refuses input that is not JSON, saying so', () => {
    expect(call(['--db', file, 'workshop.read'], '{')).toMatchObject({
      status: 1,
      value: { error: { code: 'bad-json' } },
    })
  })

  it('refuses a file that is no workshop and leaves it as it was', () => {
    const letter = join(scratch, 'letter.txt')
    writeFileSync(letter, 'Dear maker,')
    const { status, value } = call(['--db', letter, 'workshop.read'])
    expect(status).toBe(1)
    expect(value.error.code).not.toBe('internal')
    expect(readFileSync(letter, 'utf8')).toBe('Dear maker,')
  })

  it('answers every engine call without a file, each as the contract says', () => {
    const inputs = { 'engine.read': { body: smallBody }, ...engineInputs }
    const names = Object.keys(calls).filter((name) => name.startsWith('engine.'))
    expect(Object.keys(inputs).toSorted()).toEqual(names.toSorted())
    for (const [name, input] of Object.entries(inputs)) {
      const { status, value } = call([name], JSON.stringify(input))
      expect({ name, status }).toEqual({ name, status: 0 })
      const parsed = calls[name as keyof typeof inputs].output.safeParse(value)
      expect({ name, error: parsed.error?.issues }).toEqual({ name, error: undefined })
    }
  }, 120_000)

  it.each([[[]], [['workshop.read']], [['--db', 'x', 'a', 'b']], [['--nonsense']]])(
    'explains itself and ends with 2 for %j',
    (args) => {
      const { status, stderr, value } = call(args)
      expect({ status, value }).toEqual({ status: 2, value: undefined })
      expect(stderr).toContain('Usage:')
    },
  )
})
