import type { Learned } from '../../shared-core/design/learned.ts'
import { useCall } from './use-call.ts'

/** What the workshop has learnt of itself; `undefined` until it is known. The same object while nothing changes. */
export function useLearned(): Learned | undefined {
  return useCall('workshop.pace', {}).value?.learned
}
