import { findForm, findThread } from '../../../../shared-core/beads/bead-tables.ts'
import type { BeadTables } from '../../../../shared-core/beads/user-forms.ts'
import { fromChartJson } from '../../../../shared-core/chart/chart-json.ts'
import { threadGapMm } from '../../../../shared-core/chart/stitch-pitch.ts'
import type { DesignBody, Panel } from '../../../../shared-core/design/design.ts'
import type { Refusal } from '../../../../shared-core/refusal.ts'
import { err, ok, type Result } from '../../../../shared-core/result.ts'
import { formatCount } from '../../../../shared-core/units/format-number.ts'
import { buildGrid } from '../../../drawing/bead-grid.ts'
import type { BeadLook } from '../../../drawing/bead-look.ts'
import { type BeadScene, beadReach } from '../../../drawing/bead-scene.ts'
import { chartScene } from '../../../drawing/chart-scene.ts'
import { paintRegion } from '../../../drawing/paint-region.ts'

/** What a canvas holds on every system we know, with room to spare, and what a file dialog takes. */
export const MOST = { sidePx: 16_000, areaPx: 48_000_000, bytes: 36 * 1024 * 1024 } as const

export type Looks = readonly Omit<BeadLook, 'family'>[]

/** A panel's beads as they lie, or nothing when it has none. */
export function panelScene(
  panel: Panel,
  body: DesignBody,
  looks: Looks,
  tables: BeadTables,
): BeadScene | undefined {
  const form = findForm(tables, panel.formId)
  const chart = fromChartJson(panel.chart)
  if (form === undefined) return undefined
  const thread = findThread(tables, body.threadId)
  const threadMm = threadGapMm(thread?.diameterMm.value ?? 0)
  const scene = chartScene({ chart, form, palette: looks, threadMm })
  return scene.xMm.length === 0 ? undefined : scene
}

export type PictureSize = Readonly<{
  widthPx: number
  heightPx: number
  marginPx: number
  scale: number
}>

/** How large a picture is at so many pixels to a bead's width, or why it would be too large. */
export function pictureSize(scene: BeadScene, pxPerBead: number): Result<PictureSize, Refusal> {
  const scale = pxPerBead / scene.beadWidthMm
  const reach = beadReach(scene)
  const marginPx = Math.ceil(pxPerBead * 0.6 + Math.max(reach.xMm, reach.yMm) * scale * 0.2)
  const widthPx = Math.ceil(scene.widthMm * scale) + 2 * marginPx
  const heightPx = Math.ceil(scene.heightMm * scale) + 2 * marginPx
  const isTooLarge = Math.max(widthPx, heightPx) > MOST.sidePx || widthPx * heightPx > MOST.areaPx
  return isTooLarge ? err(tooLarge(widthPx, heightPx)) : ok({ widthPx, heightPx, marginPx, scale })
}

/** Paints a scene whole, without a ground, into the bytes of a PNG. */
export async function paintPng(
  scene: BeadScene,
  { widthPx, heightPx, marginPx, scale }: PictureSize,
): Promise<Blob> {
  const canvas = new OffscreenCanvas(widthPx, heightPx)
  const brush = canvas.getContext('2d')
  if (brush === null) throw new Error('this window gave no canvas to draw on')
  const box = { left: -1, top: -1, right: scene.widthMm + 1, bottom: scene.heightMm + 1 }
  const region = { box, leftPx: -marginPx, topPx: -marginPx, scale }
  paintRegion(brush, scene, buildGrid(scene), region)
  return canvas.convertToBlob({ type: 'image/png' })
}

function tooLarge(widthPx: number, heightPx: number): Refusal {
  return {
    code: 'picture-too-large',
    message: `That would be ${formatCount(widthPx)} × ${formatCount(heightPx)} pixels, more than one picture can hold.`,
    next: 'Choose fewer pixels a bead, or save the chart as SVG, which has no such limit.',
  }
}
