import { formatNumber } from '../../../../shared-core/units/format-number.ts'
import type { Format } from '../../../app/format.ts'
import { Swatch } from '../../../ui/swatch.tsx'
import { differenceWords, type NearBead } from './near-beads.ts'

/** Beads that could stand in, nearest first, each with what speaks for it: colour, stock, cost. */
export function NearList({
  label,
  beads,
  unitName,
  format,
  onChoose,
}: Readonly<{
  label: string
  beads: readonly NearBead[]
  unitName: string
  format: Format
  onChoose: (materialId: string) => void
}>) {
  if (beads.length === 0) {
    return <p className="designs-quiet">No other bead of this form is in stock.</p>
  }
  return (
    <ul className="near-list" aria-label={`Nearest to ${label}`}>
      {beads.map((bead) => (
        <li key={bead.material.id}>
          <button type="button" className="near-bead" onClick={() => onChoose(bead.material.id)}>
            <Swatch
              look={{
                hex: bead.material.colourHex ?? '',
                finish: bead.material.finish ?? 'opaque',
              }}
            />
            <span className="near-name">{bead.material.name}</span>
            <span className="near-far">
              {differenceWords(bead, (text) => formatNumber(text, format.decimal))}
              {bead.isSameFinish ? '' : `; ${bead.material.finish ?? 'another finish'}`}
            </span>
            <span className="near-stock">{stockWords(bead, unitName, format)}</span>
          </button>
        </li>
      ))}
    </ul>
  )
}

function stockWords({ material, costMinor }: NearBead, unitName: string, format: Format): string {
  const { onHand, unit, lots } = material
  const cost = costMinor === undefined ? '' : `, ${format.money(costMinor)} a ${unitName}`
  return `${format.quantity(onHand, unit)} in ${format.counted(lots, 'lot')}${cost}`
}
