import type { Format } from '../../../app/format.ts'
import type { Reckoned } from './finish-draft.ts'

type Compared = Reckoned['figures']['seconds']
type Shown = Readonly<{ label: string; compared: Compared; write: (value: number) => string }>

/** What was planned beside what it came to, each pair drawn to one measure. */
export function PlannedActual({
  reckoned: { figures, materials },
  format,
}: Readonly<{ reckoned: Reckoned; format: Format }>) {
  const shown: readonly Shown[] = [
    { label: 'Time', compared: figures.seconds, write: format.duration },
    { label: 'Beads', compared: figures.beads, write: format.count },
    { label: 'Thread in the pieces', compared: figures.threadMm, write: format.thread },
    ...materials.map(({ name, unit, planned, actual }) => ({
      label: name,
      compared: { planned, actual },
      write: (value: number) => format.quantity(value, unit),
    })),
  ]
  return (
    <section aria-labelledby="bench-compared">
      <h2 id="bench-compared" className="bench-head">
        Planned and actual
      </h2>
      <dl className="bench-compared">
        {shown.map((one) => (
          <Bars key={one.label} {...one} />
        ))}
      </dl>
    </section>
  )
}

function Bars({ label, compared: { planned, actual }, write }: Shown) {
  const most = Math.max(planned, actual ?? 0, 1)
  return (
    <div className="bench-bars">
      <dt>{label}</dt>
      <dd>
        <span className="bench-bar-words">{`planned ${write(planned)}`}</span>
        <span className="bench-bar" aria-hidden="true">
          <span style={{ inlineSize: `${(100 * planned) / most}%` }} />
        </span>
        <span className="bench-bar-words">
          {actual === null ? 'not measured yet' : `${write(actual)}${offWords(planned, actual)}`}
        </span>
        {actual !== null && (
          <span className="bench-bar bench-bar-actual" aria-hidden="true">
            <span style={{ inlineSize: `${(100 * actual) / most}%` }} />
          </span>
        )}
      </dd>
    </div>
  )
}

/** How far off the plan, in whole percent; nothing where it is as planned. */
function offWords(planned: number, actual: number): string {
  if (planned <= 0) return ''
  const percent = Math.round((100 * (actual - planned)) / planned)
  if (percent === 0) return ', as planned'
  return percent > 0 ? `, ${percent} % more` : `, ${-percent} % less`
}
