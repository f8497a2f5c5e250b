import type { CallName } from '../../shared-core/contract/calls.ts'
import { queryClient } from './query-client.ts'

/**
 * Reads again whatever a call has changed: every query that reads one of its topics.
 *
 * What is on the screen stays there until the new answer has come, and this waits for it. What other
 * rooms showed is forgotten, so that no room is entered with figures from before.
 *
 * The contract is loaded with the first act, to keep its schemas out of the start.
 */
export async function refreshAfter(name: CallName): Promise<void> {
  const { calls, isCallName } = await import('../../shared-core/contract/calls.ts')
  const changed = new Set<string>([...calls[name].changes, 'history'])
  const predicate = ({ queryKey: [asked] }: Readonly<{ queryKey: readonly unknown[] }>) =>
    typeof asked === 'string' &&
    isCallName(asked) &&
    calls[asked].reads.some((topic) => changed.has(topic))
  queryClient.removeQueries({ type: 'inactive', predicate })
  await queryClient.invalidateQueries({ predicate })
}
