import type { BeadForm } from '../../../../shared-core/beads/bead-form.ts'
import { findForm, findThread } from '../../../../shared-core/beads/bead-tables.ts'
import type { BeadTables } from '../../../../shared-core/beads/user-forms.ts'
import { type BeadIndex, indexBeads } from '../../../../shared-core/chart/bead-index.ts'
import { fromChartJson } from '../../../../shared-core/chart/chart-json.ts'
import { threadGapMm } from '../../../../shared-core/chart/stitch-pitch.ts'
import {
  hangStrands,
  type LooseStrand,
  placeLoose,
} from '../../../../shared-core/design/assembly/hang-strands.ts'
import { panelFindings } from '../../../../shared-core/design/assembly/panel-findings.ts'
import type { PlacedFinding } from '../../../../shared-core/design/assembly/placed-finding.ts'
import type { DesignBody, Panel } from '../../../../shared-core/design/design.ts'
import type { PartGeometry } from '../../../../shared-core/route/part-geometry.ts'
import { panelGeometry } from '../../../../shared-core/route/part-geometry.ts'
import type { HoleEnds } from '../../../../shared-core/route/route-line.ts'
import type { BeadLook } from '../../../drawing/bead-look.ts'
import type { BeadScene } from '../../../drawing/bead-scene.ts'
import { chartScene } from '../../../drawing/chart-scene.ts'
import type { SizeMm } from '../../../drawing/view.ts'
import { joinPieces, type Piece } from './join-pieces.ts'
import { mirrorPiece } from './mirror-piece.ts'

/** A part where it lies in the picture: its beads are numbered on from `firstBead`. */
export type PlacedPart = Readonly<{
  partId: string
  name: string
  /** Which copy of it this is, from 0, and whether it is the other's mirror image. */
  copy: number
  isMirrored: boolean
  firstBead: number
  beads: number
  geometry: PartGeometry
  /** Where its beads lie in their rows; a strand has no rows. */
  index: BeadIndex | undefined
  /** Its hole ends in the picture; those of the panel it joins, for a strand that hangs. */
  own: HoleEnds
  joined: HoleEnds | undefined
}>

/** A design as it hangs, drawn in true proportion: every panel with its strands and findings, side by side. */
export type Assembly = Readonly<{
  scene: BeadScene
  parts: readonly PlacedPart[]
  findings: readonly PlacedFinding[]
}>

/** A design, the tables it is measured by, and what its slots look like. */
export type AssembleInput = Readonly<{
  body: DesignBody
  tables: BeadTables
  /** Colour and finish of each slot, by its index. */
  looks: readonly Omit<BeadLook, 'family'>[]
  /** One of each part, as its thread is told; or every copy that a unit has, as it is sold. */
  copies?: 'one' | 'all'
}>

/** Copies drawn of a part that a unit has very many of: beyond these each would be too small to see. */
const MOST_COPIES = 4

/** Puts a design's parts together; `undefined` when it has no part that can be drawn. */
export function assemble({
  body,
  tables,
  looks,
  copies = 'one',
}: AssembleInput): Assembly | undefined {
  const threadMm = findThread(tables, body.threadId)?.diameterMm.value ?? 0
  const formOfSlot = (slot: number, fallback: BeadForm) =>
    findForm(tables, body.palette[slot]?.formId ?? '') ?? fallback
  const palette = body.palette.map((slot, at) => ({
    hex: looks[at]?.hex ?? slot.colourHex,
    finish: looks[at]?.finish ?? slot.finish,
    family: findForm(tables, slot.formId)?.family ?? ('cylinder' as const),
  }))
  const context = { body, threadMm, formOfSlot }
  const pieces: Piece[] = []
  for (const part of body.parts) {
    if (part.kind !== 'panel') continue
    const form = findForm(tables, part.formId)
    if (form !== undefined) pieces.push(panelPiece(part, { form, palette, ...context }))
  }
  const [first] = tables.forms
  if (first !== undefined) pieces.push(...placeLoose(context, first).map(loosePiece))
  const drawn = copies === 'one' ? pieces : pieces.flatMap(everyCopy)
  return joinPieces(drawn, { palette, boxOfSlot: boxes(body, tables) })
}

/** Each copy of a piece; every second one of a mirrored pair is the mirror image. */
function everyCopy(piece: Piece): readonly Piece[] {
  return Array.from({ length: Math.min(piece.copies, MOST_COPIES) }, (_, copy) =>
    piece.mirrors === true && copy % 2 === 1 ? mirrorPiece(piece) : piece,
  )
}

/** An upright bead of each slot's form; holes of panels that lie across turn it. */
function boxes(body: DesignBody, tables: BeadTables): readonly SizeMm[] | undefined {
  const forms = body.palette.map(({ formId }) => findForm(tables, formId))
  if (new Set(forms).size < 2) return undefined
  return forms.map((form) => ({
    widthMm: form?.diameterMm.value ?? 1,
    heightMm: form?.lengthMm.value ?? 1,
  }))
}

type PanelContext = Readonly<{
  body: DesignBody
  form: BeadForm
  palette: readonly BeadLook[]
  threadMm: number
  formOfSlot: (slot: number, fallback: BeadForm) => BeadForm
}>

function panelPiece(panel: Panel, context: PanelContext): Piece {
  const { form, palette, threadMm } = context
  const chart = fromChartJson(panel.chart)
  const index = indexBeads(chart)
  const scene = chartScene({ chart, form, palette, threadMm: threadGapMm(threadMm) })
  const geometry = panelGeometry(chart, index, form, threadMm)
  const strands = hangStrands(panel, { ...context, index, geometry })
  const findings = panelFindings(context.body, panel, geometry)
  const { id: partId, name, copies, mirrored: mirrors } = panel
  const what = { partId, name, isMirrored: false, copies, mirrors }
  return { ...what, scene, index, geometry, strands, findings }
}

function loosePiece({ placed, copies }: LooseStrand): Piece {
  const { partId, name } = placed
  return { partId, name, isMirrored: false, copies, strands: [placed], findings: [] }
}
