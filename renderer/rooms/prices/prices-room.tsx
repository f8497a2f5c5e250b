import { useState } from 'react'
import { priceSheet } from '../../../shared-core/pricing/price-sheet.ts'
import { go, usePlace } from '../../app/place.ts'
import { Room } from '../../app/room.tsx'
import { useCall } from '../../app/use-call.ts'
import { useFormat } from '../../app/use-format.ts'
import { ButtonLink } from '../../ui/button.tsx'
import { EmptyState } from '../../ui/empty-state.tsx'
import { RefusalNotice } from '../../ui/notice.tsx'
import { Picker } from '../../ui/picker.tsx'
import { Select } from '../../ui/select.tsx'
import { ChannelPrices } from './channel-prices.tsx'
import { CostTable } from './cost-table.tsx'
import { PriceFigures } from './price-figures.tsx'
import { type Trial, tried } from './trial.ts'
import { TrialPanel } from './trial-panel.tsx'
import './prices.css'

/** Prices: what one unit of a design costs, and what to ask for it in each channel. */
export function PricesRoom() {
  const { id } = usePlace()
  const designs = useCall('designs.list', {}).value?.designs
  const designId = id ?? designs?.[0]?.id
  return (
    <Room
      title="Prices"
      actions={
        designs !== undefined &&
        designs.length > 0 && (
          <Picker
            label="Design"
            labelHidden
            value={designId ?? null}
            options={designs.map(({ id: value, name }) => ({ value, label: name }))}
            onChange={(chosen) => chosen !== null && go({ room: 'prices', id: chosen })}
          />
        )
      }
    >
      {designs?.length === 0 && (
        <EmptyState
          picture="ledger"
          action={
            <ButtonLink kind="primary" href="#/designs">
              Go to Designs
            </ButtonLink>
          }
        >
          A price starts from a design: its beads, its thread and its minutes are counted for you.
        </EmptyState>
      )}
      {designId !== undefined && <DesignPrices key={designId} designId={designId} />}
    </Room>
  )
}

function DesignPrices({ designId }: Readonly<{ designId: string }>) {
  const design = useCall('designs.read', { id: designId })
  const [chosen, setChosen] = useState<string>()
  const colourways = design.value?.colourways ?? []
  const colourwayId = chosen ?? colourways[0]?.id
  if (design.refusal !== undefined) return <RefusalNotice refusal={design.refusal} />
  return (
    <>
      {colourways.length > 1 && (
        <div className="prices-colourway">
          <Select
            label="Colourway"
            value={colourwayId ?? null}
            options={colourways.map(({ id, name }) => ({ value: id, label: name }))}
            onChange={setChosen}
          />
        </div>
      )}
      {colourwayId !== undefined && (
        <Sheet key={colourwayId} designId={designId} colourwayId={colourwayId} />
      )}
    </>
  )
}

function Sheet({ designId, colourwayId }: Readonly<{ designId: string; colourwayId: string }>) {
  const format = useFormat()
  const { value, refusal } = useCall('prices.sheet', { designId, colourwayId })
  const [trial, setTrial] = useState<Trial>({})
  if (refusal !== undefined) return <RefusalNotice refusal={refusal} />
  if (value === undefined) return <p role="status">Reckoning…</p>
  // The same core the service uses, so that a figure follows the typing and still is the one that is kept.
  const inputs = tried(value.inputs, trial)
  const sheet = priceSheet(inputs)
  return (
    <div className="prices">
      <PriceFigures sheet={sheet} inputs={inputs} format={format} />
      <TrialPanel inputs={value.inputs} trial={trial} onTrial={setTrial} format={format} />
      <ChannelPrices
        sheet={sheet}
        inputs={value.inputs}
        designId={designId}
        colourwayId={colourwayId}
        format={format}
      />
      <CostTable sheet={sheet} inputs={inputs} format={format} />
      <p className="quiet">
        Tax and fees are working figures. Local law and a licensed adviser decide what you owe.
      </p>
    </div>
  )
}
