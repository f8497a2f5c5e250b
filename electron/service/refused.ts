import type { Refusal } from '../../shared-core/refusal.ts'

/**
 * A refusal on its way out of a transaction.
 *
 * A transaction is rolled back only by a throw, so handlers throw what the maker can act on and
 * `answer` turns it back into data. Anything else that is thrown is a bug or a fault of the machine.
 */
export class Refused extends Error {
  readonly refusal: Refusal

  constructor(refusal: Refusal) {
    super(refusal.message)
    this.refusal = refusal
  }
}

/** Ends a handler with a refusal. */
export function refuse(code: string, message: string, next: string, field?: string): never {
  throw new Refused({ code, message, next, ...(field === undefined ? {} : { field }) })
}
