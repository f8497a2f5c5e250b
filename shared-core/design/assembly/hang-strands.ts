import type { BeadForm } from '../../beads/bead-form.ts'
import type { BeadIndex } from '../../chart/bead-index.ts'
import { holeEndX, holeEndY, type PartGeometry } from '../../route/part-geometry.ts'
import { hangingEnds } from '../../stitches/strand/hang-strand.ts'
import type { PointMm } from '../../stitches/strand/point-mm.ts'
import { readStrandBeads } from '../../stitches/strand/strand-beads.ts'
import { strandGeometry } from '../../stitches/strand/strand-geometry.ts'
import type { DesignBody, Panel, Strand } from '../design.ts'
import { type PlacedFinding, shapeOfFinding } from './placed-finding.ts'
import {
  fringePlaces,
  loopMiddle,
  loopPlaces,
  type PanelEnd,
  ringPlaces,
  type StrandPlaces,
} from './strand-places.ts'

/** One copy of a strand where it lies beside its panel, in the panel's mm. */
export type PlacedStrand = Readonly<{
  partId: string
  name: string
  slots: Uint16Array
  forms: readonly BeadForm[]
  places: StrandPlaces
  /** What it carries: a loop at its middle, a fringe at its foot. */
  finding: PlacedFinding | undefined
  geometry: PartGeometry
  isFolded: (bead: number) => boolean
}>

/** What strands are laid with: the design, its thread's diameter in mm, and the form of a slot's beads. */
export type StrandContext = Readonly<{
  body: DesignBody
  threadMm: number
  formOfSlot: (slot: number, fallback: BeadForm) => BeadForm
}>

type PanelSite = Readonly<{ form: BeadForm; index: BeadIndex; geometry: PartGeometry }>

/** Every copy of every strand that hangs from one copy of a panel; a strand whose bead is gone is left out. */
export function hangStrands(
  panel: Panel,
  context: StrandContext & PanelSite,
): readonly PlacedStrand[] {
  return context.body.parts.flatMap((part) => {
    if (part.kind !== 'strand' || part.anchor?.panelId !== panel.id) return []
    return copiesOf(part, context)
  })
}

function copiesOf(strand: Strand, context: StrandContext & PanelSite): readonly PlacedStrand[] {
  const { index, geometry, body } = context
  const ready = strandOf(strand, context, context.form)
  if (ready === undefined || ready.slots.length === 0 || strand.anchor === undefined) return []
  const { row, bead: at } = strand.anchor
  const from = (index.rowStart[row] ?? 0) + at
  const last = (index.rowStart[row + 1] ?? 0) - 1
  // A bead that has been drawn away holds nothing; the reading says so.
  if (from > last) return []
  const site = { index, geometry, isWorked: () => true }
  const lengths = ready.forms.map((form) => form.lengthMm.value)
  if (strand.shape === 'loop') {
    const { leaves, returns } = hangingEnds(site, from, 'loop')
    const [out, back] = [end(geometry, leaves), end(geometry, returns)]
    const places = loopPlaces(out, back, leaves.edge, lengths)
    const finding = findingOf(body, strand, loopMiddle(out, back, leaves.edge, lengths))
    return [{ ...ready, places, finding }]
  }
  return Array.from({ length: strand.copies }, (_, copy) => {
    const { leaves } = hangingEnds(site, Math.min(last, from + copy), 'fringe')
    return hung(ready, body, strand, end(geometry, leaves))
  })
}

type Ready = Omit<PlacedStrand, 'places' | 'finding'>

function hung(ready: Ready, body: DesignBody, strand: Strand, from: PointMm): PlacedStrand {
  const lengths = ready.forms.map((form) => form.lengthMm.value)
  const lengthMm = lengths.reduce((sum, mm) => sum + mm, 0)
  const foot = { at: { x: from.x, y: from.y + lengthMm }, way: { x: 0, y: 1 } }
  return { ...ready, places: fringePlaces(from, lengths), finding: findingOf(body, strand, foot) }
}

function findingOf(
  { extras }: DesignBody,
  { findingId }: Strand,
  place: Pick<PlacedFinding, 'at' | 'way'>,
): PlacedFinding | undefined {
  const found = extras.find(({ id }) => id === findingId)
  return found && { ...place, shape: shapeOfFinding(found.name), acrossMm: 0 }
}

/** A strand that hangs from nothing, a piece of its own; `copies` of it go into one unit. */
export type LooseStrand = Readonly<{ placed: PlacedStrand; copies: number }>

/** The strands that hang from nothing; a slot without a form takes the fallback. */
export function placeLoose(context: StrandContext, fallback: BeadForm): readonly LooseStrand[] {
  const panels = context.body.parts.filter((part) => part.kind === 'panel')
  return context.body.parts.flatMap((part) => {
    if (part.kind !== 'strand') return []
    if (panels.some(({ id }) => id === part.anchor?.panelId)) return []
    const ready = strandOf(part, context, fallback)
    if (ready === undefined) return []
    return [{ placed: loose(ready, context.body, part), copies: part.copies }]
  })
}

function loose(ready: Ready, body: DesignBody, strand: Strand): PlacedStrand {
  const origin = { x: 0, y: 0 }
  if (strand.shape === 'fringe') return hung(ready, body, strand, origin)
  const lengths = ready.forms.map((form) => form.lengthMm.value)
  const top = { at: origin, way: { x: 0, y: -1 } }
  return {
    ...ready,
    places: ringPlaces(origin, lengths),
    finding: findingOf(body, strand, top),
  }
}

function strandOf(
  strand: Strand,
  { formOfSlot, threadMm }: StrandContext,
  fallback: BeadForm,
): Ready | undefined {
  const slots = readStrandBeads(strand.beads)
  if (slots === undefined) return undefined
  const forms = Array.from(slots, (slot) => formOfSlot(slot, fallback))
  const middle = Math.floor(slots.length / 2)
  const isLoop = strand.shape === 'loop'
  return {
    partId: strand.id,
    name: strand.name,
    slots,
    forms,
    geometry: strandGeometry(forms, threadMm, fallback.lengthMm.value),
    isFolded: (bead) => isLoop && bead >= middle && bead > 0,
  }
}

function end(geometry: PartGeometry, { bead, edge }: PanelEnd): PointMm {
  return { x: holeEndX(geometry, bead, edge), y: holeEndY(geometry, bead, edge) }
}
