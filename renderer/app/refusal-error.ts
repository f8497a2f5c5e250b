import type { Refusal } from '../../shared-core/refusal.ts'

/** A refusal on its way through code that can only throw. */
export class RefusalError extends Error {
  readonly refusal: Refusal

  constructor(refusal: Refusal) {
    super(refusal.message)
    this.refusal = refusal
  }
}

/** The refusal an error carries, or an honest one for a fault of the studio itself. */
export function refusalOf(error: unknown): Refusal {
  if (error instanceof RefusalError) return error.refusal
  return {
    code: 'internal',
    message: 'The studio made a mistake of its own.',
    next: 'Nothing was saved by this step. Try again; if it comes back, close the studio and open it again.',
  }
}
