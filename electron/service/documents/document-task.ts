import type { DesignBody } from '../../../shared-core/design/design.ts'
import type { WorkshopKnown } from '../bills.ts'
import type { SheetData } from './pattern-sheet/sheet-data.ts'

/** All that a sheet is made from; its reading is computed where the sheet is made. */
export type SheetOrder = Omit<SheetData, 'reading'> &
  Readonly<{ body: DesignBody; known: WorkshopKnown }>

/** A made file: its bytes, how many pages it has, and scripts in its names that no font of ours holds. */
export type MadeSheet = Readonly<{
  bytes: Uint8Array
  pages: number
  missingScripts: readonly string[]
}>

/** What the thread of documents is asked for. */
export type DocumentTask =
  | Readonly<{ kind: 'sheet'; order: SheetOrder; madeAtMs: number }>
  | Readonly<{ kind: 'page'; order: SheetOrder; number: number }>
  | Readonly<{ kind: 'export'; order: SheetOrder; as: ExportKind; partId: string | undefined }>

/** Files beside the sheet: one chart drawn, one chart as letters, all words, all counts. */
export type ExportKind = 'chart-svg' | 'grid' | 'word-chart' | 'counts'
