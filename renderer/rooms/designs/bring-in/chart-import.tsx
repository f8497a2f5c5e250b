import { useState } from 'react'
import type { StitchKind } from '../../../../shared-core/chart/chart.ts'
import type { CallOutput } from '../../../../shared-core/contract/calls.ts'
import type { Refusal } from '../../../../shared-core/refusal.ts'
import { type FileBytes, pickFile } from '../../../app/files.ts'
import { Room } from '../../../app/room.tsx'
import { useCall } from '../../../app/use-call.ts'
import { Button } from '../../../ui/button.tsx'
import { EmptyState } from '../../../ui/empty-state.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { Select } from '../../../ui/select.tsx'
import { DraftDesk } from '../draft/draft-desk.tsx'
import { stitchOptions } from '../draft/trade-options.ts'
import { ChartFaults } from './chart-faults.tsx'

/** The way in for a chart from a grid file: choose, look, say what the file does not, add. */
export function ChartImport() {
  const [file, setFile] = useState<FileBytes>()
  const [refusal, setRefusal] = useState<Refusal>()
  async function choose() {
    const answer = await pickFile('Choose a chart', [
      { name: 'Grid file', extensions: ['csv', 'tsv', 'txt'] },
    ])
    setRefusal(answer.ok ? undefined : answer.error)
    if (answer.ok && answer.value !== undefined) setFile(answer.value)
  }
  return (
    <Room
      title="Bring in a chart"
      back={{ href: '#/designs', label: 'Designs' }}
      actions={
        file !== undefined && (
          <Button icon="file" onClick={() => void choose()}>
            Choose another file
          </Button>
        )
      }
    >
      {refusal !== undefined && <RefusalNotice refusal={refusal} />}
      {file === undefined ? (
        <EmptyState
          picture="strand"
          action={
            <Button kind="primary" icon="file" onClick={() => void choose()}>
              Choose a file
            </Button>
          }
        >
          A grid file has one line a row from the top and a letter a bead, parted by commas:
          A,B,B,A. Before a semicolon a line may say how many half beads it is set in. You see the
          chart as beads before anything is written.
        </EmptyState>
      ) : (
        <Preview key={file.base64} file={file} />
      )}
    </Room>
  )
}

type StitchChoice = StitchKind | 'as-written'

function Preview({ file }: Readonly<{ file: FileBytes }>) {
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
      firstName={nameFromFile(file.fileName)}
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

/** `tidewrack-chart.csv` begins as Tidewrack chart. */
function nameFromFile(fileName: string): string {
  const words = fileName
    .replace(/\.[^.]*$/, '')
    .replace(/[-_]+/g, ' ')
    .replace(/ chart$/i, '')
    .trim()
  return words.charAt(0).toUpperCase() + words.slice(1, 120)
}
