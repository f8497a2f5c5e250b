import type { PriceInputs } from '../../../shared-core/pricing/price-sheet.ts'

/** Figures tried out and not kept: what is absent stays as the workshop has it. */
export type Trial = Readonly<{
  hourlyRateMinor?: number
  marginPercent?: string
  overheadPercent?: string
  labourS?: number
}>

/** What a price is computed from, with the tried figures in place of the kept ones. */
export function tried(inputs: PriceInputs, trial: Trial): PriceInputs {
  const { hourlyRateMinor, marginPercent, overheadPercent, labourS } = trial
  const { workshop } = inputs
  return {
    ...inputs,
    labourS:
      labourS === undefined
        ? inputs.labourS
        : { value: labourS, low: labourS, high: labourS, basis: 'exact' },
    workshop: {
      ...workshop,
      hourlyRateMinor: hourlyRateMinor ?? workshop.hourlyRateMinor,
      marginPercent: marginPercent ?? workshop.marginPercent,
      overhead:
        overheadPercent === undefined
          ? workshop.overhead
          : { kind: 'percent-of-labour', percent: overheadPercent },
    },
  }
}

/** Whether anything is tried out at all. */
export function isTrying(trial: Trial): boolean {
  return Object.values(trial).some((value) => value !== undefined)
}
