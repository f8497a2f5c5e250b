import type { Refusal } from '../../shared-core/refusal.ts'

/** A refusal in one line of text: what was found, then what to do. */
export function refusalWords({ message, next }: Pick<Refusal, 'message' | 'next'>): string {
  return `${message} ${next}`.trimEnd()
}
