import { readDesign } from '../../../../shared-core/design/read-design.ts'
import type { MadeSheet, SheetOrder } from '../document-task.ts'
import type { Page } from '../draw-list.ts'
import { measureText, missingScripts } from '../fonts.ts'
import { textsOf } from './caution-pages.ts'
import { patternSheet } from './pattern-sheet.ts'
import type { SheetData } from './sheet-data.ts'

/** A sheet laid out, and the scripts in its names that no font of ours holds. */
export type LaidSheet = Readonly<{ pages: readonly Page[]; missingScripts: readonly string[] }>

/** Computes what a sheet says of its design. */
export function readOrder(order: SheetOrder): SheetData {
  const read = readDesign(order.body, { ...order.tables, ...order.known })
  if (!read.ok) throw new Error(`a saved version cannot be read: ${read.error.message}`)
  return { ...order, reading: read.value }
}

/** Lays out a design's pattern sheet. */
export function laySheet(data: SheetData): LaidSheet {
  return { pages: patternSheet(data, measureText), missingScripts: missingScripts(textsOf(data)) }
}

/** Paints a laid sheet into a PDF. */
export async function makePatternSheet(
  { pages, missingScripts }: LaidSheet,
  { name, maker }: Pick<SheetData, 'name' | 'maker'>,
  madeAtMs: number,
): Promise<MadeSheet> {
  // Loaded with the first PDF: a sheet is looked at before it is saved.
  const { paintPdf } = await import('../paint-pdf.ts')
  const info = { title: `${name}: pattern sheet`, author: maker, madeAtMs }
  return { bytes: await paintPdf(pages, info), pages: pages.length, missingScripts }
}
