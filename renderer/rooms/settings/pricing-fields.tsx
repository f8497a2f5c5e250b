import { parseMoney } from '../../../shared-core/units/parse-money.ts'
import { percentOf } from '../../../shared-core/units/ratio.ts'
import { withinBounds } from '../../../shared-core/units/within-bounds.ts'
import type { Format } from '../../app/format.ts'
import type { PlacedRefusal } from '../../app/place-refusal.ts'
import { MOST_MARGIN, parsePercentUpTo } from '../parse-percent-up-to.ts'
import { FigureField } from './figure-field.tsx'
import { OverheadFields } from './overhead-fields.tsx'
import type { Workshop } from './settings-types.ts'

/** The workshop's fields that can say what is wrong with them, as the contract names them. */
export const workshopFieldNames = [
  'workshop.name',
  'workshop.hourlyRateMinor',
  'workshop.marginPercent',
  'workshop.overhead',
  'workshop.priceStepMinor',
  'workshop.scaleResolutionMg',
] as const

type PricingFieldsProps = Readonly<{
  /** As it was saved. */
  workshop: Workshop
  /** As it is typed. */
  overhead: Workshop['overhead']
  format: Format
  at: PlacedRefusal<(typeof workshopFieldNames)[number]>['at']
  /** Given a figure that was read; `undefined` while it cannot be. */
  onTake: (value: Partial<Workshop> | undefined) => void
}>

/** What prices are reckoned from: the hour, the margin, the overhead, and how they are rounded. */
export function PricingFields({ workshop, overhead, format, at, onTake }: PricingFieldsProps) {
  const { decimal, currency } = format
  return (
    <>
      <FigureField
        label="What an hour of yours costs"
        error={at('workshop.hourlyRateMinor')}
        written={format.money(workshop.hourlyRateMinor)}
        parse={(text) => parseMoney(text, { currency, decimal })}
        onRead={(value) => onTake(value && { hourlyRateMinor: value.amountMinor })}
      />
      <FigureField
        label="Margin wanted, of the price without tax"
        error={at('workshop.marginPercent')}
        written={format.percent(workshop.marginPercent)}
        parse={(text) => parsePercentUpTo(MOST_MARGIN, text, format)}
        onRead={(value) =>
          onTake(value === undefined ? undefined : { marginPercent: percentOf(value) })
        }
      />
      <OverheadFields
        overhead={overhead}
        format={format}
        error={at('workshop.overhead')}
        onOverhead={(next) => onTake(next && { overhead: next })}
      />
      <FigureField
        label="Round prices up to a whole multiple of"
        error={at('workshop.priceStepMinor')}
        written={format.money(workshop.priceStepMinor)}
        parse={(text) =>
          // In minor units.
          withinBounds(parseMoney(text, { currency, decimal }), text, {
            ...{ least: 1, most: 100_000, write: format.money },
            of: ({ amountMinor }) => amountMinor,
          })
        }
        onRead={(value) => onTake(value && { priceStepMinor: value.amountMinor })}
      />
    </>
  )
}
