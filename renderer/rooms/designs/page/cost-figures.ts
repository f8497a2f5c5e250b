import type { CallOutput } from '../../../../shared-core/contract/calls.ts'
import type { Format } from '../../../app/format.ts'
import type { FigureValue } from '../../../ui/figure.tsx'

/** What a unit costs, and its price in the first channel. */
export function costFigures(
  answer: CallOutput<'prices.sheet'> | undefined,
  unitName: string,
  format: Format,
): readonly FigureValue[] {
  const sheet = answer?.sheet
  const unknown = sheet?.cost.filter(({ known }) => !known).length ?? 0
  const channel = sheet?.channels[0]
  return [
    {
      label: `Cost of a ${unitName}`,
      value: sheet && format.money(sheet.costMinor),
      basis: sheet?.basis,
      note: unknown === 0 ? undefined : `${format.counted(unknown, 'cost')} not known and left out`,
    },
    ...(channel === undefined
      ? []
      : [{ label: `Price, ${channel.channelName}`, value: format.money(channel.priceMinor) }]),
  ]
}
