import {
  type Answer,
  type CallName,
  calls,
  isCallName,
  type ParsedInput,
} from '../../shared-core/contract/calls.ts'
import type { Refusal } from '../../shared-core/refusal.ts'
import type { Result } from '../../shared-core/result.ts'
import { badInput } from './bad-input.ts'
import { environmentFault } from './environment-fault.ts'
import type {
  ActName,
  LaterHandler,
  PureHandler,
  PureName,
  QueryHandler,
  QueryName,
  StepName,
} from './handlers/handler.ts'
import { actHandlers, queryHandlers } from './handlers/handlers.ts'
import { pureHandlers } from './handlers/pure-handlers.ts'
import { Later } from './later.ts'
import { perform } from './perform.ts'
import { Refused } from './refused.ts'
import { stepHandlers } from './steps.ts'
import type { Store } from './store/open-store.ts'
import type { View } from './store/view.ts'

/** What answers need: the store if there is one, a clock, ids, and where faults are noted. */
export type Desk = Readonly<{
  store: Result<Store, Refusal>
  memory: View['memory']
  now: () => number
  newId: (prefix: string) => string
  log: (message: string) => void
  /** Whether answers are checked against the contract too: in tests and while developing. */
  checkOutputs: boolean
}>

/** Answers any call by name: parses the input, runs it, turns whatever goes wrong into a refusal. */
export async function answerCall(
  desk: Desk,
  name: string,
  input: unknown,
): Promise<Answer<unknown>> {
  return (await takeTurn(desk, name, input))()
}

/** Does the part of a call that needs its turn at the store; what it gives does the rest and answers. */
export async function takeTurn(
  desk: Desk,
  name: string,
  input: unknown,
): Promise<() => Promise<Answer<unknown>>> {
  if (!isCallName(name)) return refused(unknownCall(name))
  const parsed = calls[name].input.safeParse(input)
  if (!parsed.success) return refused(badInput(parsed.error.issues, input))
  try {
    const given = await run(desk, name, parsed.data as ParsedInput<CallName>)
    return () => finish(desk, name, given)
  } catch (cause) {
    return refused(toRefusal(desk, name, cause))
  }
}

function refused(error: Refusal): () => Promise<Answer<never>> {
  return async () => ({ ok: false, error })
}

/** What a call's turn gave: its value, or how that is made after the turn. */
type Given = Readonly<{ value: unknown; unchanged?: true }>

async function finish(
  desk: Desk,
  name: CallName,
  { value, ...how }: Given,
): Promise<Answer<unknown>> {
  try {
    const made: unknown = value instanceof Later ? await value.make() : value
    if (desk.checkOutputs) calls[name].output.parse(made)
    return { ok: true, value: made, ...how }
  } catch (cause) {
    return { ok: false, error: toRefusal(desk, name, cause) }
  }
}

/** Whether a call can be answered without the store. */
export function isPure(name: string): name is PureName {
  return Object.hasOwn(pureHandlers, name)
}

async function run(desk: Desk, name: CallName, input: ParsedInput<CallName>): Promise<Given> {
  if (isPure(name)) {
    return { value: (pureHandlers[name] as PureHandler<PureName>)(input as never) }
  }
  if (!desk.store.ok) throw new Refused(desk.store.error)
  const { db } = desk.store.value
  const isQuery = Object.hasOwn(queryHandlers, name)
  // An act decides on what it reads, so nobody may write in between; a query only needs one view.
  return db
    .transaction()
    .setIsolationLevel(isQuery ? 'repeatable read' : 'serializable')
    .execute((trx) => runInStore(desk, { trx, memory: desk.memory }, name, input))
}

// The tables pair each name with its handler; the compiler cannot follow a name that is a variable.
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

function toRefusal(desk: Desk, name: string, cause: unknown): Refusal {
  if (cause instanceof Refused) return cause.refusal
  desk.log(`${name} failed: ${cause instanceof Error ? cause.stack : String(cause)}`)
  return environmentFault(cause) ?? INTERNAL
}

const INTERNAL: Refusal = {
  code: 'internal',
  message: 'Something went wrong inside the studio; nothing was changed.',
  next: 'Try once more. The cause is noted in the studio’s log.',
}

function unknownCall(name: string): Refusal {
  return {
    code: 'unknown-call',
    message: `There is no call “${name.slice(0, 60)}”.`,
    next: 'Use one of the calls of the contract.',
  }
}
