import type { ParsedInput } from '../../../shared-core/contract/calls.ts'
import { getOpenWork } from '../bench-work.ts'
import { refuse } from '../refused.ts'
import { toFlag } from '../store/material-rows.ts'
import type { View } from '../store/view.ts'

/** Writes where the hand is and the time worked, past the history: a bead stitched is not undone by a key. */
export async function keepBench(
  view: View,
  { id, place, workedS, unitsDone, resting }: ParsedInput<'bench.keep'>,
  atMs: number,
): Promise<void> {
  const work = await getOpenWork(view, id)
  if (unitsDone > work.units) {
    refuse(
      'more-than-begun',
      `${work.units} were begun, and ${unitsDone} were given as done.`,
      'Begin another work for the pieces beyond these.',
      'unitsDone',
    )
  }
  await view.trx
    .updateTable('bench_work')
    .set({
      copy_at: place.copy,
      part_at: place.part,
      step_at: place.step,
      units_done: unitsDone,
      worked_s: workedS,
      resting: toFlag(resting),
      kept_at_ms: atMs,
    })
    .where('id', '=', id)
    .execute()
}
