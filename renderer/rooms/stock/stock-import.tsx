import { useState } from 'react'
import { FileRoom } from '../../app/file-room.tsx'
import type { FileBytes } from '../../app/files.ts'
import { go } from '../../app/place.ts'
import { useAct } from '../../app/use-act.ts'
import { useCall } from '../../app/use-call.ts'
import { Button } from '../../ui/button.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import { BadRows } from './import-bad-rows.tsx'
import { ColumnMap } from './import-column-map.tsx'
import { isOfColumn } from './import-faults.ts'
import { GoodRows } from './import-good-rows.tsx'
import { counted, type StockColumn, type StockPreview } from './import-words.ts'

const FILTERS = [{ name: 'Spreadsheet export', extensions: ['csv', 'tsv', 'txt'] }]

/** The way in for a spreadsheet: choose a file, see how it is read, leave out what cannot be, confirm. */
export function StockImport() {
  return (
    <FileRoom
      title="Bring in a spreadsheet"
      back={{ href: '#/stock', label: 'Stock' }}
      asks="Choose a stock list"
      filters={FILTERS}
      picture="ledger"
      teaches="Save your list as CSV from any spreadsheet. You see how every column and row is read before anything is written."
    >
      {(file) => <Preview file={file} />}
    </FileRoom>
  )
}

const MOST_NAMED = 8

function Preview({ file }: Readonly<{ file: FileBytes }>) {
  const [columns, setColumns] = useState<StockColumn[]>()
  const [decimalMark, setDecimalMark] = useState<',' | '.'>()
  const request = {
    file,
    ...(columns === undefined ? {} : { columns }),
    ...(decimalMark === undefined ? {} : { decimalMark }),
  }
  const { value, refusal, isWaiting } = useCall('stockFile.preview', request)
  const bring = useAct('stockFile.import', {
    said: ({ materials, lots }) =>
      `Brought in ${counted(materials, 'material')} in ${counted(lots, 'lot')}`,
  })
  if (refusal !== undefined) return <RefusalNotice refusal={refusal} />
  if (value === undefined) return <p role="status">Reading {file.fileName}…</p>
  async function confirm(preview: StockPreview) {
    const leaveOutLines = preview.badRows.map(({ line }) => line)
    const answer = await bring.act({ ...request, leaveOutLines })
    if (answer.ok) go({ room: 'stock' })
  }
  return (
    <div className="import">
      <Understood preview={value} fileName={file.fileName} onDecimalMark={setDecimalMark} />
      {value.faults
        .filter((fault) => !isOfColumn(fault))
        .map((fault) => (
          <RefusalNotice key={`${fault.code} ${fault.field}`} refusal={fault} />
        ))}
      <ColumnMap preview={value} onColumns={setColumns} />
      <BadRows badRows={value.badRows} />
      <GoodRows rows={value.rows} />
      {bring.refusal !== undefined && <RefusalNotice refusal={bring.refusal} />}
      <Confirm
        preview={value}
        isBusy={bring.isBusy}
        isRead={!isWaiting}
        onConfirm={() => void confirm(value)}
      />
    </div>
  )
}

function Understood({
  preview,
  fileName,
  onDecimalMark,
}: Readonly<{
  preview: StockPreview
  fileName: string
  onDecimalMark: (mark: ',' | '.') => void
}>) {
  const { encoding, delimiter, decimalMark } = preview.understood
  return (
    <div className="import-understood">
      <div>
        <p>
          <strong>{fileName}</strong> is read as {encoding}, columns parted by {delimiter}. Nothing
          is written yet.
        </p>
        <p className="import-sum">{sumUp(preview)}</p>
      </div>
      <SegmentedChoice
        label="Decimal mark"
        value={decimalMark}
        options={[
          { value: ',', label: '12,5' },
          { value: '.', label: '12.5' },
        ]}
        onChange={onDecimalMark}
      />
    </div>
  )
}

/** How the rows stand, with the numbers of the lines to look at: the list itself is further down. */
function sumUp({ rows, badRows }: StockPreview): string {
  const ready = `${counted(rows.length, 'row')} can be taken`
  if (badRows.length === 0) return `${ready}.`
  const named = badRows.slice(0, MOST_NAMED).map(({ line }) => line)
  const more = badRows.length > MOST_NAMED ? ' and more' : ''
  const lines = named.length === 1 ? 'line' : 'lines'
  return `${ready}, ${badRows.length} cannot: ${lines} ${named.join(', ')}${more}, told below.`
}

function Confirm({
  preview,
  isBusy,
  isRead,
  onConfirm,
}: Readonly<{
  preview: StockPreview
  isBusy: boolean
  /** Whether the preview is of the columns as they stand chosen. */
  isRead: boolean
  onConfirm: () => void
}>) {
  const { rows, badRows, faults } = preview
  const leaving = badRows.length === 0 ? '' : `, leave out ${badRows.length}`
  return (
    <div className="import-confirm stays-at-foot">
      <Button
        kind="primary"
        icon="check"
        busy={isBusy}
        disabled={!isRead || (faults.length === 0 ? rows.length === 0 : !faults.some(isOfColumn))}
        onClick={onConfirm}
      >
        {`Bring in ${counted(rows.length, 'row')}${leaving}`}
      </Button>
      <p className="quiet">All of it or nothing; you can undo it in one step.</p>
    </div>
  )
}
