import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { parseDuration } from '../../../../shared-core/units/parse-duration.ts'
import type { Format } from '../../../app/format.ts'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import { Checkbox } from '../../../ui/checkbox.tsx'
import { Select } from '../../../ui/select.tsx'
import { needleOptions, threadOptions } from '../draft/trade-options.ts'
import { ExtraFields } from './extra-fields.tsx'
import { KeptFigure, KeptText } from './kept-field.tsx'

/** What one unit is called and takes beside its beads: thread, needle, minutes, findings and packaging. */
export function UnitFields({
  body,
  format,
  onChange,
}: Readonly<{
  body: DesignBody
  format: Format
  onChange: (label: string, next: DesignBody) => void
}>) {
  const tables = useBeadTables()
  const minutes = (text: string) => parseDuration(text, { decimal: format.decimal, unit: 'min' })
  function time(key: 'setUpS' | 'finishingS', value: number | undefined) {
    const { [key]: _, ...rest } = body
    const label = key === 'setUpS' ? 'Set the set-up time' : 'Set the finishing time'
    onChange(label, value === undefined ? rest : { ...rest, [key]: value })
  }
  return (
    <section className="parts-group" aria-labelledby="parts-unit">
      <h2 id="parts-unit">One unit</h2>
      <KeptText
        label="What it is called"
        value={body.unitName}
        longest={40}
        refuse={(text) =>
          text.trim() === '' ? 'Pair, band or piece: tags need a word.' : undefined
        }
        onKeep={(unitName) => onChange('Rename the unit', { ...body, unitName })}
      />
      <Select
        label="Thread"
        value={body.threadId}
        options={threadOptions(tables, format.decimal)}
        onChange={(threadId) => onChange('Change the thread', { ...body, threadId })}
      />
      <Checkbox
        label="Thread worked doubled"
        hint="Two strands in every pass: twice the thread, and holes fill sooner."
        checked={body.threadStrands === 2}
        onChange={(doubled) => {
          const { threadStrands: _, ...rest } = body
          onChange(
            doubled ? 'Work the thread doubled' : 'Work the thread single',
            doubled ? { ...rest, threadStrands: 2 } : rest,
          )
        }}
      />
      <Select
        label="Needle"
        value={body.needleSize}
        options={needleOptions}
        onChange={(needleSize) => onChange('Change the needle', { ...body, needleSize })}
      />
      <div className="designs-pair">
        <KeptFigure
          label="Setting up"
          optional
          hint="In minutes"
          value={body.setUpS}
          write={format.duration}
          parse={minutes}
          range={[0, 360_000]}
          onKeep={(value) => time('setUpS', value)}
        />
        <KeptFigure
          label="Finishing"
          optional
          hint="In minutes"
          value={body.finishingS}
          write={format.duration}
          parse={minutes}
          range={[0, 360_000]}
          onKeep={(value) => time('finishingS', value)}
        />
      </div>
      <ExtraFields body={body} format={format} onChange={onChange} />
    </section>
  )
}
