import { stitchName } from '../../../../shared-core/chart/stitch-name.ts'
import type { Panel } from '../../../../shared-core/design/design.ts'
import { parseCount } from '../../../../shared-core/units/parse-count.ts'
import { capital } from '../../../app/capital.ts'
import type { Format } from '../../../app/format.ts'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import { SegmentedChoice } from '../../../ui/segmented-choice.tsx'
import { Select } from '../../../ui/select.tsx'
import { formOptions } from '../draft/trade-options.ts'
import { KeptFigure, KeptText } from './kept-field.tsx'
import { RouteFields } from './route-fields.tsx'

/** What a stitched panel is called, its bead, its copies, and how it is worked. */
export function PanelFields({
  panel,
  format,
  onChange,
}: Readonly<{
  panel: Panel
  format: Format
  onChange: (label: string, panel: Panel) => void
}>) {
  const { name, chart, formId, copies, mirrored } = panel
  const { rows } = chart
  const tables = useBeadTables()
  return (
    <>
      <KeptText
        label="Name of the panel"
        value={name}
        longest={120}
        refuse={(text) => (text.trim() === '' ? 'A part needs a name.' : undefined)}
        onKeep={(next) => onChange(`Rename ${name}`, { ...panel, name: next })}
      />
      <p className="designs-quiet">
        {`${capital(stitchName(chart.stitch))}, ${format.counted(rows.length, 'row')}.`}
      </p>
      <Select
        label="Its bead"
        value={formId}
        options={formOptions(tables, format.decimal)}
        onChange={(next) => onChange(`Change the bead of ${name}`, { ...panel, formId: next })}
      />
      <KeptFigure
        label="How many in one unit"
        value={copies}
        write={format.count}
        parse={(text) => parseCount(text, { decimal: format.decimal })}
        range={[1, 1_000]}
        onKeep={(next) => onChange(`Copies of ${name}`, { ...panel, copies: next ?? copies })}
      />
      {copies > 1 && (
        <SegmentedChoice
          label={copies === 2 ? 'The second one' : 'Every second one'}
          value={mirrored ? 'mirrored' : 'same'}
          options={[
            { value: 'same', label: 'The same' },
            { value: 'mirrored', label: 'Mirrored' },
          ]}
          onChange={(next) =>
            onChange(`${next === 'mirrored' ? 'Mirror' : 'Do not mirror'} ${name}`, {
              ...panel,
              mirrored: next === 'mirrored',
            })
          }
        />
      )}
      <section className="parts-group" aria-labelledby="parts-working">
        <h3 id="parts-working">How it is worked</h3>
        <p className="designs-quiet">What you leave open the studio chooses.</p>
        <RouteFields
          panel={panel}
          format={format}
          onChange={(what, route) => onChange(`Set ${what} of ${name}`, { ...panel, route })}
        />
      </section>
    </>
  )
}
