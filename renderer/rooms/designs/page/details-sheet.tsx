import { useState } from 'react'
import type { Panel } from '../../../../shared-core/design/design.ts'
import { parseDuration } from '../../../../shared-core/units/parse-duration.ts'
import type { Format } from '../../../app/format.ts'
import { placeRefusal } from '../../../app/place-refusal.ts'
import { useAct } from '../../../app/use-act.ts'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import { Button } from '../../../ui/button.tsx'
import { Checkbox } from '../../../ui/checkbox.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { QuantityInput } from '../../../ui/quantity-input.tsx'
import { Select } from '../../../ui/select.tsx'
import { SideSheet } from '../../../ui/side-sheet.tsx'
import { TextInput } from '../../../ui/text-input.tsx'
import { readTags } from '../draft/draft.ts'
import { ExtrasFields } from '../draft/extras-fields.tsx'
import { needleOptions, threadOptions } from '../draft/trade-options.ts'
import type { DesignDetail } from './open-design.ts'

type Body = DesignDetail['body']

/** What a design is called and what one unit takes beside its beads. */
export function DetailsSheet({
  design,
  format,
  onClose,
}: Readonly<{ design: DesignDetail; format: Format; onClose: () => void }>) {
  const [name, setName] = useState(design.name)
  const tables = useBeadTables()
  const [tags, setTags] = useState(design.tags.join(', '))
  const [body, setBody] = useState(design.body)
  const save = useAct('designs.save', {
    said: (_, input) => `Saved ${input.name}`,
    of: [name, tags, body],
  })
  const { at, above } = placeRefusal(save.refusal, [
    'name',
    'tags',
    'body.unitName',
    'body.threadId',
    'body.needleSize',
  ])
  const set = (part: Partial<Body>) => setBody({ ...body, ...part })
  const panels = body.parts.filter((part) => part.kind === 'panel')
  const [panel] = panels
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
      <TextInput
        label="What one unit is called"
        error={at('body.unitName')}
        value={body.unitName}
        longest={40}
        missing="Pair, band or piece: tags need a word."
        onChange={(unitName) => set({ unitName })}
      />
      {panels.length === 1 && panel !== undefined && panel.copies === 2 && (
        <Checkbox
          label="The second is the first in a mirror"
          checked={panel.mirrored}
          onChange={(mirrored) => set({ parts: withPanel(body, panel, { mirrored }) })}
        />
      )}
      <Select
        label="Thread"
        error={at('body.threadId')}
        value={body.threadId}
        options={threadOptions(tables, format.decimal)}
        onChange={(threadId) => set({ threadId })}
      />
      <Select
        label="Needle"
        error={at('body.needleSize')}
        value={body.needleSize}
        options={needleOptions}
        onChange={(needleSize) => set({ needleSize })}
      />
      <ExtrasFields
        extras={body.extras}
        decimal={format.decimal}
        onChange={(extras) => set({ extras: [...extras] })}
      />
      <div className="designs-pair">
        <TimeInput
          label="Set-up"
          seconds={body.setUpS}
          format={format}
          onChange={(setUpS) => setBody(withTime(body, 'setUpS', setUpS))}
        />
        <TimeInput
          label="Finishing"
          seconds={body.finishingS}
          format={format}
          onChange={(finishingS) => setBody(withTime(body, 'finishingS', finishingS))}
        />
      </div>
      {above !== undefined && <RefusalNotice refusal={above} />}
    </SideSheet>
  )
}

function withPanel(body: Body, panel: Readonly<Pick<Panel, 'id'>>, part: Partial<Panel>) {
  return body.parts.map((one) =>
    one.id === panel.id && one.kind === 'panel' ? ({ ...one, ...part } as typeof one) : one,
  )
}

/** Without a time of the maker's own the reference pace serves. */
function withTime(body: Body, key: 'setUpS' | 'finishingS', seconds: number | undefined): Body {
  const { [key]: _, ...rest } = body
  return seconds === undefined ? rest : { ...rest, [key]: seconds }
}

function TimeInput({
  label,
  seconds,
  format,
  onChange,
}: Readonly<{
  label: string
  seconds: number | undefined
  format: Format
  onChange: (seconds: number | undefined) => void
}>) {
  const [text, setText] = useState(seconds === undefined ? '' : format.duration(seconds))
  return (
    <QuantityInput
      label={label}
      optional
      hint="Such as 20 min"
      text={text}
      parse={(typed) => parseDuration(typed, { decimal: format.decimal, unit: 'min' })}
      onText={(typed, value) => {
        setText(typed)
        if (value !== undefined || typed.trim() === '') onChange(value)
      }}
    />
  )
}
