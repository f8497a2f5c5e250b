import { describe, expect, it } from 'vitest'
import { makeDocument, stopDocuments } from '../../../electron/service/documents/document-desk.ts'
import { Refused } from '../../../electron/service/refused.ts'
import { sheetOfSample } from './sheet-of-sample.ts'

const order = sheetOfSample('Samphire studs')

describe('makeDocument', () => {
  it('gives the same page that the whole sheet is painted from, and none past the last', async () => {
    const first = await makeDocument({ kind: 'page', order, number: 1 })
    const sheet = await makeDocument({ kind: 'sheet', order, madeAtMs: 0 })
    if (first.kind !== 'page' || sheet.kind !== 'sheet') throw new Error('got another kind')
    expect(first.shown.pages).toBe(sheet.made.pages)
    expect(first.shown.page?.marks.length).toBeGreaterThan(10)
    const past = await makeDocument({ kind: 'page', order, number: sheet.made.pages + 1 })
    expect(past).toMatchObject({ shown: { page: null } })
  })

  it('leaves this thread free to do other things meanwhile', async () => {
    let turns = 0
    const ticking = setInterval(() => {
      turns += 1
    }, 5)
    await makeDocument({ kind: 'sheet', order: sheetOfSample('Sluice cuff'), madeAtMs: 0 })
    clearInterval(ticking)
    expect(turns).toBeGreaterThan(3)
  })

  it('tells a fault of the thread with its cause and works on', async () => {
    const body = { ...order.body, threadId: 'no such thread' }
    await expect(
      makeDocument({ kind: 'sheet', order: { ...order, body }, madeAtMs: 0 }),
    ).rejects.toThrow('cannot be read')
    expect(await makeDocument({ kind: 'page', order, number: 1 })).toMatchObject({ kind: 'page' })
  })
})

describe('stopDocuments', () => {
  it('refuses what is under way in plain words, and the next is made all the same', async () => {
    const under = makeDocument({ kind: 'sheet', order, madeAtMs: 0 })
    const refusal = under.catch((cause: unknown) => cause)
    expect(stopDocuments()).toBe(1)
    expect(await refusal).toBeInstanceOf(Refused)
    expect(((await refusal) as Refused).refusal).toMatchObject({ code: 'document-stopped' })
    expect(stopDocuments()).toBe(0)
    expect(await makeDocument({ kind: 'page', order, number: 2 })).toMatchObject({ kind: 'page' })
  })
})
