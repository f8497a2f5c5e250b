import { useMemo, useState } from 'react'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { BenchStep } from '../../../../shared-core/route/route.ts'
import { writeLengths } from '../../../../shared-core/route/write-lengths.ts'
import { go } from '../../../app/place.ts'
import { useFormat } from '../../../app/use-format.ts'
import { Select } from '../../../ui/select.tsx'
import { Table } from '../../../ui/table.tsx'
import type { PlainPart } from '../reading/plain-reading.ts'
import type { ShownStep } from './shown-step.ts'

/** The bench steps of a part; a step opens on the thread's route. */
export function StepsView({
  id,
  body,
  parts,
  onStep,
}: Readonly<{
  id: string
  body: DesignBody
  parts: readonly PlainPart[] | undefined
  onStep: (step: ShownStep) => void
}>) {
  const { count, thread } = useFormat()
  const [partId, setPartId] = useState(body.parts[0]?.id ?? '')
  const part = parts?.find((one) => one.partId === partId) ?? parts?.[0]
  const steps = useMemo(
    () => (part?.steps ?? []).map((step, at) => ({ ...step, at: at + 1 })),
    [part],
  )
  const copies = copiesSideBySide(body, part?.partId)
  // A strand has no rows: a number there would be taken for a row of its panel.
  const isPanel = body.parts.some(({ id: own, kind }) => own === part?.partId && kind === 'panel')
  if (part === undefined) return <p role="status">Writing the steps…</p>
  return (
    <div className="design-sheet">
      {body.parts.length > 1 && (
        <div className="design-part">
          <Select
            label="Part"
            value={part.partId}
            options={body.parts.map(({ id: value, name }) => ({ value, label: name }))}
            onChange={setPartId}
          />
        </div>
      )}
      {copies > 1 && (
        <p className="designs-quiet">{`The steps of the last of ${count(copies)}.`}</p>
      )}
      <Table
        caption="Steps for the bench"
        rows={steps}
        rowKey={({ at }) => String(at)}
        onOpen={({ toEvent }) => {
          onStep({ partId: part.partId, event: toEvent })
          go({ room: 'designs', id, sub: 'thread' })
        }}
        columns={[
          { key: 'step', head: 'Step', width: '4.5rem', cell: ({ at }) => at },
          ...(isPanel ? [rowColumn] : []),
          { key: 'text', head: 'What to do', cell: ({ text }) => writeLengths(text, thread) },
        ]}
      />
    </div>
  )
}

const rowColumn = {
  key: 'row',
  head: 'Row',
  align: 'end',
  width: '4rem',
  cell: ({ row }: BenchStep) => row + 1,
} as const

/** Strands of a part that hang each from a bead of its own; 1 for anything else. */
function copiesSideBySide({ parts }: DesignBody, partId: string | undefined): number {
  const part = parts.find(({ id }) => id === partId)
  return part?.kind === 'strand' && part.anchor !== undefined ? part.copies : 1
}
