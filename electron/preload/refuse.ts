import type { Answer } from '../../shared-core/contract/calls.ts'

/** A refusal made on this side of the bridge. */
export function refuse(code: string, message: string, next: string): Answer<never> {
  return { ok: false, error: { code, message, next } }
}
