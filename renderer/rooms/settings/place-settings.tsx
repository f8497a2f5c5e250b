import { useState } from 'react'
import { placeRefusal } from '../../app/place-refusal.ts'
import { useAct } from '../../app/use-act.ts'
import { Button } from '../../ui/button.tsx'
import { EmptyState } from '../../ui/empty-state.tsx'
import { FormSheet } from '../../ui/form-sheet.tsx'
import { Select } from '../../ui/select.tsx'
import { Table } from '../../ui/table.tsx'
import { TextInput } from '../../ui/text-input.tsx'
import type { Channel, Place } from './settings-types.ts'

const NO_CHANNEL = 'none'

/** Where pieces can be: a drawer, a market box, a gallery. */
export function PlaceSettings({
  places,
  channels,
}: Readonly<{ places: readonly Place[]; channels: readonly Channel[] }>) {
  const [open, setOpen] = useState<Place | 'new'>()
  const channelName = (id: string | null) =>
    channels.find((channel) => channel.id === id)?.name ?? ''
  return (
    <div className="settings-list">
      <div>
        <Button icon="add" onClick={() => setOpen('new')}>
          Add a place
        </Button>
      </div>
      <Table
        caption="Places"
        rows={places}
        rowKey={({ id }) => id}
        onOpen={setOpen}
        columns={[
          { key: 'name', head: 'Place', cell: ({ name }) => name },
          {
            key: 'channel',
            head: 'Pieces there are sold through',
            cell: ({ channelId }) => channelName(channelId) || 'not for sale there',
          },
        ]}
        empty={
          <EmptyState picture="shelf">
            Say where pieces can be, and every piece is somewhere you can find it.
          </EmptyState>
        }
      />
      {open !== undefined && (
        <PlaceForm
          key={open === 'new' ? 'new' : open.id}
          place={open === 'new' ? undefined : open}
          channels={channels}
          onClose={() => setOpen(undefined)}
        />
      )}
    </div>
  )
}

function PlaceForm({
  place,
  channels,
  onClose,
}: Readonly<{ place: Place | undefined; channels: readonly Channel[]; onClose: () => void }>) {
  const [name, setName] = useState(place?.name ?? '')
  const [channel, setChannel] = useState(place?.channelId ?? NO_CHANNEL)
  const save = useAct('place.save', { said: () => `Saved ${name}`, of: [name, channel] })
  const { at, above } = placeRefusal(save.refusal, ['place.name', 'place.channelId'])
  async function submit() {
    const id = place === undefined ? {} : { id: place.id }
    const channelId = channel === NO_CHANNEL ? null : channel
    if ((await save.act({ place: { ...id, name, channelId } })).ok) onClose()
  }
  return (
    <FormSheet
      title={place === undefined ? 'New place' : `Change ${place.name}`}
      above={above}
      isBusy={save.isBusy}
      onSave={() => void submit()}
      onClose={onClose}
    >
      <TextInput
        label="Name"
        error={at('place.name')}
        longest={120}
        missing="Give the place a name, such as Market box."
        value={name}
        onChange={setName}
      />
      <Select
        label="Pieces there are sold through"
        error={at('place.channelId')}
        value={channel}
        options={[
          ...channels.map(({ id, name: label }) => ({ value: id, label })),
          { value: NO_CHANNEL, label: 'not for sale there' },
        ]}
        onChange={setChannel}
      />
    </FormSheet>
  )
}
