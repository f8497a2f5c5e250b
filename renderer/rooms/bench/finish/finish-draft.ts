import type { CallInput, CallOutput } from '../../../../shared-core/contract/calls.ts'

import type { Format } from '../../../app/format.ts'

export type BenchRead = CallOutput<'bench.read'>
export type Reckoned = CallOutput<'bench.reckon'>

/** A figure as typed, and as it was understood; `undefined` while it is empty or refused. */
export type Typed = Readonly<{ text: string; value: number | undefined }>

/** All that is typed at the end of work. */
export type FinishDraft = Readonly<{
  units: Typed
  time: Typed
  threadLeft: Typed
  /** By slot letter. */
  culls: Readonly<Record<string, Typed>>
  /** By material. */
  before: Readonly<Record<string, Typed>>
  after: Readonly<Record<string, Typed>>
}>

export const EMPTY: Typed = { text: '', value: undefined }

/** What stands in the fields at first: the pieces begun, the time kept, the tubes weighed before. */
export function firstDraft(
  { work, beads }: BenchRead,
  { duration, decimal }: Pick<Format, 'duration' | 'decimal'>,
): FinishDraft {
  const weighed = beads.flatMap(({ materialId, beforeMg }) =>
    beforeMg === null
      ? []
      : [[materialId, { text: gramsText(beforeMg, decimal), value: beforeMg }] as const],
  )
  const minutes = Math.round(work.workedS / 60) * 60
  return {
    units: { text: String(work.units), value: work.units },
    time: work.workedS > 0 ? { text: duration(minutes), value: minutes } : EMPTY,
    threadLeft: EMPTY,
    culls: {},
    before: Object.fromEntries(weighed),
    after: {},
  }
}

/** A mass as it would be typed into a field that says grams: `31,4`. */
function gramsText(mg: number, decimal: string): string {
  return String(mg / 1000).replace('.', decimal)
}

/** The question the draft asks; `null` while it cannot be asked. A tube counts once both its weights are there. */
export function finishRequest(id: string, draft: FinishDraft): CallInput<'bench.reckon'> | null {
  const { units, time, threadLeft, culls, before, after } = draft
  if (units.value === undefined || units.value < 1) return null
  const counted = Object.entries(culls).flatMap(([label, { value }]) =>
    value === undefined ? [] : [[label, value] as const],
  )
  const weights = Object.entries(after).flatMap(([materialId, { value: afterMg }]) => {
    const beforeMg = before[materialId]?.value
    return afterMg === undefined || beforeMg === undefined
      ? []
      : [{ materialId, beforeMg, afterMg }]
  })
  return {
    ...{ id, units: units.value, culls: Object.fromEntries(counted), weights },
    ...(time.value === undefined ? {} : { benchS: time.value }),
    ...(threadLeft.value === undefined ? {} : { threadLeftMm: threadLeft.value }),
  }
}

/** Whether something typed was not understood: nothing is booked until it is. */
export function hasUnread(draft: FinishDraft): boolean {
  const { units, time, threadLeft, culls, before, after } = draft
  const all = [
    units,
    time,
    threadLeft,
    ...[culls, before, after].flatMap((of) => Object.values(of)),
  ]
  return all.some(({ text, value }) => text.trim() !== '' && value === undefined)
}
