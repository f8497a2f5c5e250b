import type { Format } from '../../../app/format.ts'

/** The last screen: everything is made, and one more press goes on to the log. */
export function AllDone({
  units,
  unitName,
  workedS,
  format,
}: Readonly<{ units: number; unitName: string; workedS: number; format: Format }>) {
  return (
    <div className="reader-done">
      <h2>{format.counted(units, unitName)} made</h2>
      <p>
        {format.duration(workedS)} at the bench. Finish goes on to what is logged; Back returns to
        the last row.
      </p>
    </div>
  )
}
