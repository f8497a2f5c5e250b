import type { CallSpec } from '../../shared-core/contract/call.ts'
import type { Answer } from '../../shared-core/contract/calls.ts'
import type { Refusal } from '../../shared-core/refusal.ts'
import { badInput } from './bad-input.ts'
import type { CallBook, Given } from './call-book.ts'
import type { Desk } from './desk.ts'
import { environmentFault } from './environment-fault.ts'
import { Later } from './later.ts'
import { Refused } from './refused.ts'

/** The rest of an answer, after its turn at the store. Never throws. */
type Finish = () => Promise<Answer<unknown>>

/**
 * Answers any call by name: parses the input, runs it, turns whatever goes wrong into a refusal.
 *
 * This is the part that needs its turn at the store; what it gives does the rest and answers.
 */
export async function takeTurn(
  desk: Desk,
  bookOf: (name: string) => Promise<CallBook>,
  name: string,
  input: unknown,
): Promise<Finish> {
  try {
    const { calls, run } = await bookOf(name)
    const spec = Object.hasOwn(calls, name) ? calls[name] : undefined
    if (spec === undefined) return refused(unknownCall(name))
    const parsed = spec.input.safeParse(input)
    if (!parsed.success) return refused(badInput(parsed.error.issues, input))
    const given = await run(desk, name, parsed.data)
    return () => finish(desk, name, spec, given)
  } catch (cause) {
    return refused(toRefusal(desk, name, cause))
  }
}

function refused(error: Refusal): Finish {
  return async () => ({ ok: false, error })
}

async function finish(
  desk: Desk,
  name: string,
  { output }: CallSpec,
  { value, ...how }: Given,
): Promise<Answer<unknown>> {
  try {
    const made: unknown = value instanceof Later ? await value.make() : value
    if (desk.checkOutputs) output.parse(made)
    return { ok: true, value: made, ...how }
  } catch (cause) {
    return { ok: false, error: toRefusal(desk, name, cause) }
  }
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
