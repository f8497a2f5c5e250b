import type { CallOutput, ParsedInput } from '../../shared-core/contract/calls.ts'
import type { ActHandler, ActName } from './handlers/handler.ts'
import { actHandlers } from './handlers/handlers.ts'
import { openAct } from './store/act.ts'
import type { View } from './store/view.ts'

/** When an act happens, who numbers what it adds, and whether it belongs to a past that stays. */
export type Circumstances = Readonly<{
  atMs: number
  newId: (prefix: string) => string
  fixed: boolean
}>

/** What an act answers; `unchanged` where it found everything as it was. */
export type Performed<N extends ActName> = Readonly<{ value: CallOutput<N>; unchanged?: true }>

/** Does one act of the contract inside a transaction and writes it into the history. */
export async function perform<N extends ActName>(
  view: View,
  name: N,
  input: ParsedInput<N>,
  circumstances: Circumstances,
): Promise<Performed<N>> {
  const act = openAct({ view, call: name, ...circumstances })
  // The table pairs each name with its handler; the compiler cannot follow a name that is a variable.
  const handler = actHandlers[name] as ActHandler<N>
  const { value, label } = await handler(act, input)
  return (await act.finish(label)) ? { value } : { value, unchanged: true }
}
