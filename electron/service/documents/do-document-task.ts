import { createHash } from 'node:crypto'
import type { z } from 'zod'
import { assertNever } from '../../../shared-core/assert.ts'
import type { sheetPage } from '../../../shared-core/contract/page-marks.ts'
import type { DocumentTask, MadeSheet, SheetOrder } from './document-task.ts'
import { type ExportedText, exportText } from './export-text.ts'
import { pageView } from './page-view.ts'
import {
  type LaidSheet,
  laySheet,
  makePatternSheet,
  readOrder,
} from './pattern-sheet/make-pattern-sheet.ts'

/** One page of a sheet to look at; no page where the sheet has none of that number. */
export type ShownPage = Readonly<{
  page: z.output<typeof sheetPage> | null
  pages: number
  missingScripts: readonly string[]
}>

export type TaskAnswer =
  | Readonly<{ kind: 'sheet'; made: MadeSheet }>
  | Readonly<{ kind: 'page'; shown: ShownPage }>
  | Readonly<{ kind: 'export'; exported: ExportedText | null }>

/** Does a task of the thread of documents. */
export async function doDocumentTask(task: DocumentTask): Promise<TaskAnswer> {
  switch (task.kind) {
    case 'sheet': {
      const made = await makePatternSheet(laidSheet(task.order), task.order, task.madeAtMs)
      return { kind: 'sheet', made }
    }
    case 'page': {
      const { pages, missingScripts } = laidSheet(task.order)
      const page = pages[task.number - 1]
      const shown = { page: page === undefined ? null : pageView(page), pages: pages.length }
      return { kind: 'page', shown: { ...shown, missingScripts } }
    }
    case 'export':
      return { kind: 'export', exported: exportText(readOrder(task.order), task.as, task.partId) }
    default:
      return assertNever(task)
  }
}

let lastLaid: Readonly<{ key: string; laid: LaidSheet }> | undefined

/** The sheet of an order, laid out once: its pages are asked for one by one, and then the whole. */
function laidSheet(order: SheetOrder): LaidSheet {
  const key = createHash('sha256').update(JSON.stringify(order)).digest('hex')
  if (lastLaid?.key !== key) lastLaid = { key, laid: laySheet(readOrder(order)) }
  return lastLaid.laid
}
