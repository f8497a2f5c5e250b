import { EventEmitter } from 'node:events'
import { describe, expect, it } from 'vitest'

import { newId } from '../../../electron/service/open-service.ts'
import { servePort } from '../../../electron/service/port.ts'
import type { Answer } from '../../../shared-core/contract/calls.ts'

/** The service's end of a line, with what it sent kept in a list. */
function openPort() {
  const emitter = new EventEmitter()
  const sent: unknown[] = []
  const port = Object.assign(emitter, {
    start: () => {},
    postMessage: (message: unknown) => sent.push(message),
  })
  return { port: port as unknown as Parameters<typeof servePort>[0], emitter, sent }
}

const settled = () => new Promise((resolve) => setTimeout(resolve, 0))

describe('servePort', () => {
  it('answers each message under its own id, in the order in which answers are ready', async () => {
    const { port, emitter, sent } = openPort()
    const waits: Readonly<Record<string, Promise<unknown>>> = { slow: settled().then(settled) }
    servePort(port, async (name, input) => {
      await waits[name]
      return { ok: true, value: { name, input } }
    })
    emitter.emit('message', { data: { id: 1, name: 'slow', input: { n: 1 } } })
    emitter.emit('message', { data: { id: 2, name: 'quick', input: { n: 2 } } })
    await settled()
    await settled()
    await settled()
    expect(sent).toEqual([
      { id: 2, answer: { ok: true, value: { name: 'quick', input: { n: 2 } } } },
      { id: 1, answer: { ok: true, value: { name: 'slow', input: { n: 1 } } } },
    ])
  })

  it('answers a bug as a refusal and goes on', async () => {
    const { port, emitter, sent } = openPort()
    const answers: (() => Promise<Answer<unknown>>)[] = [
      () => Promise.reject(new Error('expected for this test')),
      () => Promise.resolve({ ok: true, value: 2 }),
    ]
    servePort(port, async () => answers.shift()?.() ?? { ok: true, value: 'none left' })
    emitter.emit('message', { data: { id: 1, name: 'broken', input: {} } })
    emitter.emit('message', { data: { id: 2, name: 'whole', input: {} } })
    await settled()
    expect(sent).toContainEqual({
      id: 1,
      answer: { ok: false, error: expect.objectContaining({ code: 'internal' }) },
    })
    expect(sent).toContainEqual({ id: 2, answer: { ok: true, value: 2 } })
  })

  it.each([[null], [undefined], ['text'], [{ name: 'a' }], [{ id: 'x', name: 'a' }], [{ id: 1 }]])(
    'drops %j, which has no id and name to answer to',
    async (data) => {
      const { port, emitter, sent } = openPort()
      servePort(port, async () => ({ ok: true, value: 1 }))
      emitter.emit('message', { data })
      await settled()
      expect(sent).toEqual([])
    },
  )
})

describe('newId', () => {
  it('gives ids of the shape the contract accepts, each only once', () => {
    const ids = Array.from({ length: 2_000 }, () => newId('mat'))
    expect(ids.every((id) => /^mat_[0-9a-z]{12}$/.test(id))).toBe(true)
    expect(new Set(ids).size).toBe(ids.length)
  })
})
