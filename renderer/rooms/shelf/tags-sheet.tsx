import { useState } from 'react'
import type { Refusal } from '../../../shared-core/refusal.ts'
import { saveFile } from '../../app/files.ts'
import { refusalOf } from '../../app/refusal-error.ts'
import { ask, useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { Button } from '../../ui/button.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import { Select } from '../../ui/select.tsx'
import { SideSheet } from '../../ui/side-sheet.tsx'
import type { Piece } from './shelf-room.tsx'

const NO_PRICE = 'none'

/** Makes a PDF of tags for the chosen pieces and saves it where the maker says. */
export function TagsSheet({
  pieces,
  onClose,
}: Readonly<{ pieces: readonly Piece[]; onClose: () => void }>) {
  const format = useFormat()
  const channels = useCall('workshop.read', {}).value?.channels ?? []
  const [paper, setPaper] = useState<'a4' | 'letter'>('a4')
  const [channel, setChannel] = useState<string>()
  const [isBusy, setBusy] = useState(false)
  const [refusal, setRefusal] = useState<Refusal>()
  const channelId = channel ?? channels[0]?.id ?? NO_PRICE
  async function print() {
    setBusy(true)
    setRefusal(undefined)
    try {
      const file = await ask('tags.print', {
        pieceIds: pieces.map(({ id }) => id),
        paper,
        ...(channelId === NO_PRICE ? {} : { channelId }),
      })
      if (await saveFile('Save the tags', file)) onClose()
    } catch (error) {
      setRefusal(refusalOf(error))
    } finally {
      setBusy(false)
    }
  }
  return (
    <SideSheet
      open
      title={`Print ${format.counted(pieces.length, 'tag')}`}
      onClose={onClose}
      actions={
        <Button kind="primary" icon="print" busy={isBusy} onClick={() => void print()}>
          Make the PDF
        </Button>
      }
    >
      {refusal !== undefined && <RefusalNotice refusal={refusal} />}
      <p>{pieces.map(({ code }) => code).join(', ')}</p>
      <SegmentedChoice
        label="Paper"
        value={paper}
        options={[
          { value: 'a4', label: 'A4' },
          { value: 'letter', label: 'Letter' },
        ]}
        onChange={setPaper}
      />
      <Select
        label="Price on the tag"
        value={channelId}
        options={[
          ...channels.map(({ id, name }) => ({ value: id, label: name })),
          { value: NO_PRICE, label: 'no price' },
        ]}
        onChange={setChannel}
      />
      <p className="quiet">
        Each tag says what it is, its code as text and QR, the materials, how to care for it and the
        caution on small parts. Maker, care and caution are set in Settings.
      </p>
    </SideSheet>
  )
}
