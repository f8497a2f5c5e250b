import { useState } from 'react'
import type { StitchKind } from '../../../../shared-core/chart/chart.ts'
import type { CallOutput } from '../../../../shared-core/contract/calls.ts'
import type { FileBytes } from '../../../app/files.ts'
import { useCall } from '../../../app/use-call.ts'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { Select } from '../../../ui/select.tsx'
import { firstDraft } from '../draft/draft.ts'
import { DraftDesk } from '../draft/draft-desk.tsx'
import { stitchOptions } from '../draft/trade-options.ts'
import { ChartFaults } from './chart-faults.tsx'
import { nameFromFile } from './name-from-file.ts'

type StitchChoice = StitchKind | 'as-written'

/** A chart read from letters: what was understood, or why not, line by line. */
export function GridText({ file }: Readonly<{ file: FileBytes }>) {
  const [draft, setDraft] = useState({ ...firstDraft, name: nameFromFile(file.fileName) })
  const [stitch, setStitch] = useState<StitchChoice>('as-written')
  const { value, refusal } = useCall('chartFile.preview', {
    file,
    ...(stitch === 'as-written' ? {} : { stitch }),
  })
  const choice = (
    <Select
      label="Stitch"
      value={stitch}
      options={[{ value: 'as-written', label: 'As the file says' } as const, ...stitchOptions]}
      onChange={setStitch}
    />
  )
  if (refusal !== undefined) return <RefusalNotice refusal={refusal} />
  if (value === undefined) return <p role="status">Reading {file.fileName}…</p>
  if (value.chart === null) {
    return (
      <>
        <ChartFaults fileName={file.fileName} faults={value.faults} />
        <div className="import-stitch">{choice}</div>
      </>
    )
  }
  return (
    <DraftDesk
      chart={value.chart}
      draft={draft}
      onDraft={setDraft}
      note={`Brought in from ${file.fileName}`}
      source={<Understood fileName={file.fileName} preview={value} />}
    >
      {choice}
    </DraftDesk>
  )
}

function Understood({
  fileName,
  preview,
}: Readonly<{ fileName: string; preview: CallOutput<'chartFile.preview'> }>) {
  return (
    <div className="draft-understood">
      {preview.understood.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <p className="designs-quiet">From {fileName}. Nothing is written yet.</p>
    </div>
  )
}
