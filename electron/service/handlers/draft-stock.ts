import { readAvailability } from '../availability.ts'
import { openBills } from '../bills.ts'
import { latestMaking, readPriceInputs } from '../price-inputs.ts'
import { getColourwayOf } from '../store/design-rows.ts'
import { openValuer } from '../valuation.ts'
import type { QueryHandler } from './handler.ts'

/** What the window reckons the cost, the price and the stock of a drawing from, while it is drawn. */
export const readDraftStock: QueryHandler<'drafts.stock'> = async (reading, input) => {
  await getColourwayOf(reading, input)
  const making = await latestMaking(reading, input.colourwayId)
  const [inputs] = await readPriceInputs(reading, [making])
  if (inputs === undefined) throw new Error('expected the inputs of one price')
  const bills = await openBills(reading, [making])
  const assigned = Object.entries(bills.assigned(input.colourwayId))
  const ids = new Set(assigned.map(([, materialId]) => materialId))
  const valuer = await openValuer(reading, [...ids])
  const materials = assigned.flatMap(([key, materialId]) => {
    const row = bills.materials.get(materialId)
    if (row === undefined) return []
    const { name, unit, lots_matter } = row
    const cost = valuer.rate(materialId)
    return [{ key, materialId, name, unit, lotsMatter: lots_matter === 1, cost }]
  })
  const available = (await readAvailability(reading)).availableTo()
  const lots = available
    .filter(({ materialId }) => ids.has(materialId))
    .map(({ lotId, materialId, onHand }) => ({ lotId, materialId, onHand }))
  return { inputs, materials, lots }
}
