import type { ParsedInput } from '../../../shared-core/contract/calls.ts'
import { currencyCode, minorDigits } from '../../../shared-core/units/currency.ts'
import { refuse } from '../refused.ts'
import type { Act } from '../store/act.ts'
import { findWorkshop, fromChannel, fromWorkshop } from '../store/workshop-rows.ts'

type BeginInput = ParsedInput<'workshop.begin'>

/** Writes the workshop's own row, with figures to start from; refused when there is one already. */
export async function beginWorkshop(act: Act, input: BeginInput): Promise<void> {
  if ((await findWorkshop(act.trx)) !== undefined) {
    refuse(
      'workshop-there',
      'There is a workshop in this file already.',
      'Go on with it, or begin another one in another file.',
    )
  }
  const unit = 10 ** minorDigits(currencyCode(input.currency))
  await act.insert('workshop', {
    id: 'workshop',
    currency: input.currency,
    ...fromWorkshop({
      name: input.name,
      decimalMark: input.decimalMark,
      hourlyRateMinor: 18 * unit,
      overhead: { kind: 'percent-of-labour', percent: '15' },
      costingMethod: 'fifo',
      marginPercent: '20',
      priceStepMinor: unit,
      scaleResolutionMg: 10,
      tagMaker: input.name,
      tagCare: 'Keep dry. Put on last, take off first.',
      tagCaution: 'Small parts: not for children under 3.',
    }),
  })
}

/** A place and a way to sell, so that a first piece can be made and sold at once. */
export async function addFirstPlace(act: Act): Promise<void> {
  const channelId = act.newId('ch')
  await act.insert('channel', {
    id: channelId,
    position: 1,
    ...fromChannel({
      name: 'Direct sale',
      kind: 'market',
      feePercent: '0',
      feeFixedMinor: 0,
      paymentPercent: '0',
      paymentFixedMinor: 0,
      feesOn: 'gross',
      taxPercent: '0',
      taxIncluded: true,
    }),
  })
  await act.insert('place', {
    id: act.newId('pla'),
    position: 1,
    name: 'The drawer',
    channel_id: channelId,
  })
}
