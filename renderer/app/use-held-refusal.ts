import { useState } from 'react'
import type { Refusal } from '../../shared-core/refusal.ts'
import { isSameDraft } from './same-draft.ts'

/**
 * A refusal that stands while `of`, what is typed, stays as it was, and is gone once that is mended.
 * `refuse` is told the refusal of what is typed now, or that there is none.
 */
export function useHeldRefusal(
  of: unknown,
): Readonly<{ refusal: Refusal | undefined; refuse: (refusal: Refusal | undefined) => void }> {
  const [held, setHeld] = useState<Readonly<{ refusal: Refusal | undefined; of: unknown }>>()
  return {
    refusal: isSameDraft(held?.of, of) ? held?.refusal : undefined,
    refuse: (refusal) => setHeld({ refusal, of }),
  }
}
