import type { FigureValue } from './figure.tsx'
import { Figure } from './figure.tsx'
import './figure-list.css'

/** Figures that belong together, largest first: one or two big, the others in rows like a tide table. */
export function FigureList({
  label,
  big = 1,
  row = false,
  figures,
}: Readonly<{
  /** Names the group; spoken, and shown as a heading when given. */
  label?: string
  /** How many of the first are shown big. */
  big?: number
  /** Side by side, all big: the head of a room. */
  row?: boolean
  figures: readonly FigureValue[]
}>) {
  return (
    <section className={`figure-list${row ? ' figure-row' : ''}`} aria-label={label}>
      {label !== undefined && <h3 className="figure-list-head">{label}</h3>}
      <dl>
        {figures.map((figure, index) => (
          <Figure key={figure.label} {...figure} size={row || index < big ? 'l' : 's'} />
        ))}
      </dl>
    </section>
  )
}
