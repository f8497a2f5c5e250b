import type { CallName } from '../../shared-core/contract/calls.ts'
import { queryClient } from './query-client.ts'

/**
 * Reads again whatever a call has changed: every query that reads one of its topics.
 *
 * The contract is loaded with the first act, to keep its schemas out of the start.
 */
export async function refreshAfter(name: CallName): Promise<void> {
  const { calls, isCallName } = await import('../../shared-core/contract/calls.ts')
  const changed = new Set<string>([...calls[name].changes, 'history'])
  await queryClient.invalidateQueries({
    predicate: ({ queryKey: [asked] }) =>
      typeof asked === 'string' &&
      isCallName(asked) &&
      calls[asked].reads.some((topic) => changed.has(topic)),
  })
}
