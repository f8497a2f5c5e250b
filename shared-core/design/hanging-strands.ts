import type { BeadForm } from '../beads/bead-form.ts'
import type { ReadyStrand } from './lay-strands.ts'
import type { ReadContext } from './read-options.ts'
import type { ResolvedPanel, ResolvedStrand } from './resolve-design.ts'
import type { StitchedPanel } from './stitch-panel.ts'

/** The strands of each panel, by the panel's id; what names another panel stands with none. */
export function anchoredStrands(
  panels: readonly ResolvedPanel[],
  strands: readonly ResolvedStrand[],
): ReadonlyMap<string, readonly ResolvedStrand[]> {
  const byPanel = new Map<string, ResolvedStrand[]>(panels.map(({ panel }) => [panel.id, []]))
  for (const strand of strands) byPanel.get(strand.strand.anchor?.panelId ?? '')?.push(strand)
  return byPanel
}

/** Parts the strands whose anchor is a stitched bead of the panel from those whose anchor is not there. */
export function splitAnchors({ index, draft }: StitchedPanel, strands: readonly ResolvedStrand[]) {
  const picked = new Set(
    strands.length > 0 ? draft.events.pool.subarray(0, draft.events.poolCount) : [],
  )
  const hangs = ({ strand: { anchor } }: ResolvedStrand) => {
    if (anchor === undefined) return false
    const from = index.rowStart[anchor.row]
    const to = index.rowStart[anchor.row + 1]
    if (from === undefined || to === undefined || from + anchor.bead >= to) return false
    return picked.has(from + anchor.bead)
  }
  return {
    anchored: strands.filter(hangs),
    lost: strands.filter((strand) => !hangs(strand)),
  }
}

/** A strand with the form of each of its beads; a slot without one takes the fallback. */
export function readyStrand(
  context: ReadContext,
  { strand, slots }: ResolvedStrand,
  fallback: BeadForm,
): ReadyStrand {
  return { strand, slots, forms: Array.from(slots, (slot) => context.formOfSlot(slot, fallback)) }
}
