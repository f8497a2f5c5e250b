import { scaleSpread } from '../../../shared-core/units/spread-arithmetic.ts'
import {
  costOfMake,
  enterMake,
  type MakeLine,
  madeLabel,
  plannedLines,
  valuesOf,
} from '../enter-make.ts'
import { type MakePlan, readMakePlan } from '../make-plan.ts'
import { Refused } from '../refused.ts'
import { getRow } from '../store/find-row.ts'
import type { ActHandler, QueryHandler } from './handler.ts'

export const planMakeCall: QueryHandler<'makes.plan'> = async (reading, input) => {
  const plan = await readMakePlan(reading, input)
  const labourS = scaleSpread(plan.facts.labour.totalS, input.units)
  const lines = plannedLines(plan)
  const cost = await costOfMake(reading, {
    values: await valuesOf(reading, lines),
    units: input.units,
    benchS: Math.round(labourS.value),
  })
  return {
    draws: viewLines(plan, lines).map(({ kind: _, ...draw }) => draw),
    costMinor: cost.costMinor,
    labourS,
    faults: [...plan.faults],
    choices: plan.choices.map(({ lots, ...choice }) => ({
      ...choice,
      lots: lots.map(({ lotId, available }) => ({
        lotId,
        dyeLot: plan.lots.get(lotId)?.dye_lot ?? '',
        available,
        holdsAll: available >= choice.needed,
      })),
    })),
  }
}

/** Lines of a make as screens show them. */
export function viewLines({ lots, materials }: MakePlan, lines: readonly MakeLine[]) {
  return lines.flatMap(({ lotId, materialId, quantity, kind }) => {
    const lot = lots.get(lotId)
    const material = materials.get(materialId)
    if (lot === undefined || material === undefined) return []
    const { name, drawer, unit } = material
    return [{ materialId, name, lotId, dyeLot: lot.dye_lot, drawer, unit, quantity, kind }]
  })
}

export const finishMake: ActHandler<'makes.finish'> = async (act, input) => {
  const place = await getRow(act.trx, 'place', input.placeId, 'placeId')
  const plan = await readMakePlan(act, input)
  const [fault] = plan.faults
  if (fault !== undefined) throw new Refused(fault)
  const { colourwayId, units, benchS, madeOn, note } = input
  const value = await enterMake(act, {
    ...{ plan, colourwayId, units, benchS, madeOn, note },
    orderLineId: input.orderLineId ?? null,
    lines: plannedLines(plan),
    placeId: place.id,
  })
  return { value, label: madeLabel({ plan, units }) }
}
