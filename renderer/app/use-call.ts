import { useQuery } from '@tanstack/react-query'
import type { CallInput, CallName, CallOutput } from '../../shared-core/contract/calls.ts'
import type { Refusal } from '../../shared-core/refusal.ts'
import { bridge } from './bridge.ts'
import { RefusalError, refusalOf } from './refusal-error.ts'
import { isSameSubject } from './same-subject.ts'

/** What a screen knows of something it asked for. */
export type Asked<T> = Readonly<{
  /**
   * `undefined` while waiting for the first answer. While a changed question about the same things
   * waits, the answer before it.
   */
  value: T | undefined
  refusal: Refusal | undefined
  isWaiting: boolean
  askAgain: () => void
}>

/**
 * Reads something through the contract, and again whenever an act changes what it reads.
 *
 * With `null` for input nothing is asked yet.
 */
export function useCall<N extends CallName>(
  name: N,
  input: CallInput<N> | null,
): Asked<CallOutput<N>> {
  const { data, error, isFetching, refetch } = useQuery({
    queryKey: [name, input],
    queryFn: () => ask(name, input as CallInput<N>),
    enabled: input !== null,
    placeholderData: (before, query) =>
      isSameSubject(query?.queryKey[1], input) ? before : undefined,
  })
  return {
    // What is refused now no longer stands: an undo may have taken it away.
    value: input === null || error !== null ? undefined : (data as CallOutput<N> | undefined),
    refusal: error === null ? undefined : refusalOf(error),
    isWaiting: isFetching,
    askAgain: () => void refetch(),
  }
}

/** Asks once, outside a component; throws the refusal. */
export async function ask<N extends CallName>(
  name: N,
  input: CallInput<N>,
): Promise<CallOutput<N>> {
  const answer = await bridge.request(name, input)
  if (!answer.ok) throw new RefusalError(answer.error)
  return answer.value
}
