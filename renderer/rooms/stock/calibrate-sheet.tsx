import { useState } from 'react'
import { parseCount } from '../../../shared-core/units/parse-count.ts'
import { parseMass } from '../../../shared-core/units/parse-mass.ts'
import { withinBounds } from '../../../shared-core/units/within-bounds.ts'
import { placeRefusal } from '../../app/place-refusal.ts'
import { useAct } from '../../app/use-act.ts'
import { useFormat } from '../../app/use-format.ts'
import { FormSheet } from '../../ui/form-sheet.tsx'
import { QuantityInput } from '../../ui/quantity-input.tsx'
import type { MaterialDetail } from './material-page.tsx'

/** Keeps a weighing of counted beads, so that grams of this colour turn into beads by the workshop's own scale. */
export function CalibrateSheet({
  detail,
  onClose,
}: Readonly<{ detail: MaterialDetail; onClose: () => void }>) {
  const { decimal, count } = useFormat()
  const { material } = detail
  const [beads, setBeads] = useState<readonly [string, number | undefined]>(['', undefined])
  const [gross, setGross] = useState<readonly [string, number | undefined]>(['', undefined])
  const [tare, setTare] = useState<readonly [string, number | undefined]>(['0', 0])
  const add = useAct('weighings.add', {
    said: () => `Weighed counted ${material.name}`,
    of: [beads, gross, tare],
  })
  const { at, above } = placeRefusal(add.refusal, ['beads', 'grossMg', 'tareMg'])
  async function submit() {
    if (beads[1] === undefined || gross[1] === undefined || tare[1] === undefined) return
    const answer = await add.act({
      materialId: material.id,
      beads: beads[1],
      grossMg: gross[1],
      tareMg: tare[1],
    })
    if (answer.ok) onClose()
  }
  return (
    <FormSheet
      title={`Weigh counted ${material.name}`}
      above={above}
      label="Keep this weighing"
      isBusy={add.isBusy}
      onSave={() => void submit()}
      onClose={onClose}
    >
      <p className="quiet">
        Count the beads onto an empty dish. A hundred give about one in a hundred; every weighing
        you add narrows it.
      </p>
      <QuantityInput
        label="Beads counted"
        error={at('beads')}
        missing="Say how many beads you counted."
        autoFocus
        text={beads[0]}
        parse={(text) =>
          withinBounds(parseCount(text, { decimal }), text, {
            ...{ least: 1, most: 1_000_000, of: Number, write: count },
          })
        }
        onText={(text, value) => setBeads([text, value])}
      />
      <QuantityInput
        label="The scale shows"
        error={at('grossMg')}
        missing="Type what the scale shows."
        unit="g"
        text={gross[0]}
        parse={(text) => parseMass(text, { decimal })}
        onText={(text, value) => setGross([text, value])}
      />
      <QuantityInput
        label="Weight of the empty dish"
        error={at('tareMg')}
        missing="Type the weight of the dish, or 0."
        hint="0 where the scale was set to zero with the dish on it."
        unit="g"
        text={tare[0]}
        parse={(text) => parseMass(text, { decimal })}
        onText={(text, value) => setTare([text, value])}
      />
    </FormSheet>
  )
}
