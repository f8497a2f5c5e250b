import type { DecimalMark } from '../../../../shared-core/units/parse-options.ts'
import { withMark } from '../../../../shared-core/units/with-mark.ts'
import { Select } from '../../../ui/select.tsx'
import { TextInput } from '../../../ui/text-input.tsx'
import { BasisChoice } from './basis-choice.tsx'
import type { FigureKey, FormDraft } from './form-draft.ts'
import { SpreadField } from './spread-field.tsx'
import { familyWords } from './table-words.ts'

const families = (
  ['cylinder', 'rocaille', 'bugle', 'drop', 'two-hole', 'cube', 'faceted'] as const
).map((value) => ({ value, label: familyWords[value] }))

const FIGURES: readonly Readonly<{ key: FigureKey; label: string; unit: string; hint?: string }>[] =
  [
    {
      key: 'diameterMm',
      label: 'Across its hole',
      unit: 'mm',
      hint: '1.6 (1.55 to 1.65), 1.5–1.7, or 1.6 alone.',
    },
    { key: 'lengthMm', label: 'Along its hole', unit: 'mm' },
    { key: 'holeMm', label: 'The hole', unit: 'mm' },
    {
      key: 'beadsPerGram',
      label: 'Beads in a gram',
      unit: 'beads',
      hint: 'Weigh a hundred, and divide.',
    },
    { key: 'cullRate', label: 'Put aside as misshapen', unit: '%' },
  ]

/** The fields that can say what is wrong with them, as the contract names them. */
export const formFieldNames = [
  'form.name',
  'form.sizeLabel',
  'form.diameterMm',
  'form.lengthMm',
  'form.holeMm',
  'form.beadsPerGram',
  'form.cullRate',
] as const
export type FormFieldName = (typeof formFieldNames)[number]

type FormFieldsProps = Readonly<{
  draft: FormDraft
  decimal: DecimalMark
  errorAt: (field: FormFieldName) => string | undefined
  onDraft: (draft: FormDraft) => void
}>

/** What is typed of a bead form. */
export function FormFields({ draft, decimal, errorAt, onDraft }: FormFieldsProps) {
  const set = (part: Partial<FormDraft>) => onDraft({ ...draft, ...part })
  return (
    <>
      <TextInput
        label="Name"
        missing="Give it a name of your own."
        value={draft.name}
        longest={60}
        error={errorAt('form.name')}
        onChange={(name) => set({ name })}
      />
      <div className="settings-pair">
        <Select
          label="Shape"
          value={draft.family}
          options={families}
          onChange={(family) => set({ family })}
        />
        <TextInput
          label="Size as written"
          optional
          value={draft.sizeLabel}
          longest={20}
          error={errorAt('form.sizeLabel')}
          onChange={(sizeLabel) => set({ sizeLabel })}
        />
      </div>
      {FIGURES.map(({ key, label, unit, hint }) => (
        <SpreadField
          key={key}
          label={label}
          unit={unit}
          {...(hint === undefined ? {} : { hint: withMark(hint, decimal) })}
          decimal={decimal}
          typed={draft.figures[key]}
          error={errorAt(`form.${key}`)}
          onTyped={(typed) => set({ figures: { ...draft.figures, [key]: typed } })}
        />
      ))}
      <BasisChoice value={draft.basis} onChange={(basis) => set({ basis })} />
    </>
  )
}
