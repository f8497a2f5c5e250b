import type { DecimalMark } from '../../../../shared-core/units/parse-options.ts'
import { useFormat } from '../../../app/use-format.ts'
import { Badge } from '../../../ui/badge.tsx'
import { BasisMark, basisWords } from '../../../ui/basis-mark.tsx'
import { Table } from '../../../ui/table.tsx'
import type { Column } from '../../../ui/table-column.ts'
import { SpreadCell } from './spread-cell.tsx'
import { constructionWords, figure, originWords, type ThreadEntry } from './table-words.ts'
import { UsesCell } from './uses-cell.tsx'

/** Every thread as it lies in a hole, with what its figures rest on. */
export function ThreadTable({
  threads,
  openId,
  onOpen,
}: Readonly<{
  threads: readonly ThreadEntry[]
  openId: string | undefined
  onOpen: (thread: ThreadEntry) => void
}>) {
  const { decimal } = useFormat()
  return (
    <Table
      caption="Threads"
      rows={threads}
      rowKey={({ id }) => id}
      openKey={openId}
      onOpen={onOpen}
      columns={columns(decimal)}
    />
  )
}

const columns = (decimal: DecimalMark): readonly Column<ThreadEntry>[] => [
  {
    key: 'name',
    head: 'Thread',
    cell: (thread) => <ThreadName thread={thread} />,
    sortBy: ({ name }) => name,
  },
  {
    key: 'construction',
    head: 'Made as',
    cell: ({ construction }) => constructionWords[construction],
    sortBy: ({ construction }) => constructionWords[construction],
  },
  {
    key: 'diameter',
    head: 'Thick in a hole, mm',
    align: 'end',
    cell: ({ diameterMm }) => <SpreadCell spread={diameterMm} decimal={decimal} />,
    sortBy: ({ diameterMm }) => diameterMm.value,
  },
  {
    key: 'tex',
    head: 'Grams in 1000 m',
    align: 'end',
    cell: ({ tex }) => (tex === undefined ? '–' : figure(tex, decimal)),
    sortBy: ({ tex }) => tex ?? null,
  },
  {
    key: 'basis',
    head: 'Rests on',
    cell: (thread) => <ThreadBasis thread={thread} />,
  },
  {
    key: 'uses',
    head: 'In use',
    cell: ({ uses }) => <UsesCell uses={uses} />,
    sortBy: ({ uses }) => -uses.materials - uses.designs,
  },
]

function ThreadName({ thread: { name, origin } }: Readonly<{ thread: ThreadEntry }>) {
  const words = originWords(origin)
  return (
    <span className="tables-name">
      <span>
        {name}
        {words !== undefined && <Badge tone="busy">{words}</Badge>}
      </span>
    </span>
  )
}

function ThreadBasis({ thread: { diameterMm, origin } }: Readonly<{ thread: ThreadEntry }>) {
  const { basis } = diameterMm
  return (
    <span className="tables-basis">
      <BasisMark basis={basis} /> {origin === 'reference' ? 'trade knowledge' : basisWords[basis]}
    </span>
  )
}
