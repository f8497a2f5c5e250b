import { useFormat } from '../../../app/use-format.ts'
import { Badge } from '../../../ui/badge.tsx'
import { BasisMark, basisWords } from '../../../ui/basis-mark.tsx'
import { Table } from '../../../ui/table.tsx'
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
      columns={[
        {
          key: 'name',
          head: 'Thread',
          cell: ({ name, origin }) => {
            const words = originWords(origin)
            return (
              <span className="tables-name">
                <span>
                  {name}
                  {words !== undefined && <Badge tone="busy">{words}</Badge>}
                </span>
              </span>
            )
          },
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
          cell: ({ diameterMm: { basis }, origin }) => (
            <span className="tables-basis">
              <BasisMark basis={basis} />{' '}
              {origin === 'reference' ? 'trade knowledge' : basisWords[basis]}
            </span>
          ),
        },
        {
          key: 'uses',
          head: 'In use',
          cell: ({ uses }) => <UsesCell uses={uses} />,
          sortBy: ({ uses }) => -uses.materials - uses.designs,
        },
      ]}
    />
  )
}
