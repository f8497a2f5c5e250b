import { useState } from 'react'
import type { Format } from '../../../app/format.ts'
import { placeRefusal } from '../../../app/place-refusal.ts'
import { useAct } from '../../../app/use-act.ts'
import { Button } from '../../../ui/button.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { SideSheet } from '../../../ui/side-sheet.tsx'
import { TextInput } from '../../../ui/text-input.tsx'
import { readTags } from '../draft/draft.ts'
import { BODY_FIELDS, BodyFields } from './body-fields.tsx'
import type { DesignDetail } from './open-design.ts'

/** What a design is called and what one unit takes beside its beads. */
export function DetailsSheet({
  design,
  format,
  onClose,
}: Readonly<{ design: DesignDetail; format: Format; onClose: () => void }>) {
  const [name, setName] = useState(design.name)
  const [tags, setTags] = useState(design.tags.join(', '))
  const [body, setBody] = useState(design.body)
  const save = useAct('designs.save', {
    said: (_, input) => `Saved ${input.name}`,
    of: [name, tags, body],
  })
  const { at, above } = placeRefusal(save.refusal, ['name', 'tags', ...BODY_FIELDS])
  async function keep() {
    const saved = await save.act({
      id: design.id,
      name: name.trim(),
      tags: readTags(tags),
      body: { ...body, extras: body.extras.filter((extra) => extra.name.trim() !== '') },
      note: 'Details changed',
    })
    if (saved.ok) onClose()
  }
  return (
    <SideSheet
      open
      title="Details"
      onClose={onClose}
      actions={
        <>
          <Button kind="primary" icon="check" busy={save.isBusy} onClick={() => void keep()}>
            Save the details
          </Button>
          <Button onClick={onClose}>Leave as it was</Button>
        </>
      }
    >
      <TextInput
        label="Name"
        error={at('name')}
        value={name}
        longest={120}
        missing="A design needs a name. Give it one you will know it by."
        onChange={setName}
      />
      <TextInput
        label="Tags"
        error={at('tags')}
        optional
        hint="Parted by commas"
        value={tags}
        onChange={setTags}
      />
      <BodyFields body={body} at={at} format={format} onChange={setBody} />
      {above !== undefined && <RefusalNotice refusal={above} />}
    </SideSheet>
  )
}
