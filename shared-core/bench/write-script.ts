import { slotLabel } from '../chart/chart.ts'
import type { DesignBody } from '../design/design.ts'
import { anchoredStrands, readyStrand, splitAnchors } from '../design/hanging-strands.ts'
import type { ReadOptions } from '../design/read-options.ts'
import {
  type ResolvedDesign,
  type ResolvedPanel,
  type ResolvedStrand,
  resolveDesign,
} from '../design/resolve-design.ts'
import { stitchPanel } from '../design/stitch-panel.ts'
import type { Refusal } from '../refusal.ts'
import { ok, type Result } from '../result.ts'
import { type Basis, weakerBasis } from '../units/spread.ts'
import type { ReaderPiece, ReaderScript } from './reader-script.ts'
import { type BeadName, type Writing, writeLoosePiece, writePanelPiece } from './write-piece.ts'

/**
 * What the row reader shows for one unit of a design: every copy of every part in the order they are
 * made, row by row and step by step, from the thread's own journey.
 *
 * A mirrored panel's second, fourth ... copy is told as its mirror image: sides and left and right
 * change, and so do the beads its strands hang from. Refuses what `readDesign` refuses.
 *
 * @param beadName - What a slot's bead is called in the brief words; its letter unless told.
 */
export function writeScript(
  body: DesignBody,
  options: ReadOptions,
  beadName: BeadName = slotLabel,
): Result<ReaderScript, Refusal> {
  const resolved = resolveDesign(body, options)
  if (!resolved.ok) return resolved
  return ok({
    pieces: piecesOf(resolved.value, beadName),
    paceBasis: paceBasisOf(resolved.value),
  })
}

/** As well known as the least known of the stitches it takes. */
function paceBasisOf({ context: { pace }, panels, strands }: ResolvedDesign): Basis {
  const kinds = [
    ...panels.map(({ chart }) => chart.stitch),
    ...(strands.length > 0 ? (['strand'] as const) : []),
  ]
  return kinds.map((kind) => pace.perBeadS[kind].basis).reduce(weakerBasis, 'exact')
}

function piecesOf(
  { context, panels, strands }: ResolvedDesign,
  beadName: BeadName,
): readonly ReaderPiece[] {
  const writing = { context, beadName }
  const byPanel = anchoredStrands(panels, strands)
  const pieces = new Map<string, readonly ReaderPiece[]>()
  const loose = new Set(strands)
  for (const panel of panels) {
    const made = panelPieces(writing, panel, byPanel.get(panel.panel.id) ?? [])
    pieces.set(panel.panel.id, made.pieces)
    for (const strand of made.hung) loose.delete(strand)
  }
  const [anyForm] = context.options.forms
  for (const strand of loose) {
    const fallback = panels[0]?.form ?? anyForm
    if (fallback === undefined) continue
    const ready = readyStrand(context, strand, fallback)
    pieces.set(
      strand.strand.id,
      copiesOf(strand.strand.copies, () => writeLoosePiece(writing, ready)),
    )
  }
  return context.body.parts.flatMap(({ id }) => pieces.get(id) ?? [])
}

function panelPieces(
  writing: Writing,
  resolved: ResolvedPanel,
  strands: readonly ResolvedStrand[],
) {
  const { context } = writing
  const { panel, form } = resolved
  const stitched = stitchPanel(context, resolved)
  const { anchored } = splitAnchors(stitched, strands)
  const ready = anchored.map((strand) => readyStrand(context, strand, form))
  const pieces = copiesOf(panel.copies, (isImage) =>
    writePanelPiece(writing, stitched, ready, panel.mirrored && isImage),
  )
  return { pieces, hung: anchored }
}

type OnePiece = Omit<ReaderPiece, 'copy' | 'copies'>

/** Copies of a piece; what is alike is written once. */
function copiesOf(copies: number, write: (isImage: boolean) => OnePiece): readonly ReaderPiece[] {
  const first = write(false)
  const second = copies > 1 ? write(true) : first
  return Array.from({ length: copies }, (_, copy) => ({
    ...(copy % 2 === 0 ? first : second),
    copy,
    copies,
  }))
}
