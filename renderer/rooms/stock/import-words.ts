import type { CallOutput } from '../../../shared-core/contract/calls.ts'

export type StockPreview = CallOutput<'stockFile.preview'>
export type StockColumn = StockPreview['columns'][number]

/** What a column of a stock list can hold, in the maker's words. */
export const columnWords: Readonly<Record<StockColumn, string>> = {
  ignore: 'leave out',
  code: 'Code',
  name: 'Name',
  kind: 'Kind',
  size: 'Size',
  colour: 'Colour',
  finish: 'Finish',
  grams: 'On hand in grams',
  pieces: 'On hand in pieces',
  'pack-price': 'Price of a pack',
  pack: 'Pack',
  supplier: 'Supplier',
  'dye-lot': 'Dye lot',
  'bought-on': 'Bought on',
  drawer: 'Drawer',
  note: 'Note',
}

export const columnOptions = (Object.keys(columnWords) as StockColumn[]).map((value) => ({
  value,
  label: columnWords[value],
}))

/** `1 row`, `13 rows`. */
export function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`
}
