import type { Format } from '../../app/format.ts'
import { Table } from '../../ui/table.tsx'
import type { BenchWork } from './bench-places.ts'

type Finished = BenchWork & Readonly<{ finished: NonNullable<BenchWork['finished']> }>
type Compared = Finished['finished']['figures']['seconds']

/** Finished work, latest first: what was planned beside what it came to. */
export function FinishedTable({
  works,
  format,
}: Readonly<{ works: readonly BenchWork[]; format: Format }>) {
  const rows = works.filter((work): work is Finished => work.finished !== null)
  return (
    <Table
      caption="Finished: what it came to, and what was planned"
      captionShown
      rows={rows}
      rowKey={({ id }) => id}
      columns={[
        { key: 'design', head: 'Design', cell: (row) => `${row.designName}, ${row.colourwayName}` },
        {
          key: 'units',
          head: 'Made',
          align: 'end',
          cell: (row) => format.counted(row.finished.units, row.unitName),
        },
        { key: 'on', head: 'On', cell: (row) => format.date(row.finished.madeOn) },
        column('Time', (figures) => figures.seconds, format.duration),
        column('Beads', (figures) => figures.beads, format.count),
        column('Bead mass', (figures) => figures.massMg, format.mass),
        column('Thread used', (figures) => figures.threadMm, format.thread),
      ]}
    />
  )
}

function column(
  head: string,
  of: (figures: Finished['finished']['figures']) => Compared,
  write: (value: number) => string,
) {
  return {
    key: head,
    head,
    align: 'end' as const,
    cell: (row: Finished) => <Pair compared={of(row.finished.figures)} write={write} />,
  }
}

function Pair({
  compared: { planned, actual },
  write,
}: Readonly<{ compared: Compared; write: (value: number) => string }>) {
  return (
    <>
      {actual === null ? <span className="bench-soft">not measured</span> : write(actual)}
      <span className="bench-planned">{`planned ${write(planned)}`}</span>
    </>
  )
}
