import { useState } from 'react'
import type { Panel } from '../../../../shared-core/design/design.ts'
import { parseDuration } from '../../../../shared-core/units/parse-duration.ts'
import type { Format } from '../../../app/format.ts'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import { Checkbox } from '../../../ui/checkbox.tsx'
import { QuantityInput } from '../../../ui/quantity-input.tsx'
import { Select } from '../../../ui/select.tsx'
import { TextInput } from '../../../ui/text-input.tsx'
import { ExtrasFields } from '../draft/extras-fields.tsx'
import { needleOptions, threadOptions } from '../draft/trade-options.ts'
import type { DesignDetail } from './open-design.ts'

type Body = DesignDetail['body']

/** The fields of the contract that stand here. */
export const BODY_FIELDS = ['body.unitName', 'body.threadId', 'body.needleSize'] as const

type BodyFieldsProps = Readonly<{
  body: Body
  /** What is refused at a field of the contract. */
  at: (field: (typeof BODY_FIELDS)[number]) => string | undefined
  format: Format
  onChange: (body: Body) => void
}>

/** What one unit is and takes beside its beads: its word, thread and needle, what is added, and the time round it. */
export function BodyFields({ body, at, format, onChange }: BodyFieldsProps) {
  const tables = useBeadTables()
  const set = (part: Partial<Body>) => onChange({ ...body, ...part })
  const panels = body.parts.filter((part) => part.kind === 'panel')
  const [panel] = panels
  return (
    <>
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
          onChange={(setUpS) => onChange(withTime(body, 'setUpS', setUpS))}
        />
        <TimeInput
          label="Finishing"
          seconds={body.finishingS}
          format={format}
          onChange={(finishingS) => onChange(withTime(body, 'finishingS', finishingS))}
        />
      </div>
    </>
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
