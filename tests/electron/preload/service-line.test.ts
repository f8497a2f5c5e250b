import { describe, expect, it } from 'vitest'

import { openServiceLine } from '../../../electron/preload/service-line.ts'

type Message = Readonly<{ id: number; name: string; input: unknown }>

/** Two real, connected ports; the far one answers with what it was asked, when told to. */
function connect() {
  const { port1, port2 } = new MessageChannel()
  const heard: Message[] = []
  port2.onmessage = ({ data }: MessageEvent<Message>) => {
    heard.push(data)
    if (data.name !== 'never')
      port2.postMessage({ id: data.id, answer: { ok: true, value: data.input } })
  }
  return { port: port1, heard, close: () => port2.close() }
}

const soon = () => new Promise((resolve) => setTimeout(resolve, 20))
const stopped = { ok: false, error: expect.objectContaining({ code: 'service-stopped' }) }

describe('openServiceLine', () => {
  it('keeps what is asked before the first port and asks it then', async () => {
    const line = openServiceLine()
    const early = line.request('stock.list', { n: 1 })
    const far = connect()
    line.use(far.port)
    expect(await early).toEqual({ ok: true, value: { n: 1 } })
    expect(await line.request('stock.list', { n: 2 })).toEqual({ ok: true, value: { n: 2 } })
    expect(far.heard.map(({ id }) => id)).toEqual([1, 2])
    far.close()
  })

  it('refuses what is unanswered when it is cut, and what is asked until there is a new port', async () => {
    const line = openServiceLine()
    const first = connect()
    line.use(first.port)
    const lost = line.request('never', {})
    await soon()
    line.cut()
    expect(await lost).toEqual(stopped)
    expect(await line.request('stock.list', {})).toEqual(stopped)
    const second = connect()
    line.use(second.port)
    expect(await line.request('stock.list', { n: 3 })).toEqual({ ok: true, value: { n: 3 } })
    expect(second.heard).toHaveLength(1)
    first.close()
    second.close()
  })

  it('never asks twice what may have been done already', async () => {
    const line = openServiceLine()
    const [first, second] = [connect(), connect()]
    line.use(first.port)
    const maybeDone = line.request('never', {})
    await soon()
    line.use(second.port)
    expect(await maybeDone).toEqual(stopped)
    await soon()
    expect(second.heard).toEqual([])
    first.close()
    second.close()
  })
})
