import type { Refusal } from '../../../../shared-core/refusal.ts'
import { capital } from '../../../app/capital.ts'
import { Button } from '../../../ui/button.tsx'
import '../bring-in/chart-faults.css'

/** What cannot be read in a word chart, line by line, with the words expected there. */
export function WordFaults({
  faults,
  onGoTo,
}: Readonly<{ faults: readonly Refusal[]; onGoTo: (line: number) => void }>) {
  return (
    <div role="status">
      {faults.length > 0 && (
        <ul className="chart-faults">
          {faults.map(({ line, code, message, next }) => (
            <li key={`${line} ${code} ${message}`}>
              {line === undefined ? (
                <strong>The text</strong>
              ) : (
                <Button small onClick={() => onGoTo(line)}>{`Line ${line}`}</Button>
              )}
              <span>
                {capital(message.replace(/^Line \d+: /, ''))} {next}
              </span>
            </li>
          ))}
        </ul>
      )}
    </div>
  )
}
