import type { ReactNode } from 'react'
import type { Refusal } from '../../../../shared-core/refusal.ts'
import { formatCount } from '../../../../shared-core/units/format-number.ts'
import { parseCount } from '../../../../shared-core/units/parse-count.ts'
import { parseDuration } from '../../../../shared-core/units/parse-duration.ts'
import { parseThread } from '../../../../shared-core/units/parse-length.ts'
import { parseMass } from '../../../../shared-core/units/parse-mass.ts'
import type { DecimalMark } from '../../../../shared-core/units/parse-options.ts'
import { QuantityInput } from '../../../ui/quantity-input.tsx'
import { refusalWords } from '../../../ui/refusal-words.ts'
import { parseUnits } from '../../parse-units.ts'
import { type BenchRead, EMPTY, type FinishDraft, type Typed } from './finish-draft.ts'

type FieldsProps = Readonly<{
  read: BenchRead
  draft: FinishDraft
  onDraft: (draft: FinishDraft) => void
  /** The fault that stands at a field, by the field's name in the call. */
  faultAt: (field: string) => Refusal | undefined
  decimal: DecimalMark
  /** Where the pieces go and when, among the first fields. */
  children: ReactNode
}>

/** What was made, what was put aside, what is left: all but the pieces may stay empty. */
export function FinishFields(props: FieldsProps) {
  const { read, draft, onDraft, faultAt, decimal, children } = props
  const { work } = read
  return (
    <>
      <div className="bench-fields">
        <QuantityInput
          label="Pieces made"
          hint={
            work.units === 1
              ? undefined
              : `${work.units} were begun. Fewer is fine: the rest waits for another day.`
          }
          text={draft.units.text}
          error={faultWords(faultAt('units'))}
          missing="Say how many pieces were made."
          parse={(text) => parseUnits(text, { decimal, count: formatCount })}
          onText={(text, value) => onDraft({ ...draft, units: { text, value } })}
        />
        <QuantityInput
          label="Bench time in all"
          optional
          hint="Set-up and finishing too. It teaches the studio your own pace."
          text={draft.time.text}
          parse={(text) => parseDuration(text, { decimal })}
          onText={(text, value) => onDraft({ ...draft, time: { text, value } })}
        />
        {children}
        <QuantityInput
          label="Thread left over"
          optional
          hint="All ends laid together, in metres or centimetres."
          text={draft.threadLeft.text}
          error={faultWords(faultAt('threadLeftMm'))}
          parse={(text) => parseThread(text, { decimal, unit: 'm' })}
          onText={(text, value) => onDraft({ ...draft, threadLeft: { text, value } })}
        />
      </div>
      <Culls {...props} />
      <Tubes {...props} />
    </>
  )
}

function Culls({ read, draft, onDraft, decimal }: FieldsProps) {
  const slots = read.beads.flatMap(({ name, slots: own }) =>
    own.map(({ label }) => ({ label, name })),
  )
  return (
    <fieldset className="bench-set">
      <legend>Beads put aside</legend>
      <p className="bench-soft">
        Misshapen or broken, by slot. Type 0 where there were none; leave empty what you did not
        count.
      </p>
      <div className="bench-fields bench-narrow">
        {slots.map(({ label, name }) => (
          <QuantityInput
            key={label}
            label={`${label}, ${name}`}
            missing={null}
            text={(draft.culls[label] ?? EMPTY).text}
            parse={(text) => parseCount(text, { decimal })}
            onText={(text, value) =>
              onDraft({ ...draft, culls: { ...draft.culls, [label]: { text, value } } })
            }
          />
        ))}
      </div>
    </fieldset>
  )
}

function Tubes({ read, draft, onDraft, faultAt, decimal }: FieldsProps) {
  const tubes = read.beads.filter(({ unit }) => unit === 'mg')
  const weighed = Object.entries(draft.after).filter(([id, { value }]) => {
    return value !== undefined && draft.before[id]?.value !== undefined
  })
  const field = (materialId: string) =>
    `weights.${weighed.findIndex(([id]) => id === materialId)}.afterMg`
  const weight = (side: 'before' | 'after', materialId: string, typed: Typed) =>
    onDraft({ ...draft, [side]: { ...draft[side], [materialId]: typed } })
  return (
    <fieldset className="bench-set">
      <legend>Tubes on the scale</legend>
      <p className="bench-soft">
        Tube and all, before and after. What is weighed is booked as it was weighed; the rest as
        planned.
      </p>
      <ul className="bench-scale">
        {tubes.map(({ materialId, name }) => (
          <li key={materialId}>
            <span className="bench-scale-name">{name}</span>
            {(['before', 'after'] as const).map((side) => (
              <QuantityInput
                key={side}
                label={side === 'before' ? 'Before' : 'After'}
                unit="g"
                missing={null}
                text={(draft[side][materialId] ?? EMPTY).text}
                error={side === 'after' ? faultWords(faultAt(field(materialId))) : undefined}
                parse={(text) => parseMass(text, { decimal })}
                onText={(text, value) => weight(side, materialId, { text, value })}
              />
            ))}
          </li>
        ))}
      </ul>
    </fieldset>
  )
}

function faultWords(fault: Refusal | undefined): string | undefined {
  return fault && refusalWords(fault)
}
