import type { Refusal } from '../../shared-core/refusal.ts'
import { refusalWords } from '../ui/refusal-words.ts'

/** A refusal parted among the fields that are shown: what stands at each, and what is told above them all. */
export type PlacedRefusal<F extends string> = Readonly<{
  at: (field: F) => string | undefined
  above: Refusal | undefined
}>

/**
 * Puts a refusal to the field it is about, `form.holeMm` or a part of it; one about anything that is not
 * shown stands above, so that none is ever lost.
 */
export function placeRefusal<F extends string>(
  refusal: Refusal | undefined,
  fields: readonly F[],
): PlacedRefusal<F> {
  const where = `${refusal?.field ?? ''}.`
  const found = fields.find((field) => where.startsWith(`${field}.`))
  return {
    at: (field) => (refusal && field === found ? refusalWords(refusal) : undefined),
    above: found === undefined ? refusal : undefined,
  }
}
