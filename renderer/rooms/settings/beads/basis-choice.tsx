import { SegmentedChoice } from '../../../ui/segmented-choice.tsx'
import type { TypedBasis } from './typed-spread.ts'

/** What the figures rest on; until it is chosen, figures not touched keep what they rested on. */
export function BasisChoice({
  value,
  onChange,
}: Readonly<{ value: TypedBasis | undefined; onChange: (value: TypedBasis) => void }>) {
  return (
    <SegmentedChoice<TypedBasis | 'kept'>
      label="The figures are"
      value={value ?? 'kept'}
      options={[
        ...(value === undefined ? [{ value: 'kept' as const, label: 'as they were' }] : []),
        { value: 'measured', label: 'measured here' },
        { value: 'estimated', label: 'estimated' },
      ]}
      onChange={(next) => next !== 'kept' && onChange(next)}
    />
  )
}
