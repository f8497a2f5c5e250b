import { useState } from 'react'
import { parseCount } from '../../../shared-core/units/parse-count.ts'
import { parseMass } from '../../../shared-core/units/parse-mass.ts'
import { withinBounds } from '../../../shared-core/units/within-bounds.ts'
import { useAct } from '../../app/use-act.ts'
import { useFormat } from '../../app/use-format.ts'
import { Button } from '../../ui/button.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { QuantityInput } from '../../ui/quantity-input.tsx'
import { SideSheet } from '../../ui/side-sheet.tsx'
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
  const add = useAct('weighings.add', { said: () => `Weighed counted ${material.name}` })
  const isReady = beads[1] !== undefined && gross[1] !== undefined && tare[1] !== undefined
  async function submit() {
    const answer = await add.act({
      materialId: material.id,
      beads: beads[1] ?? 0,
      grossMg: gross[1] ?? 0,
      tareMg: tare[1] ?? 0,
    })
    if (answer.ok) onClose()
  }
  return (
    <SideSheet
      open
      title={`Weigh counted ${material.name}`}
      onClose={onClose}
      actions={
        <Button kind="primary" busy={add.isBusy} disabled={!isReady} onClick={() => void submit()}>
          Keep this weighing
        </Button>
      }
    >
      {add.refusal !== undefined && <RefusalNotice refusal={add.refusal} />}
      <p className="quiet">
        Count the beads onto an empty dish. A hundred give about one in a hundred; every weighing
        you add narrows it.
      </p>
      <QuantityInput
        label="Beads counted"
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
        unit="g"
        text={gross[0]}
        parse={(text) => parseMass(text, { decimal })}
        onText={(text, value) => setGross([text, value])}
      />
      <QuantityInput
        label="Weight of the empty dish"
        hint="0 where the scale was set to zero with the dish on it."
        unit="g"
        text={tare[0]}
        parse={(text) => parseMass(text, { decimal })}
        onText={(text, value) => setTare([text, value])}
      />
    </SideSheet>
  )
}
