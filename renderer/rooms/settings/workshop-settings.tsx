import { useState } from 'react'
import { parseMass } from '../../../shared-core/units/parse-mass.ts'
import { withinBounds } from '../../../shared-core/units/within-bounds.ts'
import { placeRefusal } from '../../app/place-refusal.ts'
import { useAct } from '../../app/use-act.ts'
import { useFormat } from '../../app/use-format.ts'
import { Button } from '../../ui/button.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { SegmentedChoice } from '../../ui/segmented-choice.tsx'
import { TextInput } from '../../ui/text-input.tsx'
import { FigureField } from './figure-field.tsx'
import { PricingFields, workshopFieldNames } from './pricing-fields.tsx'
import type { Workshop } from './settings-types.ts'

/** The workshop's own figures: how prices are reckoned and stock is valued. */
export function WorkshopSettings({ workshop }: Readonly<{ workshop: Workshop }>) {
  const format = useFormat()
  const [fields, setFields] = useState(workshop)
  const save = useAct('workshop.save', { said: () => 'Saved the workshop', of: fields })
  const { at, above } = placeRefusal(save.refusal, workshopFieldNames)
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
      <PricingFields {...{ workshop, format, at }} overhead={fields.overhead} onTake={take} />
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
          withinBounds(parseMass(text, { decimal: format.decimal }), text, {
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
