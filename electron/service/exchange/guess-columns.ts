import type { Refusal } from '../../../shared-core/refusal.ts'
import { plainWord } from './plain-word.ts'
import { HEADINGS, type StockColumn } from './stock-headings.ts'

/** What each column holds, told from its heading; a column that nothing fits is left out. */
export function guessColumns(headings: readonly string[]): readonly StockColumn[] {
  const taken = new Set<StockColumn>()
  return headings.map((heading) => {
    const column = columnOf(plainWord(heading))
    if (column === 'ignore' || taken.has(column)) return 'ignore'
    taken.add(column)
    return column
  })
}

function columnOf(word: string): StockColumn {
  const known = Object.entries(HEADINGS).find(([, words]) => words.includes(word))
  return (known?.[0] as StockColumn | undefined) ?? 'ignore'
}

/** What is wrong with a choice of columns as a whole. */
export function checkColumns(
  columns: readonly StockColumn[],
  headings: readonly string[],
): readonly Refusal[] {
  const faults: Refusal[] = []
  if (columns.length !== headings.length) {
    faults.push({
      code: 'column-count',
      message: `${columns.length} columns were chosen, and the file has ${headings.length}.`,
      next: 'Choose what each column of the file holds, or “ignore”.',
      field: 'columns',
    })
  }
  const used = columns.filter((column) => column !== 'ignore')
  for (const column of new Set(used.filter((one, at) => used.indexOf(one) !== at))) {
    faults.push({
      code: 'column-twice',
      message: `Two columns are said to hold ${wordsFor(column)}.`,
      next: 'Set one of them to “ignore”.',
      field: 'columns',
    })
  }
  if (!used.includes('code')) {
    faults.push({
      code: 'no-code-column',
      message: 'No column holds the code of the materials.',
      next: 'Choose the column with the article number or another code of your own.',
      field: 'columns',
    })
  }
  return faults
}

function wordsFor(column: StockColumn): string {
  return `the ${column.replace('-', ' ')}`
}
