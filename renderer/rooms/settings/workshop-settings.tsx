import { useState } from 'react'
import { parseMass } from '../../../shared-core/units/parse-mass.ts'
import { parseMoney } from '../../../shared-core/units/parse-money.ts'
import { percentOf } from '../../../shared-core/units/ratio.ts'
import { withinBounds } from '../../../shared-core/units/within-bounds.ts'
import { placeRefusal } from '../../app/place-refusal.ts'
import { useAct } from '../../app/use-act.ts'
import { useFormat } from '../../app/use-format.ts'
import { Button } from '../../ui/button.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import { TextInput } from '../../ui/text-input.tsx'
import { MOST_MARGIN, parsePercentUpTo } from '../parse-percent-up-to.ts'
import { FigureField } from './figure-field.tsx'
import { OverheadFields } from './overhead-fields.tsx'
import type { Workshop } from './settings-types.ts'

/** The workshop's own figures: how prices are reckoned and stock is valued. */
export function WorkshopSettings({ workshop }: Readonly<{ workshop: Workshop }>) {
  const format = useFormat()
  const { decimal, currency } = format
  const [fields, setFields] = useState(workshop)
  const save = useAct('workshop.save', { said: () => 'Saved the workshop', of: fields })
  const { at, above } = placeRefusal(save.refusal, [
    'workshop.name',
    'workshop.hourlyRateMinor',
    'workshop.marginPercent',
    'workshop.overhead',
    'workshop.priceStepMinor',
    'workshop.scaleResolutionMg',
  ])
  /** Takes a figure that was read; one that was not is led to before anything is saved. */
  function take(value: Partial<Workshop> | undefined) {
    if (value !== undefined) setFields({ ...fields, ...value })
  }
  function submit() {
    const { currency: _, ...rest } = fields
    // Tags say the workshop's name until another text is written for them.
    const tagMaker = rest.tagMaker === workshop.name ? rest.name : rest.tagMaker
    void save.act({ workshop: { ...rest, tagMaker } })
  }
  return (
    <div className="settings-form settings-wide">
      {above !== undefined && (
        <div className="settings-whole">
          <RefusalNotice refusal={above} />
        </div>
      )}
      <TextInput
        label="Workshop’s name"
        error={at('workshop.name')}
        missing="Tags and invoices need a name. Any name will do."
        longest={120}
        value={fields.name}
        onChange={(name) => setFields({ ...fields, name })}
      />
      <SegmentedChoice
        label="Numbers are written"
        value={fields.decimalMark}
        options={[
          { value: '.', label: '12.5 g' },
          { value: ',', label: '12,5 g' },
        ]}
        onChange={(decimalMark) => setFields({ ...fields, decimalMark })}
      />
      <FigureField
        label="What an hour of yours costs"
        error={at('workshop.hourlyRateMinor')}
        written={format.money(workshop.hourlyRateMinor)}
        parse={(text) => parseMoney(text, { currency, decimal })}
        onRead={(value) => take(value && { hourlyRateMinor: value.amountMinor })}
      />
      <FigureField
        label="Margin wanted, of the price without tax"
        error={at('workshop.marginPercent')}
        written={format.percent(workshop.marginPercent)}
        parse={(text) => parsePercentUpTo(MOST_MARGIN, text, format)}
        onRead={(value) =>
          take(value === undefined ? undefined : { marginPercent: percentOf(value) })
        }
      />
      <OverheadFields
        overhead={fields.overhead}
        format={format}
        error={at('workshop.overhead')}
        onOverhead={(overhead) => take(overhead && { overhead })}
      />
      <FigureField
        label="Round prices up to a whole multiple of"
        error={at('workshop.priceStepMinor')}
        written={format.money(workshop.priceStepMinor)}
        parse={(text) =>
          withinBounds(parseMoney(text, { currency, decimal }), text, {
            ...{ least: 1, most: 100_000, write: format.money },
            of: ({ amountMinor }) => amountMinor,
          })
        }
        onRead={(value) => take(value && { priceStepMinor: value.amountMinor })}
      />
      <SegmentedChoice
        label="What leaves stock is valued by"
        value={fields.costingMethod}
        options={[
          { value: 'fifo', label: 'oldest lot first' },
          { value: 'average', label: 'average' },
        ]}
        onChange={(costingMethod) => setFields({ ...fields, costingMethod })}
      />
      <FigureField
        label="Smallest step of your scale"
        error={at('workshop.scaleResolutionMg')}
        hint={`Such as ${format.exactly(10, 'mg')}. It decides how exactly beads can be told by weight.`}
        written={format.exactly(workshop.scaleResolutionMg, 'mg')}
        parse={(text) =>
          withinBounds(parseMass(text, { decimal }), text, {
            ...{ least: 1, most: 10_000, of: Number },
            write: (mg) => format.exactly(mg, 'mg'),
          })
        }
        onRead={(value) => take(value === undefined ? undefined : { scaleResolutionMg: value })}
      />
      <div className="settings-whole">
        <Button kind="primary" busy={save.isBusy} onClick={submit}>
          Save
        </Button>
      </div>
      <p className="quiet settings-whole">
        Money is kept in {workshop.currency}. These are working figures; a licensed adviser and
        local law decide on tax and books.
      </p>
    </div>
  )
}
