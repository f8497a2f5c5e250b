import { useState } from 'react'
import { placeRefusal } from '../../app/place-refusal.ts'
import { useAct } from '../../app/use-act.ts'
import { useCall } from '../../app/use-call.ts'
import { FormSheet } from '../../ui/form-sheet.tsx'
import { Select } from '../../ui/select.tsx'
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
    <FormSheet
      title="Move pieces"
      above={above}
      label="Move"
      isBusy={move.isBusy}
      onSave={() => void submit()}
      onClose={onClose}
    >
      <p>{codes}</p>
      <Select
        label="To"
        error={at('placeId')}
        missing="Choose where they go."
        value={placeId ?? null}
        options={places.map(({ id, name: label }) => ({ value: id, label }))}
        onChange={setPlace}
      />
    </FormSheet>
  )
}
