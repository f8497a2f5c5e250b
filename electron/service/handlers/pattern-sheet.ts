import { makeDocument } from '../documents/document-desk.ts'
import { Later } from '../later.ts'
import { refuse } from '../refused.ts'
import { fileStem } from './file-stem.ts'
import type { LaterHandler } from './handler.ts'
import { readSheetOrder } from './sheet-order.ts'

export const makeSheet: LaterHandler<'designs.sheet'> = async (reading, input) => {
  const order = await readSheetOrder(reading, input)
  const madeAtMs = reading.atMs
  return new Later(async () => {
    const answer = await makeDocument({ kind: 'sheet', order, madeAtMs })
    if (answer.kind !== 'sheet') throw new Error(`asked for a sheet, got a ${answer.kind}`)
    const { bytes, pages, missingScripts } = answer.made
    return {
      fileName: `${fileStem(order.name, 'pattern-sheet')}.pdf`,
      mediaType: 'application/pdf',
      base64: Buffer.from(bytes).toString('base64'),
      pages,
      notes: missingScripts.map(noteOnScript),
    }
  })
}

export const readSheetPage: LaterHandler<'designs.sheetPage'> = async (reading, input) => {
  const order = await readSheetOrder(reading, input)
  return new Later(async () => {
    const answer = await makeDocument({ kind: 'page', order, number: input.number })
    if (answer.kind !== 'page') throw new Error(`asked for a page, got a ${answer.kind}`)
    const { page, pages, missingScripts } = answer.shown
    if (page !== null) return { page, pages, notes: missingScripts.map(noteOnScript) }
    const message = `This sheet has ${pages} pages, so no page ${input.number}.`
    return refuse('not-found', message, `Ask for one of 1 to ${pages}.`, 'number')
  })
}

function noteOnScript(script: string): string {
  return `The sheet’s fonts have no letters for ${script}: they stand as empty boxes.`
}
