import { durationS } from '../units/duration.ts'
import { type Fraction, subtractFractions } from '../units/fraction.ts'
import { roundTogether } from '../units/round-together.ts'
import {
  type CostInput,
  costSheet,
  exactHourlyCost,
  exactMaterialCost,
  exactOverhead,
  type MaterialUse,
} from './cost-sheet.ts'

/** Why a cost came out otherwise than planned. */
export type DifferenceCause =
  | 'more-or-less-used'
  | 'dearer-or-cheaper'
  | 'time'
  | 'rate'
  | 'overhead'
  | 'rounding'

/** One cause, of the line `key`, in minor units; above 0 where the actual cost is higher. */
export type CostCause = Readonly<{
  cause: DifferenceCause
  key: string
  label: string
  amountMinor: number
}>

/** Planned against actual: `differenceMinor = actualMinor - plannedMinor`, and the causes sum to it. */
export type CostDifference = Readonly<{
  plannedMinor: number
  actualMinor: number
  differenceMinor: number
  causes: readonly CostCause[]
}>

/**
 * The difference between a planned and an actual unit cost, by cause.
 *
 * Quantities are compared at the planned cost, costs at the actual quantity: a material's difference
 * is (actual - planned quantity) x planned cost + actual quantity x (actual - planned cost); labour
 * likewise by time and rate. A material on one side only differs in use. Causes of 0 are left out;
 * `rounding` is there when the two rounded totals differ by other than the rounded causes.
 */
export function costDifference(planned: CostInput, actual: CostInput): CostDifference {
  const plannedMinor = costSheet(planned).costMinor
  const actualMinor = costSheet(actual).costMinor
  const differenceMinor = actualMinor - plannedMinor
  const drafts = [
    ...materialCauses(planned.materials, actual.materials),
    ...labourCauses(planned, actual),
    {
      cause: 'overhead' as const,
      key: 'overhead',
      label: 'Overhead',
      exact: subtractFractions(exactOverhead(actual), exactOverhead(planned)),
    },
  ]
  const rounded = roundTogether(
    drafts.map((draft) => draft.exact),
    'half-even',
  )
  const causes: CostCause[] = drafts.map(({ cause, key, label }, at) => ({
    cause,
    key,
    label,
    amountMinor: rounded.parts[at] ?? 0,
  }))
  const rest = differenceMinor - rounded.total
  causes.push({ cause: 'rounding', key: 'rounding', label: 'Rounding', amountMinor: rest })
  return {
    plannedMinor,
    actualMinor,
    differenceMinor,
    causes: causes.filter((cause) => cause.amountMinor !== 0),
  }
}

type Draft = Omit<CostCause, 'amountMinor'> & Readonly<{ exact: Fraction }>

function materialCauses(
  planned: readonly MaterialUse[],
  actual: readonly MaterialUse[],
): readonly Draft[] {
  const before = new Map(planned.map((use) => [use.key, use]))
  const after = new Map(actual.map((use) => [use.key, use]))
  const keys = [...new Set([...before.keys(), ...after.keys()])]
  return keys.flatMap((key) => causesOf(before.get(key), after.get(key)))
}

function causesOf(
  before: MaterialUse | undefined,
  after: MaterialUse | undefined,
): readonly Draft[] {
  const use = after ?? before
  if (!use) return []
  const { key, label } = use
  const plannedCost = before?.cost ?? after?.cost ?? null
  const actualQuantity = after?.quantity ?? 0
  const planned = exactMaterialCost({ quantity: before?.quantity ?? 0, cost: before?.cost ?? null })
  const atPlannedCost = exactMaterialCost({ quantity: actualQuantity, cost: plannedCost })
  const actual = exactMaterialCost({ quantity: actualQuantity, cost: after?.cost ?? null })
  return [
    { cause: 'more-or-less-used', key, label, exact: subtractFractions(atPlannedCost, planned) },
    { cause: 'dearer-or-cheaper', key, label, exact: subtractFractions(actual, atPlannedCost) },
  ]
}

function labourCauses(planned: CostInput, actual: CostInput): readonly Draft[] {
  const seconds = durationS(actual.labour.seconds - planned.labour.seconds)
  const rate = actual.hourlyRateMinor - planned.hourlyRateMinor
  return [
    {
      cause: 'time',
      key: 'labour',
      label: 'Labour',
      exact: exactHourlyCost(seconds, planned.hourlyRateMinor),
    },
    {
      cause: 'rate',
      key: 'labour',
      label: 'Labour',
      exact: exactHourlyCost(actual.labour.seconds, rate),
    },
  ]
}
