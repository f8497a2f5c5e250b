import { matchWords } from '../../../app/match-words.ts'
import type { DesignRow } from './design-row.ts'

/** What the gallery is ordered by. */
export type Order = 'name' | 'newest' | 'makeable' | 'sold' | 'earned'

export const orderOptions = [
  { value: 'name', label: 'By name' },
  { value: 'newest', label: 'Newest first' },
  { value: 'makeable', label: 'Makeable now' },
  { value: 'sold', label: 'Most sold' },
  { value: 'earned', label: 'Most earned' },
] as const satisfies readonly { value: Order; label: string }[]

type Arrangement = Readonly<{ order: Order; tag: string | null; wanted?: string }>

const byName = new Intl.Collator('en-GB', { numeric: true, sensitivity: 'base' })

/** The designs with a tag that answer what was typed, in the order asked for; equal ones by name. */
export function arrangeDesigns(
  designs: readonly DesignRow[],
  { order, tag, wanted = '' }: Arrangement,
): readonly DesignRow[] {
  return designs
    .filter(({ tags }) => tag === null || tags.includes(tag))
    .filter(({ name, tags }) => matchWords(wanted, `${name} ${tags.join(' ')}`) > 0)
    .toSorted((a, b) => weigh(b, order) - weigh(a, order) || byName.compare(a.name, b.name))
}

function weigh({ savedAtMs, makeable, sold, takenMinor }: DesignRow, order: Order): number {
  switch (order) {
    case 'name':
      return 0
    case 'newest':
      return savedAtMs
    case 'makeable':
      // Designs without beads come after those of which none can be made.
      return makeable ?? -1
    case 'sold':
      return sold
    case 'earned':
      return takenMinor
  }
}

/** Every tag in use, by name. */
export function tagsOf(designs: readonly DesignRow[]): readonly string[] {
  return [...new Set(designs.flatMap(({ tags }) => tags))].toSorted(byName.compare)
}
