import { useFormat } from '../../../app/use-format.ts'
import { type FormEntry, usesWords } from './table-words.ts'

/** What names an entry, counted. */
export function UsesCell({ uses }: Readonly<{ uses: FormEntry['uses'] }>) {
  const words = usesWords(uses, useFormat())
  if (words.length === 0) return '–'
  return (
    <span className="tables-uses">
      {words.map((word) => (
        <span key={word}>{word}</span>
      ))}
    </span>
  )
}
