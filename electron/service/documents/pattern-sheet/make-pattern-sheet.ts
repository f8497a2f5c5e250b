import { measureText, missingScripts } from '../fonts.ts'
import { paintPdf } from '../paint-pdf.ts'
import { textsOf } from './caution-pages.ts'
import { patternSheet } from './pattern-sheet.ts'
import type { SheetData } from './sheet-data.ts'

/** A made sheet: the PDF, how many pages it has, and scripts in its names that no font of ours holds. */
export type MadeSheet = Readonly<{
  bytes: Uint8Array
  pages: number
  missingScripts: readonly string[]
}>

/** Makes the PDF of a design's pattern sheet. */
export async function makePatternSheet(data: SheetData, madeAtMs: number): Promise<MadeSheet> {
  const pages = patternSheet(data, measureText)
  const info = { title: `${data.name}: pattern sheet`, author: data.maker, madeAtMs }
  const bytes = await paintPdf(pages, info)
  return { bytes, pages: pages.length, missingScripts: missingScripts(textsOf(data)) }
}
