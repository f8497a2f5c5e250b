import { describe, expect, it } from 'vitest'
import { openSmallWorkshop } from '../small-workshop.ts'
import { make } from './what-is-made.ts'

describe('tags.print', () => {
  it('makes a PDF with a page for up to ten tags', async () => {
    const shop = await openSmallWorkshop()
    const { studio, channelId } = shop
    const { pieces } = await studio.ask('makes.finish', make(shop, 12))
    const pieceIds = pieces.map(({ id }) => id)
    const made = await studio.ask('tags.print', { pieceIds, paper: 'a4', channelId })
    expect(made).toMatchObject({ fileName: 'tags-12.pdf', mediaType: 'application/pdf', pages: 2 })
    expect(Buffer.from(made.base64, 'base64').toString('latin1', 0, 5)).toBe('%PDF-')
    await studio.close()
  })
})
