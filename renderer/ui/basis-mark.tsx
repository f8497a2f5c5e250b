import type { Basis } from '../../shared-core/units/spread.ts'
import './basis-mark.css'

/** What a figure rests on, in words. */
export const basisWords: Readonly<Record<Basis, string>> = {
  exact: 'counted exactly',
  measured: 'measured here',
  estimated: 'estimated',
}

/** A full bead for counted, half a bead for measured, a hollow one for estimated. */
export function BasisMark({ basis }: Readonly<{ basis: Basis }>) {
  return (
    <svg
      className={`basis-mark basis-${basis}`}
      viewBox="0 0 12 12"
      width="12"
      height="12"
      role="img"
      aria-label={basisWords[basis]}
    >
      {basis === 'measured' && <path className="basis-half" d="M6 2.500a3.500 3.500 0 0 0 0 7Z" />}
      <path d="M6 2.5a3.5 3.5 0 1 0 0 7 3.5 3.5 0 0 0 0-7Z" />
    </svg>
  )
}
