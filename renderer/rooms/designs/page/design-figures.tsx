import type { DesignBody } from '../../../../shared-core/design/design.ts'
import type { Format } from '../../../app/format.ts'
import { hrefTo } from '../../../app/place.ts'
import { useToday } from '../../../app/today.ts'
import { useCall } from '../../../app/use-call.ts'
import { Button, IconButton } from '../../../ui/button.tsx'
import { FigureList } from '../../../ui/figure-list.tsx'
import { Select } from '../../../ui/select.tsx'
import { START } from '../../bench/bench-places.ts'
import { sizeFigure } from '../figures/first-figures.ts'
import type { PlainReading } from '../reading/plain-reading.ts'
import { costFigures } from './cost-figures.ts'
import { makeableFigure } from './makeable-figure.ts'
import type { Colourway, DesignDetail, Fillings } from './open-design.ts'
import type { SlotBead } from './slot-beads.ts'
import { SlotList } from './slot-list.tsx'
import { workFigures } from './work-figures.ts'

type DesignFiguresProps = Readonly<{
  design: DesignDetail
  body: DesignBody
  reading: PlainReading | undefined
  beads: readonly SlotBead[]
  fillings: Fillings
  colourway: Colourway | undefined
  format: Format
  onColourway: (id: string) => void
  onAddColourway: () => void
  onChooseBeads: () => void
}>

/** What follows from the drawing: size, weight, thread, hours, beads by slot, cost, and what stock allows. */
export function DesignFigures({
  design,
  body,
  reading,
  beads,
  fillings,
  colourway,
  format,
  onColourway,
  onAddColourway,
  onChooseBeads,
}: DesignFiguresProps) {
  return (
    <>
      <FigureList
        big={1}
        figures={[sizeFigure(reading, format), ...workFigures(reading, body, format)]}
      />
      <section className="design-colourway" aria-label="Colourway">
        <div className="design-colourway-head">
          <Select
            label="Colourway"
            value={colourway?.id ?? null}
            options={design.colourways.map(({ id, name }) => ({ value: id, label: name }))}
            onChange={onColourway}
          />
          <IconButton icon="edit" label="Rename it or choose its beads" onClick={onChooseBeads} />
          <IconButton icon="add" label="Add a colourway" onClick={onAddColourway} />
        </div>
        <SlotList reading={reading} beads={beads} format={format} onChooseBeads={onChooseBeads} />
      </section>
      {colourway !== undefined && (
        <UnitMoney design={design} body={body} colourway={colourway} format={format} />
      )}
      {Object.keys(fillings).length === 0 && (
        <div className="design-unfilled">
          <p>No beads are chosen yet, so stock and cost are not known.</p>
          <Button small icon="bead" onClick={onChooseBeads}>
            Choose beads
          </Button>
        </div>
      )}
    </>
  )
}

/** What one unit costs and asks, and how many stock allows; each leads to the room that knows more. */
function UnitMoney({
  design,
  body,
  colourway,
  format,
}: Readonly<{ design: DesignDetail; body: DesignBody; colourway: Colourway; format: Format }>) {
  const today = useToday()
  const prices = useCall('prices.sheet', { designId: design.id, colourwayId: colourway.id })
  const isFilled = Object.keys(colourway.materials).length > 0
  const cover = useCall(
    'orders.cover',
    isFilled ? { today, order: { draft: trialOrder(design.id, colourway.id, today) } } : null,
  )
  return (
    <section className="design-money" aria-label="Cost, price and stock">
      <FigureList
        big={0}
        figures={[
          ...costFigures(prices.value, body.unitName, format),
          ...(isFilled ? [makeableFigure(cover.value, body.unitName, format)] : []),
        ]}
      />
      <p className="design-links">
        <a href={hrefTo({ room: 'bench', id: START, sub: design.id })}>Start a piece</a>
        <a href={hrefTo({ room: 'prices', id: design.id, sub: colourway.id })}>Prices</a>
        <a href={hrefTo({ room: 'orders', id: 'new' })}>Enter an order</a>
      </p>
    </section>
  )
}

/** More than any drawer holds beads for. */
const MANY_UNITS = 200

/** An order that is never entered: what of it stock would cover beside the others is what can be made now. */
function trialOrder(designId: string, colourwayId: string, today: string) {
  return {
    customer: 'trial',
    dueOn: today,
    promisedOn: today,
    note: '',
    lines: [{ designId, colourwayId, units: MANY_UNITS, priceMinor: null }],
  }
}
