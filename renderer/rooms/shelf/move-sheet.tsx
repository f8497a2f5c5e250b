import { useState } from 'react'
import { placeRefusal } from '../../app/place-refusal.ts'
import { useAct } from '../../app/use-act.ts'
import { useCall } from '../../app/use-call.ts'
import { Button } from '../../ui/button.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { Select } from '../../ui/select.tsx'
import { SideSheet } from '../../ui/side-sheet.tsx'
import type { Piece } from './shelf-room.tsx'

/** Moves the chosen pieces to another place. */
export function MoveSheet({
  pieces,
  onClose,
}: Readonly<{ pieces: readonly Piece[]; onClose: () => void }>) {
  const places = useCall('workshop.read', {}).value?.places ?? []
  const [placeId, setPlace] = useState<string>()
  const name = places.find(({ id }) => id === placeId)?.name ?? ''
  const codes = pieces.map(({ code }) => code).join(', ')
  const move = useAct('pieces.move', { said: () => `Moved ${codes} to ${name}`, of: placeId })
  const { at, above } = placeRefusal(move.refusal, ['placeId'])
  async function submit() {
    if (placeId === undefined) return
    const answer = await move.act({ pieceIds: pieces.map(({ id }) => id), placeId })
    if (answer.ok) onClose()
  }
  return (
    <SideSheet
      open
      title="Move pieces"
      onClose={onClose}
      actions={
        <Button kind="primary" busy={move.isBusy} onClick={() => void submit()}>
          Move
        </Button>
      }
    >
      {above !== undefined && <RefusalNotice refusal={above} />}
      <p>{codes}</p>
      <Select
        label="To"
        error={at('placeId')}
        missing="Choose where they go."
        value={placeId ?? null}
        options={places.map(({ id, name: label }) => ({ value: id, label }))}
        onChange={setPlace}
      />
    </SideSheet>
  )
}
