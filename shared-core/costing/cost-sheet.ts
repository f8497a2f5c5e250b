import { assert } from '../assert.ts'
import type { LotCost } from '../stock/lot-value.ts'
import type { MaterialUnit } from '../stock/material-unit.ts'
import type { DurationS } from '../units/duration.ts'
import { type Fraction, fraction, multiplyFractions } from '../units/fraction.ts'
import { type Ratio, ratioToFraction } from '../units/ratio.ts'
import { roundTogether } from '../units/round-together.ts'
import { type Basis, weakerBasis } from '../units/spread.ts'

/** What a line of the cost sheet stands for. */
export type CostGroup = 'materials' | 'thread' | 'findings' | 'packaging' | 'labour' | 'overhead'

/**
 * A material one unit of a design uses up: `quantity` whole and in `unit`, culls, waste and thread
 * ends included. `cost` is the exact ratio `costMinor` for `costQuantity` in the same unit; null
 * where no cost is known.
 */
export type MaterialUse = Readonly<{
  key: string
  label: string
  group: Exclude<CostGroup, 'labour' | 'overhead'>
  unit: MaterialUnit
  quantity: number
  basis: Basis
  cost: LotCost | null
}>

/** A share of what the workshop costs whether or not this piece is made: rent, light, tools. */
export type Overhead =
  | Readonly<{ kind: 'percent-of-labour'; percent: Ratio }>
  | Readonly<{ kind: 'per-hour'; amountMinor: number }>
  | Readonly<{ kind: 'per-piece'; amountMinor: number }>

/** All that one unit costs, in plain figures of one currency. */
export type CostInput = Readonly<{
  materials: readonly MaterialUse[]
  labour: Readonly<{ seconds: DurationS; basis: Basis }>
  hourlyRateMinor: number
  overhead: Overhead
}>

/** One line; `known` is false where no cost is known and the amount is therefore 0. */
export type CostLine = Readonly<{
  key: string
  label: string
  group: CostGroup
  amountMinor: number
  basis: Basis
  known: boolean
}>

/**
 * What one unit costs. The lines sum exactly to `costMinor`; so do the groups. `basis` is the
 * weakest of the lines'; `complete` is false while a line's cost is not known.
 */
export type CostSheet = Readonly<{
  lines: readonly CostLine[]
  byGroup: Readonly<Record<CostGroup, number>>
  costMinor: number
  basis: Basis
  complete: boolean
  benchSeconds: DurationS
}>

/**
 * The cost sheet of one unit: materials, thread, findings, packaging, labour, overhead.
 *
 * Every line is worked out as an exact fraction; the total is rounded once, half-even, and the lines
 * together to it, so that each stays within one minor unit of its exact value.
 *
 * @throws Error for negative or fractional figures: bugs, because input is parsed first.
 * @example 2,102 mg at 4.20 for 7,200 mg is 1.226; 85 min at 18.00 an hour is 25.50
 */
export function costSheet(input: CostInput): CostSheet {
  assertInput(input)
  const drafts = [...input.materials.map(materialDraft), labourDraft(input), overheadDraft(input)]
  const rounded = roundTogether(
    drafts.map((draft) => draft.exact),
    'half-even',
  )
  const lines = drafts.map(({ exact: _, ...line }, at) => ({
    ...line,
    amountMinor: rounded.parts[at] ?? 0,
  }))
  return {
    lines,
    byGroup: sumByGroup(lines),
    costMinor: rounded.total,
    basis: lines.map((line) => line.basis).reduce(weakerBasis, 'exact'),
    complete: lines.every((line) => line.known),
    benchSeconds: input.labour.seconds,
  }
}

/** What so much of a material costs, exactly, in minor units; 0 where no cost is known. */
export function exactMaterialCost({
  quantity,
  cost,
}: Pick<MaterialUse, 'quantity' | 'cost'>): Fraction {
  if (cost === null) return fraction(0)
  return fraction(BigInt(quantity) * BigInt(cost.costMinor), cost.costQuantity)
}

/** What so much time costs at an hourly amount, exactly, in minor units. */
export function exactHourlyCost(seconds: DurationS, minorPerHour: number): Fraction {
  return multiplyFractions(fraction(minorPerHour), fraction(seconds, 3600))
}

/** The share of overhead of one unit, exactly, in minor units. */
export function exactOverhead({ labour, hourlyRateMinor, overhead }: CostInput): Fraction {
  switch (overhead.kind) {
    case 'percent-of-labour': {
      const wage = exactHourlyCost(labour.seconds, hourlyRateMinor)
      return multiplyFractions(wage, ratioToFraction(overhead.percent))
    }
    case 'per-hour':
      return exactHourlyCost(labour.seconds, overhead.amountMinor)
    case 'per-piece':
      return fraction(overhead.amountMinor)
  }
}

type Draft = Omit<CostLine, 'amountMinor'> & Readonly<{ exact: Fraction }>

function materialDraft(use: MaterialUse): Draft {
  const { key, label, group, basis } = use
  return { key, label, group, basis, known: use.cost !== null, exact: exactMaterialCost(use) }
}

function labourDraft({ labour, hourlyRateMinor }: CostInput): Draft {
  const exact = exactHourlyCost(labour.seconds, hourlyRateMinor)
  return {
    key: 'labour',
    label: 'Labour',
    group: 'labour',
    basis: labour.basis,
    known: true,
    exact,
  }
}

function overheadDraft(input: CostInput): Draft {
  return {
    key: 'overhead',
    label: 'Overhead',
    group: 'overhead',
    basis: input.overhead.kind === 'per-piece' ? 'exact' : input.labour.basis,
    known: true,
    exact: exactOverhead(input),
  }
}

function sumByGroup(lines: readonly CostLine[]): Readonly<Record<CostGroup, number>> {
  const sums = { materials: 0, thread: 0, findings: 0, packaging: 0, labour: 0, overhead: 0 }
  for (const line of lines) sums[line.group] += line.amountMinor
  return sums
}

function assertInput(input: CostInput): void {
  const { labour, hourlyRateMinor, overhead } = input
  for (const use of input.materials) {
    assertWhole(use.quantity, `${use.key}: quantity`)
    if (use.cost === null) continue
    assertWhole(use.cost.costMinor, `${use.key}: cost`)
    assertWhole(use.cost.costQuantity, `${use.key}: quantity the cost is for`)
    assert(use.cost.costQuantity > 0, `${use.key}: a cost is for more than nothing`)
  }
  assertWhole(labour.seconds, 'seconds of labour')
  assertWhole(hourlyRateMinor, 'hourly rate')
  if (overhead.kind === 'percent-of-labour') {
    assert(ratioToFraction(overhead.percent).numerator >= 0n, 'overhead from 0 % up')
  } else {
    assertWhole(overhead.amountMinor, 'overhead')
  }
}

function assertWhole(value: number, what: string): void {
  assert(Number.isSafeInteger(value) && value >= 0, `${what}: whole and from 0 up, got ${value}`)
}
