import type { DecimalMark } from '../../../../shared-core/units/parse-options.ts'
import { useBeadTables } from '../../../app/use-bead-tables.ts'
import { Checkbox } from '../../../ui/checkbox.tsx'
import { Picker } from '../../../ui/picker.tsx'
import { SegmentedChoice } from '../../../ui/segmented-choice.tsx'
import { Select } from '../../../ui/select.tsx'
import { TextInput } from '../../../ui/text-input.tsx'
import { type Draft, withShape } from './draft.ts'
import { ExtrasFields } from './extras-fields.tsx'
import { formOptions, needleOptions, threadOptions } from './trade-options.ts'

/** The fields that can say what is wrong with them, as the contract names them. */
export const draftFieldNames = ['name', 'tags', 'body.threadId', 'body.needleSize'] as const

type DraftFieldsProps = Readonly<{
  draft: Draft
  onChange: (draft: Draft) => void
  decimal: DecimalMark
  errorAt: (field: (typeof draftFieldNames)[number]) => string | undefined
}>

/** What the chart alone does not say. */
export function DraftFields({ draft, onChange, decimal, errorAt }: DraftFieldsProps) {
  const set = (part: Partial<Draft>) => onChange({ ...draft, ...part })
  const tables = useBeadTables()
  return (
    <div className="draft-fields">
      <Picker
        label="Bead form"
        value={draft.formId}
        options={formOptions(tables, decimal)}
        onChange={(formId) => formId !== null && set({ formId })}
      />
      <TextInput
        label="Name"
        error={errorAt('name')}
        value={draft.name}
        longest={120}
        missing="The design has no name yet. Give it one you will know it by."
        onChange={(name) => set({ name })}
      />
      <TextInput
        label="Tags"
        error={errorAt('tags')}
        optional
        hint="Parted by commas: earrings, brick"
        value={draft.tags}
        onChange={(tags) => set({ tags })}
      />
      <SegmentedChoice
        label="What you sell as one"
        value={draft.shape}
        options={[
          { value: 'pair', label: 'A pair' },
          { value: 'one', label: 'One piece' },
        ]}
        onChange={(shape) => onChange(withShape(draft, shape))}
      />
      {draft.shape === 'pair' ? (
        <Checkbox
          label="The second is the first in a mirror"
          checked={draft.mirrored}
          onChange={(mirrored) => set({ mirrored })}
        />
      ) : (
        <TextInput
          label="What you call it"
          hint="Piece, band, pendant: as it stands on tags"
          value={draft.unitName}
          longest={40}
          onChange={(unitName) => set({ unitName })}
        />
      )}
      <div className="draft-thread">
        <Select
          label="Thread"
          error={errorAt('body.threadId')}
          value={draft.threadId}
          options={threadOptions(tables, decimal)}
          onChange={(threadId) => set({ threadId })}
        />
        <Select
          label="Needle"
          error={errorAt('body.needleSize')}
          value={draft.needleSize}
          options={needleOptions}
          onChange={(needleSize) => set({ needleSize })}
        />
      </div>
      <ExtrasFields
        extras={draft.extras}
        decimal={decimal}
        onChange={(extras) => set({ extras })}
      />
    </div>
  )
}
