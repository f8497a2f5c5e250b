import type { PriceInputs, PriceSheet } from '../../../shared-core/pricing/price-sheet.ts'
import type { Format } from '../../app/format.ts'
import { FigureList } from '../../ui/figure-list.tsx'

/** The head of the room: what a unit costs, its time, and what an hour at the bench earns at the best. */
export function PriceFigures({
  sheet,
  inputs,
  format,
}: Readonly<{ sheet: PriceSheet; inputs: PriceInputs; format: Format }>) {
  const best = sheet.channels.reduce<PriceSheet['channels'][number] | undefined>(
    (most, channel) =>
      (channel.earningsPerHourMinor ?? -1) > (most?.earningsPerHourMinor ?? -1) ? channel : most,
    undefined,
  )
  const hour = best?.earningsPerHourMinor ?? null
  return (
    <FigureList
      row
      figures={[
        {
          label: `One ${inputs.unitName} costs`,
          value: format.money(sheet.costMinor),
          basis: sheet.basis,
        },
        {
          label: 'Bench time',
          value: format.duration(inputs.labourS.value),
          basis: inputs.labourS.basis,
          range: format.range(inputs.labourS, format.duration),
        },
        {
          label: 'An hour earns up to',
          value: hour === null ? 'no channel yet' : format.money(hour),
          note: best === undefined ? undefined : best.channelName,
        },
      ]}
    />
  )
}
