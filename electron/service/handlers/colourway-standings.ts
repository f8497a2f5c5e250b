import { priceSheet } from '../../../shared-core/pricing/price-sheet.ts'
import { makeable } from '../../../shared-core/stock/makeable.ts'
import { readAvailability } from '../availability.ts'
import { type BillBook, type Making, openBills } from '../bills.ts'
import { readPriceInputs } from '../price-inputs.ts'
import { getLatestVersion, listColourways } from '../store/design-rows.ts'
import { getRow } from '../store/find-row.ts'
import type { QueryHandler } from './handler.ts'

type Standing = Awaited<ReturnType<QueryHandler<'colourways.list'>>>['colourways'][number]
type Lots = Parameters<typeof makeable>[1]
type Inputs = Awaited<ReturnType<typeof readPriceInputs>>[number]

export const listStandings: QueryHandler<'colourways.list'> = async (reading, { designId }) => {
  const design = await getRow(reading.trx, 'design', designId, 'designId')
  const version = await getLatestVersion(reading, design.id)
  const colourways = await listColourways(reading, design.id)
  const makings = colourways.map(({ id }) => ({ versionId: version.id, colourwayId: id }))
  const bills = await openBills(reading, makings)
  const inputs = await readPriceInputs(reading, makings)
  const lots = (await readAvailability(reading)).availableTo()
  return {
    colourways: colourways.map(({ id, name }, at) => ({
      id,
      name,
      materials: { ...bills.assigned(id) },
      ...costs(inputs[at]),
      ...stand({ versionId: version.id, colourwayId: id }, bills, lots),
      lines: linesOf({ versionId: version.id, colourwayId: id }, bills, inputs[at]),
    })),
  }
}

/** The cost of each key's material, as the price sheet has it; null where no cost is known. */
function costByKey(inputs: Inputs | undefined): ReadonlyMap<string, number | null> {
  const cost = inputs === undefined ? [] : priceSheet(inputs).cost
  return new Map(cost.map(({ key, known, amountMinor }) => [key, known ? amountMinor : null]))
}

function costs(inputs: Inputs | undefined): Pick<Standing, 'costMinor' | 'costsUnknown'> {
  const byKey = costByKey(inputs)
  const own = (inputs?.materials ?? []).map(({ key }) => byKey.get(key) ?? null)
  return {
    costMinor: own.reduce<number>((sum, cost) => sum + (cost ?? 0), 0),
    costsUnknown: own.filter((cost) => cost === null).length,
  }
}

function stand(
  making: Making,
  bills: BillBook,
  lots: Lots,
): Pick<Standing, 'makeable' | 'unassigned' | 'limits'> {
  const { lines } = bills.billOf(making)
  const { units, unassigned, limits } = makeable(lines, lots)
  const isFilled = unassigned.length === 0
  return {
    makeable: isFilled ? units : null,
    unassigned: [...unassigned],
    limits: limits.flatMap(({ materialId, perUnit, available }) => {
      const material = bills.materials.get(materialId)
      if (material === undefined) return []
      return [{ materialId, name: material.name, unit: material.unit, perUnit, available }]
    }),
  }
}

function linesOf(making: Making, bills: BillBook, inputs: Inputs | undefined): Standing['lines'] {
  const byKey = costByKey(inputs)
  return bills.billOf(making).lines.map(({ key, name, kind, unit, quantity, basis, material }) => ({
    key,
    name,
    kind,
    materialId: material?.materialId ?? null,
    materialName: bills.materials.get(material?.materialId ?? '')?.name ?? null,
    unit,
    quantity,
    basis,
    costMinor: byKey.get(key) ?? null,
  }))
}
