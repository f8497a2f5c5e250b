import { OUTLINE_KINDS } from '../../../../shared-core/chart/outlines/chart-from-outline.ts'
import { FRINGE_GRADES } from '../../../../shared-core/chart/outlines/fringe-fan.ts'
import { capital } from '../../../app/capital.ts'
import { useFormat } from '../../../app/use-format.ts'
import { Select } from '../../../ui/select.tsx'
import { SliderInput } from '../../../ui/slider-input.tsx'
import { stitchOptions } from '../draft/trade-options.ts'
import { OUTLINE_STITCHES, SHAPES, type ShapeKind, type ShapeWanted } from './outline-draft.ts'

const shapeOptions = SHAPES.map((value) => ({ value, label: capital(shapeName(value)) }))
const stitches = OUTLINE_STITCHES.map((value) => ({
  value,
  label: stitchOptions.find((option) => option.value === value)?.label ?? value,
}))
const tops = OUTLINE_KINDS.map((value) => ({ value, label: capital(value) }))
const gradeLabels = {
  point: 'Longest in the middle',
  even: 'All alike',
  slant: 'Longer to the right',
  hollow: 'Longest at the ends',
} as const
const grades = FRINGE_GRADES.map((value) => ({ value, label: gradeLabels[value] }))

/** A shape's name within a sentence. */
export function shapeName(kind: ShapeKind): string {
  return kind === 'fringe' ? 'fringe fan' : kind
}

type FieldsProps = Readonly<{ wanted: ShapeWanted; onChange: (wanted: ShapeWanted) => void }>

/** A shape, its stitch and its size in beads; every number drawn along a line or typed. */
export function OutlineFields({ wanted, onChange }: FieldsProps) {
  const { decimal } = useFormat()
  const set = (part: Partial<ShapeWanted>) => onChange({ ...wanted, ...part })
  const isFringe = wanted.kind === 'fringe'
  return (
    <>
      <div className="designs-pair">
        <Select
          label="Shape"
          value={wanted.kind}
          options={shapeOptions}
          onChange={(kind) => set(firstSizeOf(kind, wanted))}
        />
        <Select
          label="Stitch"
          value={wanted.stitch}
          options={stitches}
          onChange={(stitch) => set({ stitch })}
        />
      </div>
      {isFringe && (
        <Select
          label="Top"
          hint="The upper part of this shape, down to its widest row."
          value={wanted.top}
          options={tops}
          onChange={(top) => set({ top })}
        />
      )}
      <SliderInput
        label="Beads across"
        {...{ decimal, value: wanted.columns, min: 1, max: 200 }}
        onChange={(columns) => set({ columns })}
      />
      <SliderInput
        label={isFringe ? 'Rows of the top' : 'Rows'}
        {...{ decimal, value: wanted.rows, min: 1, max: 400 }}
        onChange={(rows) => set({ rows })}
      />
      {isFringe && <FringeFields wanted={wanted} onChange={onChange} />}
    </>
  )
}

/** A fringe hangs from a small top; what was drawn before is mostly too tall for one. */
function firstSizeOf(kind: ShapeKind, { kind: before, columns, rows }: ShapeWanted) {
  const isNewFringe = kind === 'fringe' && before !== 'fringe'
  return isNewFringe && rows > columns ? { kind, rows: columns } : { kind }
}

function FringeFields({ wanted, onChange }: FieldsProps) {
  const { decimal } = useFormat()
  const { shortest, longest, tip, grade } = wanted
  const set = (part: Partial<ShapeWanted>) => onChange({ ...wanted, ...part })
  return (
    <>
      <Select
        label="Strands"
        value={grade}
        options={grades}
        onChange={(next) => set({ grade: next })}
      />
      <SliderInput
        label="Longest strand, beads"
        {...{ decimal, value: longest, min: 1, max: 120 }}
        onChange={(next) => set({ longest: next, shortest: Math.min(shortest, next) })}
      />
      {grade !== 'even' && (
        <SliderInput
          label="Shortest strand, beads"
          {...{ decimal, value: shortest, min: 1, max: 120 }}
          onChange={(next) => set({ shortest: next, longest: Math.max(longest, next) })}
        />
      )}
      <SliderInput
        label="Beads in each tip"
        {...{ decimal, value: tip, min: 0, max: 20 }}
        onChange={(next) => set({ tip: next })}
      />
    </>
  )
}
