import type { Refusal } from '../../../../shared-core/refusal.ts'

/** Beads that a way in draws at once; larger pieces are put together from panels. */
export const MOST_BEADS = 250_000

/** Why a size is not drawn here, or `undefined` when it is. */
export function tooManyBeads(
  { columns, rows }: Readonly<{ columns: number; rows: number }>,
  decimalCount: (count: number) => string,
): Refusal | undefined {
  if (columns * rows <= MOST_BEADS) return undefined
  return {
    code: 'new-too-many-beads',
    message: `${decimalCount(columns)} by ${decimalCount(rows)} would be ${decimalCount(columns * rows)} beads.`,
    next: `Begin with at most ${decimalCount(MOST_BEADS)} beads, and put larger pieces together from panels.`,
  }
}
