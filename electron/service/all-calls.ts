import { type CallName, calls, type ParsedInput } from '../../shared-core/contract/calls.ts'
import type { CallBook, Given } from './call-book.ts'
import { type Desk, onStore } from './desk.ts'
import type {
  ActName,
  LaterHandler,
  PureHandler,
  QueryHandler,
  QueryName,
  StepName,
} from './handlers/handler.ts'
import { actHandlers, queryHandlers } from './handlers/handlers.ts'
import { pureHandlers } from './handlers/pure-handlers.ts'
import { perform } from './perform.ts'
import { isPure, type PureName } from './pure-names.ts'
import { stepHandlers } from './steps.ts'
import type { View } from './store/view.ts'

/** Every call of the contract. */
export const allCalls: CallBook = {
  calls,
  run: (desk, name, input) => run(desk, name as CallName, input as ParsedInput<CallName>),
}

// The tables pair each name with its handler; the compiler cannot follow a name that is a variable.
async function run(desk: Desk, name: CallName, input: ParsedInput<CallName>): Promise<Given> {
  if (isPure(name)) {
    return { value: (pureHandlers[name] as PureHandler<PureName>)(input as never) }
  }
  // An act decides on what it reads, so nobody may write in between; a query only needs one view.
  const isolation = Object.hasOwn(queryHandlers, name) ? 'repeatable read' : 'serializable'
  return onStore(desk, isolation, (view) => runInStore(desk, view, name, input))
}

async function runInStore(
  { now, newId }: Desk,
  view: View,
  name: Exclude<CallName, PureName>,
  input: ParsedInput<CallName>,
): Promise<Given> {
  const atMs = now()
  if (Object.hasOwn(queryHandlers, name)) {
    const handler = queryHandlers[name as keyof typeof queryHandlers] as
      | QueryHandler<QueryName>
      | LaterHandler<QueryName>
    return { value: await handler({ ...view, atMs }, input as never) }
  }
  const circumstances = { atMs, newId, fixed: false }
  if (Object.hasOwn(actHandlers, name)) {
    return perform(view, name as ActName, input as ParsedInput<ActName>, circumstances)
  }
  return { value: await stepHandlers[name as StepName](view, input as never, circumstances) }
}
