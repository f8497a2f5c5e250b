import type { Refusal } from '../../../../shared-core/refusal.ts'
import { capital } from '../../../app/capital.ts'
import { Notice } from '../../../ui/notice.tsx'
import './chart-faults.css'

/** Why a chart cannot be read, line by line, with what is accepted. */
export function ChartFaults({
  fileName,
  faults,
}: Readonly<{ fileName: string; faults: readonly Refusal[] }>) {
  return (
    <>
      <Notice kind="attention" title={`${fileName} cannot be taken as it is.`}>
        Mend it in the file and choose it again, or read it as another stitch. Nothing was written.
      </Notice>
      <ul className="chart-faults">
        {faults.map((fault) => (
          <li key={`${fault.line} ${fault.code} ${fault.message}`}>
            <strong>{fault.line === undefined ? 'The file' : `Line ${fault.line}`}</strong>
            <span>
              {withoutPlace(fault, fileName)} {fault.next}
            </span>
          </li>
        ))}
      </ul>
    </>
  )
}

/** A fault's sentence without the file and line that stand beside it already. */
function withoutPlace({ message, line }: Refusal, fileName: string): string {
  const place = `${fileName}, line ${line}: `
  // A file keeps its own name, small letters and all.
  return message.startsWith(place) ? capital(message.slice(place.length)) : message
}
