import type { Paper } from './draw-list.ts'
import { measureText } from './fonts.ts'
import { paintPdf } from './paint-pdf.ts'
import { qrCode } from './qr-code.ts'
import { type Tag, tagSheet } from './tag-sheet.ts'

export type TagsRequest = Readonly<{
  tags: readonly Omit<Tag, 'qr'>[]
  paper: Paper
  workshopName: string
  madeAtMs: number
}>

/** Makes the PDF of tags: its bytes and how many pages it has. The QR code holds the piece's code as text. */
export async function makeTags(
  request: TagsRequest,
): Promise<Readonly<{ bytes: Uint8Array; pages: number }>> {
  const tags = request.tags.map((tag) => ({ ...tag, qr: qrCode(tag.code) }))
  const pages = tagSheet(tags, request.paper, measureText)
  const info = {
    title: `Tags for ${tags.length} ${tags.length === 1 ? 'piece' : 'pieces'}`,
    author: request.workshopName,
    madeAtMs: request.madeAtMs,
  }
  return { bytes: await paintPdf(pages, info), pages: pages.length }
}
