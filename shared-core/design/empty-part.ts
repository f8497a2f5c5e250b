import type { RouteWarning } from '../route/route.ts'
import type { Part } from './design.ts'

/**
 * Warns of a part in which there is nothing to stitch: it takes no bead, no thread and no time.
 *
 * @param beads beads of one copy
 * @returns `no-beads`, or nothing
 */
export function emptyPart(part: Part, beads: number): readonly RouteWarning[] {
  if (beads > 0) return []
  return [
    {
      code: 'no-beads',
      severity: 'warning',
      message: `${part.name} has no beads.`,
      next:
        part.kind === 'panel'
          ? 'Draw its first row on the drawing table, or take the part out.'
          : 'Say which beads it takes, such as 5A 1B, or take the part out.',
      beads: [],
    },
  ]
}
