import { PassThrough } from 'node:stream'
import { text } from 'node:stream/consumers'
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { writeJson } from '../../scripts/write-json.ts'

async function written(value: unknown): Promise<string> {
  const stream = new PassThrough()
  const all = text(stream)
  await writeJson(value, stream)
  stream.end()
  return all
}

describe('writeJson', () => {
  it('writes what JSON reads back, as JSON itself indents it', async () => {
    await fc.assert(
      fc.asyncProperty(fc.jsonValue({ maxDepth: 4 }), async (value) => {
        expect(await written(value)).toBe(`${JSON.stringify(value, null, 2)}\n`)
      }),
    )
  })

  it('leaves out what JSON leaves out', async () => {
    const value = { a: undefined, b: [undefined, { c: undefined }], d: [] }
    expect(JSON.parse(await written(value))).toEqual({ b: [null, {}], d: [] })
  })

  it('leaves nobody listening at the stream, however long the value', async () => {
    const stream = new PassThrough()
    const all = text(stream)
    const listening = () => stream.eventNames().map((name) => [name, stream.listenerCount(name)])
    const before = listening()
    await writeJson(
      Array.from({ length: 40_000 }, (_, bead) => ({ kind: 'pick', bead })),
      stream,
    )
    expect(listening()).toEqual(before)
    stream.end()
    await all
  })

  it('stops where the reader closes its end', async () => {
    const stream = new PassThrough()
    stream.once('data', () => stream.destroy())
    const events = Array.from({ length: 40_000 }, (_, bead) => ({ kind: 'pick', bead }))
    await writeJson({ events, more: events }, stream)
    expect(stream.destroyed).toBe(true)
  })

  it('gives an entry of a long list a line of its own, however slowly it is read', async () => {
    const events = Array.from({ length: 40_000 }, (_, bead) => ({ kind: 'pick', bead }))
    const all = await written({ events })
    expect(JSON.parse(all)).toEqual({ events })
    expect(all.split('\n')).toHaveLength(events.length + 5)
  })
})
