import { type ReactNode, useId } from 'react'
import { useMissing } from './use-missing.ts'
import './field.css'

/** What every field may be told beside its own value. */
export type FieldSays = Readonly<{
  label: string
  hint?: ReactNode
  /** A whole sentence: what was found and what is accepted. */
  error?: string | undefined
  /** A whole sentence while something is still to be given here; said once the rest is to be kept. */
  missing?: string | undefined
  /** Written after the label for fields that may stay empty. */
  optional?: boolean | undefined
  /** Hides the label from sight where a table or heading already says it; it is still spoken. */
  labelHidden?: boolean | undefined
}>

/** What a field hands to its control so that label, hint and error belong to it. */
export type ControlProps = Readonly<{
  id: string
  'aria-describedby': string | undefined
  'aria-invalid': true | undefined
}>

/** Label, control, hint and error of one thing to fill in. */
export function Field({
  label,
  hint,
  error: fault,
  missing,
  optional = false,
  labelHidden = false,
  unit,
  children,
}: FieldSays &
  Readonly<{ unit?: string | undefined; children: (props: ControlProps) => ReactNode }>) {
  const id = useId()
  const { field, says: lacks } = useMissing<HTMLDivElement>(missing)
  const error = fault ?? lacks
  const says = [hint !== undefined && `${id}-hint`, error !== undefined && `${id}-error`]
  const describedBy = says.filter((part) => part !== false).join(' ') || undefined
  return (
    <div ref={field} className="field" data-lacks={missing === undefined ? undefined : ''}>
      <label htmlFor={id} className={labelHidden ? 'unseen' : 'field-label'}>
        {label}
        {optional && <span className="field-optional"> if you like</span>}
      </label>
      <div className="field-control">
        {children({
          id,
          'aria-describedby': describedBy,
          'aria-invalid': error === undefined ? undefined : true,
        })}
        {unit !== undefined && <span className="field-unit">{unit}</span>}
      </div>
      {hint !== undefined && (
        <div id={`${id}-hint`} className="field-hint">
          {hint}
        </div>
      )}
      {error !== undefined && (
        <p id={`${id}-error`} className="field-error">
          {error}
        </p>
      )}
    </div>
  )
}
