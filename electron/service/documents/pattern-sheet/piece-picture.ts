import type { BeadForm } from '../../../../shared-core/beads/bead-form.ts'
import { findForm, findThread, referenceTables } from '../../../../shared-core/beads/bead-tables.ts'
import { indexBeads } from '../../../../shared-core/chart/bead-index.ts'
import { fromChartJson } from '../../../../shared-core/chart/chart-json.ts'
import { layoutChart } from '../../../../shared-core/chart/layout.ts'
import { beadBox, beadTilt, threadGapMm } from '../../../../shared-core/chart/stitch-pitch.ts'
import type { Panel, Strand } from '../../../../shared-core/design/design.ts'
import { readStrandBeads } from '../../../../shared-core/stitches/strand/strand-beads.ts'
import { type DrawnBead, isRoundForm } from './bead-marks.ts'
import { hangOnArc, type ThreadPlace } from './hang-on-arc.ts'
import type { SheetData } from './sheet-data.ts'
import type { SlotLook } from './slot-look.ts'

/** The whole unit in true proportion, mm of life from its own upper left corner; `rings` stand for findings. */
export type PiecePicture = Readonly<{
  widthMm: number
  heightMm: number
  beads: readonly DrawnBead[]
  rings: readonly (readonly [x: number, y: number])[]
}>

type Shapes = Pick<PiecePicture, 'beads' | 'rings'>

/** Copies of a panel drawn side by side, at most: more would make each too small to see. */
const MOST_COPIES = 4
/** A finding's ring, mm across. */
export const RING_MM = 2.4

/** Draws every panel with what hangs from it, and every copy in a unit beside the other. */
export function piecePicture(data: SheetData, lookOf: (slot: number) => SlotLook): PiecePicture {
  const { parts } = data.body
  const pieces: Shapes[] = []
  for (const part of parts) {
    if (part.kind === 'strand') {
      if (!parts.some(({ id }) => id === part.anchor?.panelId)) {
        pieces.push(looseStrand(part, lookOf))
      }
      continue
    }
    const form = findForm(referenceTables, part.formId)
    if (form === undefined) continue
    const piece = drawPanel(part, form, data, lookOf)
    for (let copy = 0; copy < Math.min(part.copies, MOST_COPIES); copy += 1) {
      pieces.push(part.mirrored && copy % 2 === 1 ? mirrored(piece) : piece)
    }
  }
  return sideBySide(pieces.filter(({ beads }) => beads.length > 0))
}

function drawPanel(
  panel: Panel,
  form: BeadForm,
  { body }: SheetData,
  lookOf: (slot: number) => SlotLook,
): Shapes {
  const chart = fromChartJson(panel.chart)
  const thread = findThread(referenceTables, body.threadId)
  const threadMm = threadGapMm(thread?.diameterMm.value ?? 0)
  const { pitch, xMm, yMm } = layoutChart(chart, form, { threadMm })
  const { rowOf, atOf, slotOf, rowStart, count } = indexBeads(chart)
  const beads: DrawnBead[] = []
  for (let bead = 0; bead < count; bead += 1) {
    const look = lookOf(slotOf[bead] ?? 0)
    beads.push({
      xMm: xMm[bead] ?? 0,
      yMm: yMm[bead] ?? 0,
      ...beadBox(pitch, rowOf[bead] ?? 0),
      turnRad: pitch.leanRad === 0 ? 0 : beadTilt(pitch, atOf[bead] ?? 0),
      colour: look.colourHex,
      finish: look.finish,
      isRound: isRoundForm(form),
    })
  }
  const hung = body.parts.flatMap((part) => {
    if (part.kind !== 'strand' || part.anchor?.panelId !== panel.id) return []
    const { row } = part.anchor
    const first = (rowStart[row] ?? 0) + part.anchor.bead
    const last = (rowStart[row + 1] ?? count) - 1
    const from = beads[first]
    if (from === undefined || first > last) return []
    const isLow = row >= chart.rows.length / 2
    if (part.shape === 'loop') {
      const to = beads[Math.min(last, first + 1)] ?? from
      return [hungLoop(part, { from, to, side: isLow ? 1 : -1 }, lookOf)]
    }
    const copies = Math.min(part.copies, last - first + 1)
    return Array.from({ length: copies }, (_, copy) => {
      const at = beads[first + copy] ?? from
      return hungFringe(part, at.xMm, at.yMm + at.heightMm / 2, lookOf)
    })
  })
  return joined([{ beads, rings: [] }, ...hung])
}

function hungFringe(
  strand: Strand,
  xMm: number,
  topMm: number,
  lookOf: (slot: number) => SlotLook,
): Shapes {
  const { lengths, beadAt } = strandBeads(strand, lookOf)
  return {
    beads: alongMm(lengths).map((mm, i) => beadAt(i, { xMm, yMm: topMm + mm, turnRad: 0 })),
    rings: [],
  }
}

function hungLoop(
  strand: Strand,
  { from, to, side }: Readonly<{ from: DrawnBead; to: DrawnBead; side: -1 | 1 }>,
  lookOf: (slot: number) => SlotLook,
): Shapes {
  const { lengths, beadAt } = strandBeads(strand, lookOf)
  const lengthMm = lengths.reduce((sum, mm) => sum + mm, 0)
  const yMm = from.yMm + (side * from.heightMm) / 2
  const span = { fromX: from.xMm, toX: to.xMm, yMm, lengthMm, side }
  const places = hangOnArc(span, [...alongMm(lengths), lengthMm / 2])
  const top = places.at(-1)
  const hasFinding = strand.findingId !== undefined && top !== undefined
  return {
    beads: places.slice(0, -1).map((place, i) => beadAt(i, place)),
    rings: hasFinding ? [[top.xMm, top.yMm + side * (RING_MM / 2 + 0.5)]] : [],
  }
}

function looseStrand(strand: Strand, lookOf: (slot: number) => SlotLook): Shapes {
  return hungFringe(strand, 0, 0, lookOf)
}

function strandBeads(strand: Strand, lookOf: (slot: number) => SlotLook) {
  const looks = Array.from(readStrandBeads(strand.beads) ?? [], lookOf)
  const fallback = referenceTables.forms[0]
  const formOf = (look: SlotLook | undefined) => look?.form ?? fallback
  const lengths = looks.map((look) => formOf(look)?.lengthMm.value ?? 1)
  const beadAt = (i: number, place: ThreadPlace): DrawnBead => {
    const form = formOf(looks[i])
    return {
      ...place,
      widthMm: form?.diameterMm.value ?? 1,
      heightMm: form?.lengthMm.value ?? 1,
      colour: looks[i]?.colourHex ?? '#888888',
      finish: looks[i]?.finish ?? 'opaque',
      isRound: form !== undefined && isRoundForm(form),
    }
  }
  return { lengths, beadAt }
}

/** The middle of each bead along its thread. */
function alongMm(lengths: readonly number[]): readonly number[] {
  let mm = 0
  return lengths.map((length) => {
    mm += length
    return mm - length / 2
  })
}

function joined(shapes: readonly Shapes[]): Shapes {
  return {
    beads: shapes.flatMap(({ beads }) => beads),
    rings: shapes.flatMap(({ rings }) => rings),
  }
}

function mirrored({ beads, rings }: Shapes): Shapes {
  return {
    beads: beads.map((bead) => ({ ...bead, xMm: -bead.xMm, turnRad: -bead.turnRad })),
    rings: rings.map(([x, y]) => [-x, y]),
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
      rings: piece.rings.map(([x, y]) => [x + dx, y + dy]),
    })
    across += box.right - box.left
    bottom = Math.max(bottom, box.bottom)
  })
  const isEmpty = pieces.length === 0
  return { widthMm: across, heightMm: isEmpty ? 0 : bottom - top, ...joined(placed) }
}

function boxOf({ beads, rings }: Shapes) {
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
  for (const [x, y] of rings) hold(x, y, RING_MM / 2, RING_MM / 2)
  return { left, top, right, bottom }
}
