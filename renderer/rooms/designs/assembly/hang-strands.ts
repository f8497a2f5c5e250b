import type { BeadForm } from '../../../../shared-core/beads/bead-form.ts'
import type { BeadIndex } from '../../../../shared-core/chart/bead-index.ts'
import type { DesignBody, Panel, Strand } from '../../../../shared-core/design/design.ts'
import {
  holeEndX,
  holeEndY,
  type PartGeometry,
} from '../../../../shared-core/route/part-geometry.ts'
import type { PointMm } from '../../../../shared-core/stitches/strand/point-mm.ts'
import { readStrandBeads } from '../../../../shared-core/stitches/strand/strand-beads.ts'
import { strandGeometry } from '../../../../shared-core/stitches/strand/strand-geometry.ts'
import type { PlainPart } from '../reading/plain-reading.ts'
import type { Piece } from './join-pieces.ts'
import {
  fringePlaces,
  hangsBetween,
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
  geometry: PartGeometry
  isFolded: (bead: number) => boolean
}>

type StrandContext = Readonly<{
  body: DesignBody
  threadMm: number
  formOfSlot: (slot: number, fallback: BeadForm) => BeadForm
  parts: readonly PlainPart[]
}>

type PanelSite = Readonly<{ form: BeadForm; index: BeadIndex; geometry: PartGeometry }>

/** Every copy of every strand that hangs from a panel. */
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
  const { index, geometry } = context
  const route = context.parts.find(({ partId }) => partId === strand.id)?.route
  const hangs = route && hangsBetween(route)
  const ready = strandOf(strand, context, context.form)
  if (hangs === undefined || ready === undefined || strand.anchor === undefined) return []
  const { leaves, returns } = hangs
  const lengths = ready.forms.map((form) => form.lengthMm.value)
  if (strand.shape === 'loop') {
    const places = loopPlaces(end(geometry, leaves), end(geometry, returns), leaves.edge, lengths)
    return [{ ...ready, places }]
  }
  // What was read is the last copy; the others hang from the beads before it in the row.
  const from = (index.rowStart[strand.anchor.row] ?? 0) + strand.anchor.bead
  const last = (index.rowStart[strand.anchor.row + 1] ?? 1) - 1
  return Array.from({ length: strand.copies }, (_, copy) => {
    const bead = Math.min(last, from + copy)
    return { ...ready, places: fringePlaces(end(geometry, { ...leaves, bead }), lengths) }
  })
}

/** Strands that hang from nothing, each a piece of its own. */
export function placeLoose(context: StrandContext, fallback: BeadForm): readonly Piece[] {
  const panels = context.body.parts.filter((part) => part.kind === 'panel')
  return context.body.parts.flatMap((part) => {
    if (part.kind !== 'strand') return []
    if (panels.some(({ id }) => id === part.anchor?.panelId)) return []
    const ready = strandOf(part, context, fallback)
    if (ready === undefined) return []
    const lengths = ready.forms.map((form) => form.lengthMm.value)
    const origin = { x: 0, y: 0 }
    const places =
      part.shape === 'loop' ? ringPlaces(origin, lengths) : fringePlaces(origin, lengths)
    return [{ partId: part.id, name: part.name, strands: [{ ...ready, places }] }]
  })
}

function strandOf(
  strand: Strand,
  { formOfSlot, threadMm }: StrandContext,
  fallback: BeadForm,
): Omit<PlacedStrand, 'places'> | undefined {
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
