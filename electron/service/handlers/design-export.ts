import { makeDocument, stopDocuments } from '../documents/document-desk.ts'
import type { ExportKind } from '../documents/document-task.ts'
import { Later } from '../later.ts'
import { refuse } from '../refused.ts'
import { fileStem } from './file-stem.ts'
import type { LaterHandler, PureHandler } from './handler.ts'
import { readSheetOrder } from './sheet-order.ts'

type Kind = Readonly<{ what: string; ending: string; mediaType: string }>

const KINDS: Readonly<Record<ExportKind, Kind>> = {
  'chart-svg': { what: 'chart', ending: 'svg', mediaType: 'image/svg+xml' },
  grid: { what: 'grid', ending: 'csv', mediaType: 'text/csv' },
  'word-chart': { what: 'word-chart', ending: 'txt', mediaType: 'text/plain' },
  counts: { what: 'counts', ending: 'csv', mediaType: 'text/csv' },
}

export const exportDesign: LaterHandler<'designs.export'> = async (reading, input) => {
  const order = await readSheetOrder(reading, { ...input, audience: 'self', paper: 'a4' })
  const { as, partId } = input
  const { what, ending, mediaType } = KINDS[as]
  return new Later(async () => {
    const answer = await makeDocument({ kind: 'export', order, as, partId })
    if (answer.kind !== 'export') throw new Error(`asked for a file, got a ${answer.kind}`)
    if (answer.exported === null) return refuse(...NOTHING_DRAWN)
    const { text, partName } = answer.exported
    const isOneOfMany = order.body.parts.filter(({ kind }) => kind === 'panel').length > 1
    const name = isOneOfMany && partName !== null ? `${order.name} ${partName}` : order.name
    return {
      fileName: `${fileStem(name, what)}.${ending}`,
      mediaType,
      base64: Buffer.from(text).toString('base64'),
    }
  })
}

export const stopMaking: PureHandler<'documents.stop'> = () => ({ stopped: stopDocuments() })

const NOTHING_DRAWN = [
  'nothing-to-export',
  'There is no chart with beads of that kind in this design.',
  'Choose a panel that has beads, or draw some first.',
  'partId',
] as const
