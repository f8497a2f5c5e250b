import type { Page } from '@playwright/test'
import type { BeadScene } from '../../renderer/drawing/bead-scene.ts'
import type { View } from '../../renderer/drawing/view.ts'
import { buildLattice, fillLattice } from '../../renderer/rooms/designs/table/lattice.ts'
import { findForm, findThread, referenceTables } from '../../shared-core/beads/bead-tables.ts'
import { fromChartJson } from '../../shared-core/chart/chart-json.ts'
import { threadGapMm } from '../../shared-core/chart/stitch-pitch.ts'
import type { DesignBody } from '../../shared-core/design/design.ts'

/** What the drawing table should show of a design's first panel. */
export function sceneOf({ parts, palette, threadId }: DesignBody): BeadScene {
  const [panel] = parts
  if (panel?.kind !== 'panel') throw new Error('expected a panel')
  const form = findForm(referenceTables, panel.formId)
  if (form === undefined) throw new Error('expected a bead form of the tables')
  const looks = palette.map(({ colourHex, finish }) => ({
    hex: colourHex,
    finish,
    family: form.family,
  }))
  const threadMm = threadGapMm(findThread(referenceTables, threadId)?.diameterMm.value ?? 0)
  const chart = fromChartJson(panel.chart)
  const nothing = { row: 0, at: 0 }
  const look = { form, palette: looks, boxOfSlot: undefined, threadMm }
  const lattice = buildLattice(chart, nothing, look)
  const { slotOf } = fillLattice(lattice, chart, nothing, undefined)
  return { ...lattice.scene, slotOf }
}

/** A pixel of a canvas: red, green, blue and how much it covers, 0 to 255. */
export type Pixel = readonly [red: number, green: number, blue: number, alpha: number]

/** The beads' own canvas, or the one with crosshair and selection over it. */
export type CanvasName = 'beads' | 'over'

/** The size of the picture in pixels of the screen. */
export function canvasSize(page: Page): Promise<Readonly<{ width: number; height: number }>> {
  return page.evaluate(() => {
    const canvas = document.querySelector<HTMLCanvasElement>('.bead-picture-frame > canvas')
    return { width: canvas?.width ?? 0, height: canvas?.height ?? 0 }
  })
}

/** The mean colour round each of these pixels: a square of so many to every side. */
export function coloursAt(
  page: Page,
  canvas: CanvasName,
  points: readonly Readonly<{ x: number; y: number }>[],
  reach = 0,
): Promise<readonly Pixel[]> {
  const asked = { at: canvas === 'beads' ? 0 : 1, points, reach }
  return page.evaluate(({ at, points: wanted, reach: near }) => {
    const [...canvases] = document.querySelectorAll<HTMLCanvasElement>(
      '.bead-picture-frame > canvas',
    )
    const canvas = canvases[at]
    const brush = canvas?.getContext('2d')
    if (canvas === undefined || !brush) throw new Error('expected a canvas')
    const { width, height } = canvas
    const { data } = brush.getImageData(0, 0, width, height)
    return wanted.map(({ x, y }): Pixel => {
      const sum: [number, number, number, number] = [0, 0, 0, 0]
      let count = 0
      for (let row = Math.floor(y) - near; row <= Math.floor(y) + near; row += 1) {
        for (let column = Math.floor(x) - near; column <= Math.floor(x) + near; column += 1) {
          const isOutside = row < 0 || column < 0 || row >= height || column >= width
          for (let part = 0; part < 4; part += 1) {
            sum[part] =
              (sum[part] ?? 0) + (isOutside ? 0 : (data[(row * width + column) * 4 + part] ?? 0))
          }
          count += 1
        }
      }
      return [sum[0] / count, sum[1] / count, sum[2] / count, sum[3] / count]
    })
  }, asked)
}

/** A place as it is seen: its pixel in a view, and its slot where it holds a bead. */
export type SeenPlace = Readonly<{ x: number; y: number; slot: number | undefined }>

/** The places of a scene that lie well inside a canvas. */
export function seenPlaces(
  scene: BeadScene,
  view: View,
  { width, height }: Readonly<{ width: number; height: number }>,
): readonly SeenPlace[] {
  return Array.from(scene.xMm, (xMm, place): SeenPlace => {
    const slot = scene.slotOf[place] ?? 0
    return {
      x: (xMm - view.xMm) * view.scale,
      y: ((scene.yMm[place] ?? 0) - view.yMm) * view.scale,
      slot: scene.palette[slot] === undefined ? undefined : slot,
    }
  }).filter(({ x, y }) => x > 4 && y > 4 && x < width - 4 && y < height - 4)
}

/** The slot whose colour is nearest to a pixel's; nothing where the ground shows through. */
export function slotSeen(palette: DesignBody['palette'], pixel: Pixel): number | undefined {
  if (pixel[3] < 32) return undefined
  const away = palette.map(({ colourHex }) => {
    const value = Number.parseInt(colourHex.slice(1), 16)
    const parts = [value >> 16, (value >> 8) & 255, value & 255]
    return Math.hypot(...parts.map((part, at) => part - (pixel[at] ?? 0)))
  })
  return away.indexOf(Math.min(...away))
}
