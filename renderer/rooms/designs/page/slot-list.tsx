import type { Format } from '../../../app/format.ts'
import { BasisMark } from '../../../ui/basis-mark.tsx'
import { Swatch } from '../../../ui/swatch.tsx'
import type { PlainReading } from '../reading/plain-reading.ts'
import type { SlotBead } from './slot-beads.ts'
import './slot-list.css'

/** Beads by slot: the bead that fills it, how many, and how much of it to have at hand. */
export function SlotList({
  reading,
  beads,
  format,
  onChooseBeads,
}: Readonly<{
  reading: PlainReading | undefined
  beads: readonly SlotBead[]
  format: Format
  onChooseBeads: () => void
}>) {
  return (
    <table className="slot-list">
      <caption className="unseen">Beads by slot</caption>
      <thead>
        <tr>
          <th scope="col">Slot</th>
          <th scope="col">Beads</th>
          <th scope="col">Grams</th>
        </tr>
      </thead>
      <tbody>
        {beads.map(({ slot, material, hex, finish }) => {
          const found = reading?.counts.find(({ label }) => label === slot.label)
          return (
            <tr key={slot.label}>
              <th scope="row">
                <span className="slot-name">
                  <span className="slot-letter">{slot.label}</span>
                  <Swatch look={{ hex, finish }} />
                  {material === undefined ? (
                    <button type="button" className="slot-empty" onClick={onChooseBeads}>
                      {slot.name}
                      <span className="slot-empty-word">choose a bead</span>
                    </button>
                  ) : (
                    <span>{material.name}</span>
                  )}
                </span>
              </th>
              <td>{found === undefined ? '' : format.count(found.count)}</td>
              <td>
                {found !== undefined && (
                  <span className="slot-mass">
                    {format.mass(found.massMg.value)} <BasisMark basis={found.massMg.basis} />
                  </span>
                )}
              </td>
            </tr>
          )
        })}
      </tbody>
    </table>
  )
}
