import { useState } from 'react'
import { placeRefusal } from '../../app/place-refusal.ts'
import { useAct } from '../../app/use-act.ts'
import { Button } from '../../ui/button.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { TextArea } from '../../ui/text-input.tsx'
import type { Workshop } from './settings-types.ts'

/** What stands on every tag. */
export function TagSettings({ workshop }: Readonly<{ workshop: Workshop }>) {
  const [fields, setFields] = useState(workshop)
  const save = useAct('workshop.save', { said: () => 'Saved what stands on tags', of: fields })
  const { at, above } = placeRefusal(save.refusal, [
    'workshop.tagMaker',
    'workshop.tagCare',
    'workshop.tagCaution',
  ])
  function submit() {
    const { currency: _, ...rest } = fields
    void save.act({ workshop: rest })
  }
  return (
    <div className="settings-form">
      {above !== undefined && <RefusalNotice refusal={above} />}
      <TextArea
        label="Who made it, and how to reach you"
        error={at('workshop.tagMaker')}
        longest={200}
        rows={2}
        value={fields.tagMaker}
        onChange={(tagMaker) => setFields({ ...fields, tagMaker })}
      />
      <TextArea
        label="How to care for it"
        error={at('workshop.tagCare')}
        longest={200}
        rows={2}
        value={fields.tagCare}
        onChange={(tagCare) => setFields({ ...fields, tagCare })}
      />
      <TextArea
        label="Caution"
        error={at('workshop.tagCaution')}
        longest={200}
        hint="Small parts are not for young children. For metals, write what your supplier declares, as a supplier’s claim: local rules decide."
        rows={2}
        value={fields.tagCaution}
        onChange={(tagCaution) => setFields({ ...fields, tagCaution })}
      />
      <div>
        <Button kind="primary" busy={save.isBusy} onClick={submit}>
          Save
        </Button>
      </div>
    </div>
  )
}
