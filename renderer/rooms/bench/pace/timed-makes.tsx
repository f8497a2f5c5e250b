import type { CallOutput } from '../../../../shared-core/contract/calls.ts'
import type { Format } from '../../../app/format.ts'
import { Badge } from '../../../ui/badge.tsx'
import { Button } from '../../../ui/button.tsx'
import { Table } from '../../../ui/table.tsx'
import { percentWords } from './percent-words.ts'

type Make = CallOutput<'workshop.pace'>['makes'][number]

/** The makes whose time was kept, latest first; each can be left out and taken in again. */
export function TimedMakes({
  makes,
  format,
  onLeaveOut,
}: Readonly<{
  makes: readonly Make[]
  format: Format
  onLeaveOut: (makeIds: string[], leftOut: boolean) => void
}>) {
  return (
    <Table
      caption="Learnt from these makes"
      captionShown
      rows={makes}
      rowKey={({ makeId }) => makeId}
      columns={[
        { key: 'design', head: 'Design', cell: ({ designName }) => designName },
        { key: 'on', head: 'Made on', cell: ({ madeOn }) => format.date(madeOn) },
        {
          key: 'units',
          head: 'Made',
          align: 'end',
          cell: ({ units, unitName }) => format.counted(units, unitName),
        },
        { key: 'time', head: 'Time', align: 'end', cell: ({ benchS }) => format.duration(benchS) },
        {
          key: 'off',
          head: 'Against the trade’s',
          align: 'end',
          cell: ({ benchS, referenceS }) =>
            referenceS === 0 ? '' : percentWords(benchS / referenceS - 1, format),
        },
        {
          key: 'state',
          head: 'Counts',
          cell: ({ leftOut }) =>
            leftOut ? <Badge tone="quiet">Left out</Badge> : <Badge tone="good">Counts</Badge>,
        },
      ]}
      actions={({ makeId, leftOut }) => (
        <Button small onClick={() => onLeaveOut([makeId], !leftOut)}>
          {leftOut ? 'Take in again' : 'Leave out'}
        </Button>
      )}
    />
  )
}
