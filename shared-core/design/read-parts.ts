import { anchoredStrands, readyStrand, splitAnchors } from './hanging-strands.ts'
import { panelJourney } from './read-journey.ts'
import type { ReadContext } from './read-options.ts'
import { readPanelPart } from './read-panel-part.ts'
import type { ReadPart } from './read-part.ts'
import { readHangingStrand, readLooseStrand } from './read-strand-part.ts'
import type { ResolvedPanel, ResolvedStrand } from './resolve-design.ts'
import { stitchPanel } from './stitch-panel.ts'

/**
 * Reads every part: panels with the strands that hang from them, then strands that hang from nothing.
 *
 * @throws Stopped when the reading is cancelled.
 */
export function readParts(
  context: ReadContext,
  panels: readonly ResolvedPanel[],
  strands: readonly ResolvedStrand[],
): readonly ReadPart[] {
  const read = new Map<string, ReadPart>()
  const byPanel = anchoredStrands(panels, strands)
  for (const resolved of panels) {
    context.checkpoint()
    readPanel(context, resolved, byPanel.get(resolved.panel.id) ?? [], read)
  }
  const fallback = panels[0]?.form ?? context.options.forms[0]
  for (const strand of strands) {
    context.checkpoint()
    const { id, anchor } = strand.strand
    if (read.has(id) || fallback === undefined) continue
    const ready = readyStrand(context, strand, fallback)
    read.set(id, readLooseStrand(context, ready, anchor !== undefined))
  }
  return context.body.parts.flatMap(({ id }) => read.get(id) ?? [])
}

function readPanel(
  context: ReadContext,
  resolved: ResolvedPanel,
  strands: readonly ResolvedStrand[],
  read: Map<string, ReadPart>,
): void {
  const { panel, form } = resolved
  const stitched = stitchPanel(context, resolved)
  const { anchored, lost } = splitAnchors(stitched, strands)
  const ready = anchored.map((strand) => readyStrand(context, strand, form))
  const journey = panelJourney(stitched, ready, context)
  read.set(panel.id, readPanelPart(context, stitched, journey, ready))
  for (const strand of ready) {
    const part = readHangingStrand(context, stitched, journey, strand)
    if (part !== undefined) read.set(strand.strand.id, part)
  }
  for (const strand of lost) {
    const alone = readyStrand(context, strand, form)
    read.set(strand.strand.id, readLooseStrand(context, alone, true))
  }
}
