import type { ParsedInput } from '../../../shared-core/contract/calls.ts'
import type { Pace } from '../../../shared-core/design/labour-pace.ts'
import type { Learned } from '../../../shared-core/design/learned.ts'
import type { Spread } from '../../../shared-core/units/spread.ts'
import { refuse } from '../refused.ts'

/** What is sent of a workshop's learning, each figure within its own range and within what can be. */
export function checkedLearned({
  pace,
  cullRates,
  threadUse,
}: Pick<ParsedInput<'engine.read'>, 'pace' | 'cullRates' | 'threadUse'>): Partial<Learned> {
  if (pace !== undefined) checkPace(pace, 'pace')
  for (const [formId, rate] of Object.entries(cullRates ?? {})) checkCullRate(formId, rate)
  if (threadUse !== undefined) checkThreadUse(threadUse)
  return {
    ...(pace && { pace }),
    ...(cullRates && { cullRates }),
    ...(threadUse && { threadUse }),
  }
}

/** Every figure of a pace that is sent must be a time within its own range. */
export function checkPace(pace: Pace, path = 'prior'): void {
  const figures = {
    ...pace.perBeadS,
    setUpS: pace.setUpS,
    perRowS: pace.perRowS,
    finishingS: pace.finishingS,
  }
  for (const [name, figure] of Object.entries(figures)) {
    if (figure.low > 0 && isOrdered(figure)) continue
    refuse(
      'pace-range',
      `The pace for ${name} reads ${inWords(figure)} seconds.`,
      'Give seconds above 0, with low up to value and value up to high.',
      `${path}.${name in pace.perBeadS ? `perBeadS.${name}` : name}`,
    )
  }
}

function checkCullRate(formId: string, rate: Spread): void {
  if (rate.low >= 0 && rate.high < 1 && isOrdered(rate)) return
  refuse(
    'cull-range',
    `The share put aside of ${formId} reads ${inWords(rate)}.`,
    'Give a share from 0 to below 1, with low up to value and value up to high.',
    `cullRates.${formId}`,
  )
}

/** Less or more than this no hand uses; chosen by us, far beyond what is ever learnt. */
const THREAD_USE = { least: 0.5, most: 2 } as const

function checkThreadUse(use: Spread): void {
  const { least, most } = THREAD_USE
  if (use.low >= least && use.high <= most && isOrdered(use)) return
  refuse(
    'thread-use-range',
    `Thread used over thread reckoned reads ${inWords(use)}.`,
    `Give a ratio from ${least} to ${most}, with low up to value and value up to high; 1 is as reckoned.`,
    'threadUse',
  )
}

function isOrdered({ low, value, high }: Spread): boolean {
  return low <= value && value <= high
}

function inWords({ low, value, high }: Spread): string {
  return `${value} (${low} to ${high})`
}
