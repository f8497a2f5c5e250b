import { stitchName } from '../../../../shared-core/chart/stitch-name.ts'
import type { CallOutput } from '../../../../shared-core/contract/calls.ts'
import { referencePace } from '../../../../shared-core/design/labour-pace.ts'
import type { SlackKind } from '../../../../shared-core/route/thread-slack.ts'
import type { Spread } from '../../../../shared-core/units/spread.ts'
import { capital } from '../../../app/capital.ts'
import type { Format } from '../../../app/format.ts'
import { BasisMark } from '../../../ui/basis-mark.tsx'
import { Table } from '../../../ui/table.tsx'

type Pace = CallOutput<'workshop.pace'>['learned']['pace']
type Row = Readonly<{ key: string; work: string; own: string; range: string; reference: string }> &
  Readonly<{ basis: Spread['basis'] }>

/** How fast this workshop works, kind by kind, beside the trade's own figures. */
export function PaceTable({
  learned: { pace },
  format,
}: Readonly<{ learned: CallOutput<'workshop.pace'>['learned']; format: Format }>) {
  return (
    <Table
      caption="Pace"
      captionShown
      rows={paceRows(pace, format)}
      rowKey={({ key }) => key}
      columns={[
        { key: 'work', head: 'Work', cell: ({ work }) => work },
        {
          key: 'own',
          head: 'Yours',
          align: 'end',
          cell: ({ own, basis }) => (
            <>
              {own} <BasisMark basis={basis} />
            </>
          ),
        },
        { key: 'range', head: 'Range', align: 'end', cell: ({ range }) => range },
        { key: 'reference', head: 'The trade’s', align: 'end', cell: (row) => row.reference },
      ]}
    />
  )
}

function paceRows(pace: Pace, format: Format): readonly Row[] {
  const kinds = Object.keys(pace.perBeadS) as SlackKind[]
  const known = kinds.filter((kind) => pace.perBeadS[kind].basis !== 'estimated')
  const others = kinds.filter((kind) => pace.perBeadS[kind].basis === 'estimated')
  const timed = (key: string, work: string, own: Spread, reference: Spread): Row => ({
    ...{ key, work, basis: own.basis },
    own: format.duration(own.value),
    range: format.range(own, format.duration),
    reference: format.duration(reference.value),
  })
  return [
    timed('set-up', 'Setting up a unit', pace.setUpS, referencePace.setUpS),
    ...[...known, ...others].map((kind) => beadRow(kind, pace.perBeadS[kind], format)),
    timed('finishing', 'Finishing a unit', pace.finishingS, referencePace.finishingS),
  ]
}

/** Beads a minute: fewer seconds are more beads, so low and high change places. */
function beadRow(kind: SlackKind, own: Spread, format: Format): Row {
  const rate = (seconds: number) =>
    `${(60 / seconds).toFixed(1).replace('.', format.decimal)} beads a minute`
  const bare = (seconds: number) => (60 / seconds).toFixed(1).replace('.', format.decimal)
  return {
    key: kind,
    work: kind === 'strand' ? 'Fringe and strands' : capital(stitchName(kind)),
    own: rate(own.value),
    range: `${bare(own.high)} to ${bare(own.low)}`,
    reference: rate(referencePace.perBeadS[kind].value),
    basis: own.basis,
  }
}
