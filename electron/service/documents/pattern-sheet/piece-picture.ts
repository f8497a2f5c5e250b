import type { BeadForm } from '../../../../shared-core/beads/bead-form.ts'
import { findForm, findThread } from '../../../../shared-core/beads/bead-tables.ts'
import { indexBeads } from '../../../../shared-core/chart/bead-index.ts'
import { fromChartJson } from '../../../../shared-core/chart/chart-json.ts'
import { layoutChart } from '../../../../shared-core/chart/layout.ts'
import { beadBox, beadTilt, threadGapMm } from '../../../../shared-core/chart/stitch-pitch.ts'
import {
  hangStrands,
  type PlacedStrand,
  placeLoose,
  type StrandContext,
} from '../../../../shared-core/design/assembly/hang-strands.ts'
import { panelFindings } from '../../../../shared-core/design/assembly/panel-findings.ts'
import {
  findingCorners,
  type PlacedFinding,
} from '../../../../shared-core/design/assembly/placed-finding.ts'
import type { Panel } from '../../../../shared-core/design/design.ts'
import { panelGeometry } from '../../../../shared-core/route/part-geometry.ts'
import { type DrawnBead, isRoundForm } from './bead-marks.ts'
import type { SheetData } from './sheet-data.ts'
import type { SlotLook } from './slot-look.ts'

/** The whole unit in true proportion, mm of life from its own upper left corner. */
export type PiecePicture = Readonly<{
  widthMm: number
  heightMm: number
  beads: readonly DrawnBead[]
  findings: readonly PlacedFinding[]
}>

type Shapes = Pick<PiecePicture, 'beads' | 'findings'>
type LookOf = (slot: number) => SlotLook

/** Copies of a panel drawn side by side, at most: more would make each too small to see. */
const MOST_COPIES = 4

/** Draws every panel with what hangs from it, and every copy in a unit beside the other. */
export function piecePicture({ body, tables }: SheetData, lookOf: LookOf): PiecePicture {
  const pieces: Shapes[] = []
  const threadMm = findThread(tables, body.threadId)?.diameterMm.value ?? 0
  const formOfSlot = (slot: number, fallback: BeadForm) => lookOf(slot).form ?? fallback
  const context = { body, threadMm, formOfSlot }
  for (const part of body.parts) {
    if (part.kind !== 'panel') continue
    const form = findForm(tables, part.formId)
    if (form === undefined) continue
    const piece = drawPanel(part, form, context, lookOf)
    for (let copy = 0; copy < Math.min(part.copies, MOST_COPIES); copy += 1) {
      pieces.push(part.mirrored && copy % 2 === 1 ? mirrored(piece) : piece)
    }
  }
  const [fallback] = tables.forms
  if (fallback !== undefined) {
    pieces.push(...placeLoose(context, fallback).map(({ placed }) => drawStrand(placed, lookOf)))
  }
  return sideBySide(pieces.filter(({ beads }) => beads.length > 0))
}

function drawPanel(panel: Panel, form: BeadForm, context: StrandContext, lookOf: LookOf): Shapes {
  const chart = fromChartJson(panel.chart)
  const index = indexBeads(chart)
  const geometry = panelGeometry(chart, index, form, context.threadMm)
  const { xMm, yMm } = geometry
  const { pitch } = layoutChart(chart, form, { threadMm: threadGapMm(context.threadMm) })
  const { rowOf, atOf, slotOf, count } = index
  const beads = Array.from({ length: count }, (_, bead): DrawnBead => {
    const { colourHex: colour, finish } = lookOf(slotOf[bead] ?? 0)
    return {
      xMm: xMm[bead] ?? 0,
      yMm: yMm[bead] ?? 0,
      ...beadBox(pitch, rowOf[bead] ?? 0),
      turnRad: pitch.leanRad === 0 ? 0 : beadTilt(pitch, atOf[bead] ?? 0),
      colour,
      finish,
      isRound: isRoundForm(form),
    }
  })
  const strands = hangStrands(panel, { ...context, form, index, geometry })
  const findings = panelFindings(context.body, panel, geometry)
  return joined([{ beads, findings }, ...strands.map((strand) => drawStrand(strand, lookOf))])
}

function drawStrand({ slots, forms, places, finding }: PlacedStrand, lookOf: LookOf): Shapes {
  const beads = forms.map((form, bead): DrawnBead => {
    const { colourHex: colour, finish } = lookOf(slots[bead] ?? 0)
    return {
      xMm: places.xMm[bead] ?? 0,
      yMm: places.yMm[bead] ?? 0,
      turnRad: places.lean[bead] ?? 0,
      widthMm: form.diameterMm.value,
      heightMm: form.lengthMm.value,
      colour,
      finish,
      isRound: isRoundForm(form),
    }
  })
  return { beads, findings: finding === undefined ? [] : [finding] }
}

function joined(shapes: readonly Shapes[]): Shapes {
  return {
    beads: shapes.flatMap(({ beads }) => beads),
    findings: shapes.flatMap(({ findings }) => findings),
  }
}

function mirrored({ beads, findings }: Shapes): Shapes {
  return {
    beads: beads.map((bead) => ({ ...bead, xMm: -bead.xMm, turnRad: -bead.turnRad })),
    findings: findings.map((finding) => ({
      ...finding,
      at: { x: -finding.at.x, y: finding.at.y },
      way: { x: -finding.way.x, y: finding.way.y },
    })),
  }
}

function sideBySide(pieces: readonly Shapes[]): PiecePicture {
  const placed: Shapes[] = []
  let across = 0
  const tops = pieces.map(boxOf)
  const top = tops.reduce((least, box) => Math.min(least, box.top), Infinity)
  let bottom = -Infinity
  pieces.forEach((piece, i) => {
    const box = tops[i] ?? boxOf(piece)
    if (i > 0) across += Math.min(10, (box.right - box.left) * 0.45)
    const [dx, dy] = [across - box.left, -top]
    placed.push({
      beads: piece.beads.map((bead) => ({ ...bead, xMm: bead.xMm + dx, yMm: bead.yMm + dy })),
      findings: piece.findings.map((finding) => ({
        ...finding,
        at: { x: finding.at.x + dx, y: finding.at.y + dy },
      })),
    })
    across += box.right - box.left
    bottom = Math.max(bottom, box.bottom)
  })
  const isEmpty = pieces.length === 0
  return { widthMm: across, heightMm: isEmpty ? 0 : bottom - top, ...joined(placed) }
}

function boxOf({ beads, findings }: Shapes) {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity]
  const hold = (x: number, y: number, halfX: number, halfY: number) => {
    left = Math.min(left, x - halfX)
    right = Math.max(right, x + halfX)
    top = Math.min(top, y - halfY)
    bottom = Math.max(bottom, y + halfY)
  }
  for (const { xMm, yMm, widthMm: w, heightMm: h, turnRad } of beads) {
    const [sine, cosine] = [Math.abs(Math.sin(turnRad)), Math.abs(Math.cos(turnRad))]
    hold(xMm, yMm, (w * cosine + h * sine) / 2, (w * sine + h * cosine) / 2)
  }
  for (const { x, y } of findings.flatMap(findingCorners)) hold(x, y, 0, 0)
  return { left, top, right, bottom }
}
