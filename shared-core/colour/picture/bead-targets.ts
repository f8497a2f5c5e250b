import { lightOfLab, writeLabOfLight } from '../lab.ts'
import { LIGHT_OF_BYTE, rgbOfHex } from '../srgb.ts'
import { writeEven } from './even-space.ts'
import type { CellLayout } from './picture.ts'
import type { PictureRequest, PictureTone } from './picture-request.ts'
import type { CellLight } from './sample-cells.ts'

/**
 * The cells that get a bead and the colour each should have.
 *
 * `cells` are their numbers in the chart, `layout` where they lie; `light` (linear r, g, b), `lab`
 * and `even` hold three numbers a bead.
 */
export type BeadTargets = Readonly<{
  cells: Int32Array
  layout: CellLayout
  light: Float64Array
  lab: Float64Array
  even: Float64Array
}>

/** Cover from which a cell gets a bead. */
const COVERED = 0.5

/** Turns sampled light into the colours wanted of the beads: background, empty cells and tone. Uses `sampled` up. */
export function beadTargets(sampled: CellLight, request: PictureRequest): BeadTargets {
  const { background, cells: layout, tone } = request
  const cells = background === undefined ? coveredCells(sampled.cover) : everyCell(sampled.cover)
  const light = lightOf(cells, sampled)
  if (background !== undefined) layOn(background, sampled.cover, light)
  const lab = new Float64Array(light.length)
  for (let i = 0; i < light.length; i += 3) {
    writeLabOfLight(light[i] as number, light[i + 1] as number, light[i + 2] as number, lab, i)
  }
  if (tone !== undefined) changeTone(tone, lab, light)
  const even = new Float64Array(lab.length)
  writeEven(lab, even, 0, cells.length)
  return { cells, layout: layoutOf(cells, layout), light, lab, even }
}

/** The light of the cells that get a bead; where all do it is the sampled light itself. */
function lightOf(cells: Int32Array, sampled: CellLight): Float64Array {
  if (3 * cells.length === sampled.light.length) return sampled.light
  const light = new Float64Array(3 * cells.length)
  for (let i = 0; i < cells.length; i++) {
    const from = 3 * (cells[i] as number)
    light[3 * i] = sampled.light[from] as number
    light[3 * i + 1] = sampled.light[from + 1] as number
    light[3 * i + 2] = sampled.light[from + 2] as number
  }
  return light
}

function everyCell(cover: Float64Array): Int32Array {
  const cells = new Int32Array(cover.length)
  for (let cell = 0; cell < cells.length; cell++) cells[cell] = cell
  return cells
}

function coveredCells(cover: Float64Array): Int32Array {
  const cells = new Int32Array(cover.length)
  let count = 0
  for (let cell = 0; cell < cover.length; cell++) {
    // A rounding must not empty a chart that is covered by exactly half.
    if ((cover[cell] as number) >= COVERED - 1e-9) cells[count++] = cell
  }
  return cells.subarray(0, count)
}

function layoutOf(cells: Int32Array, layout: CellLayout): CellLayout {
  if (cells.length === layout.x.length) return layout
  const x = new Float64Array(cells.length)
  const y = new Float64Array(cells.length)
  for (let i = 0; i < cells.length; i++) {
    x[i] = layout.x[cells[i] as number] as number
    y[i] = layout.y[cells[i] as number] as number
  }
  return { ...layout, x, y }
}

/** Lays every cell's light on a background, by its cover; cells are in the chart's own order. */
function layOn(background: string, cover: Float64Array, light: Float64Array): void {
  const rgb = rgbOfHex(background)
  if (rgb === undefined) throw new RangeError(`layOn: expected #RRGGBB, got ${background}`)
  const behind = [rgb.r, rgb.g, rgb.b].map((byte) => LIGHT_OF_BYTE[byte] as number)
  for (let i = 0; i < light.length; i++) {
    const covered = Math.min(1, cover[Math.floor(i / 3)] as number)
    light[i] = covered * (light[i] as number) + (1 - covered) * (behind[i % 3] as number)
  }
}

/** Changes lightness, contrast and chroma in place, in Lab, and brings the light along. */
function changeTone(tone: PictureTone, lab: Float64Array, light: Float64Array): void {
  const { lightness, contrast, chroma } = tone
  for (let i = 0; i < lab.length; i += 3) {
    const l = 50 + ((lab[i] as number) - 50) * contrast + lightness
    const toned = {
      l: Math.min(100, Math.max(0, l)),
      a: (lab[i + 1] as number) * chroma,
      b: (lab[i + 2] as number) * chroma,
    }
    const { r, g, b } = lightOfLab(toned)
    // What sRGB cannot show no bead is asked for: clip, and take the colour that is left.
    for (const [channel, amount] of [r, g, b].entries()) {
      light[i + channel] = Math.min(1, Math.max(0, amount))
    }
    writeLabOfLight(light[i] as number, light[i + 1] as number, light[i + 2] as number, lab, i)
  }
}
