import { Badge } from '../../ui/badge.tsx'
import { counted, type StockPreview } from './import-words.ts'

/** Rows that cannot be taken, each with its line, what was found and what is accepted. */
export function BadRows({ badRows }: Readonly<{ badRows: StockPreview['badRows'] }>) {
  if (badRows.length === 0) return null
  return (
    <section className="import-part">
      <h2>
        <Badge tone="bad">{`${counted(badRows.length, 'row')} cannot be taken`}</Badge>
      </h2>
      <ul className="import-bad">
        {badRows.map(({ line, code, faults }) => (
          <li key={line}>
            <div className="import-bad-line">
              Line {line} <strong>{code}</strong>
            </div>
            <ul>
              {faults.map((fault) => (
                <li key={`${fault.field} ${fault.code}`}>
                  {fault.message} <span className="quiet">{fault.next}</span>
                </li>
              ))}
            </ul>
          </li>
        ))}
      </ul>
      <p className="quiet">
        They are left out when you go on. To bring them in as well, mend them in the file and choose
        it again.
      </p>
    </section>
  )
}
