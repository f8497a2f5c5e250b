import { useId } from 'react'
import { bindUnits } from '../../shared-core/units/bind-units.ts'
import type { Basis } from '../../shared-core/units/spread.ts'
import { BasisMark, basisWords } from './basis-mark.tsx'
import './figure.css'

/** One figure to show: text with its unit as the formatters write it, what it rests on, its range. */
export type FigureValue = Readonly<{
  label: string
  /** `18.4 g`; the unit after the digits is set smaller. `undefined` while it is being computed. */
  value: string | undefined
  basis?: Basis | undefined
  /** `17.9 g to 18.9 g`, shown on hover and focus; empty or absent for none. */
  range?: string | undefined
  /** A few words under the figure: `3 pairs left`. */
  note?: string | undefined
}>

/** A big number, largest first in a column of figures. The mark says what it rests on. */
export function Figure({
  label,
  value,
  basis,
  range = '',
  note,
  size = 'm',
}: FigureValue & Readonly<{ size?: 'l' | 'm' | 's' }>) {
  const id = useId()
  const told = [basis === undefined ? '' : basisWords[basis], range].filter((part) => part !== '')
  return (
    <div className={`figure figure-${size}`}>
      <dt className="figure-label">{label}</dt>
      <dd className="figure-value">
        {told.length === 0 || value === undefined ? (
          <Digits text={value} />
        ) : (
          <button type="button" className="figure-number" aria-describedby={id}>
            <Digits text={value} />
            {basis !== undefined && <BasisMark basis={basis} />}
          </button>
        )}
        <span id={id} className="figure-spread" role="tooltip">
          {told.join(', ')}
        </span>
        {note !== undefined && <span className="figure-note">{bindUnits(note)}</span>}
      </dd>
    </div>
  )
}

function Digits({ text }: Readonly<{ text: string | undefined }>) {
  if (text === undefined) return <span className="figure-waiting">…</span>
  // A text that begins with a letter is a date or a name, not a quantity with its unit.
  const [, digits = text, unit = ''] = /^(\P{L}.*\d|\d)[\s\u00a0](\D+)$/u.exec(text) ?? []
  return (
    <span className="figure-digits">
      {digits}
      {unit !== '' && <span className="figure-unit">{`\u00a0${unit}`}</span>}
    </span>
  )
}
