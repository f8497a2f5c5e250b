import type { CallOutput, ParsedInput } from '../../shared-core/contract/calls.ts'
import { addFirstPlace, beginWorkshop } from './handlers/begin.ts'
import { keepBench } from './handlers/bench-keep.ts'
import { addStrokes, forgetDraft, moveDraft, openDraft } from './handlers/drafts.ts'
import type { StepName } from './handlers/handler.ts'
import type { Circumstances } from './perform.ts'
import { tellSample } from './sample/tell-sample.ts'
import { openAct } from './store/act.ts'
import { redo, undo } from './store/history.ts'
import type { View } from './store/view.ts'

type StepHandler<N extends StepName> = (
  view: View,
  input: ParsedInput<N>,
  circumstances: Circumstances,
) => Promise<CallOutput<N>>

/** Calls that change the store and are no step of the history themselves. */
export const stepHandlers: { readonly [N in StepName]: StepHandler<N> } = {
  'workshop.begin': async (view, input, circumstances) => {
    const fixed = { ...circumstances, fixed: true }
    const act = openAct({ view, call: 'workshop.begin', ...fixed })
    await beginWorkshop(act, input)
    if (input.with === 'empty') await addFirstPlace(act)
    await act.finish(`Began ${input.name}`)
    if (input.with === 'sample') await tellSample(view, input.today, fixed)
    return {}
  },
  'drafts.open': openDraft,
  'drafts.stroke': addStrokes,
  'drafts.moveTo': moveDraft,
  'drafts.forget': forgetDraft,
  'bench.keep': async (view, input, { atMs }) => {
    await keepBench(view, input, atMs)
    return {}
  },
  'history.undo': async ({ trx }, _input, { atMs }) => ({ label: await undo(trx, atMs) }),
  'history.redo': async ({ trx }, _input, { atMs }) => ({ label: await redo(trx, atMs) }),
}
