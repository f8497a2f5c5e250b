import { writeLabOfLight } from '../lab.ts'
import { LIGHT_OF_BYTE, rgbOfHex } from '../srgb.ts'
import { bayerMatrix, isOn } from './bayer.ts'
import type { BeadTargets } from './bead-targets.ts'
import { type CellLines, cellLines } from './cell-lines.ts'
import { diffuse } from './diffuse.ts'
import { bestPartner } from './ordered-mix.ts'
import { PaletteMatcher } from './palette-matcher.ts'
import type { Dithering } from './picture-request.ts'

/** A palette's colours, three numbers each: linear light and Lab. */
export type PaletteColours = Readonly<{ light: Float64Array; lab: Float64Array }>

/** Light and Lab of `#RRGGBB` colours, in their order. */
export function paletteColours(hexes: readonly string[]): PaletteColours {
  const light = new Float64Array(3 * hexes.length)
  const lab = new Float64Array(3 * hexes.length)
  for (const [i, hex] of hexes.entries()) {
    const rgb = rgbOfHex(hex)
    if (rgb === undefined) throw new RangeError(`paletteColours: expected #RRGGBB, got ${hex}`)
    for (const [channel, byte] of [rgb.r, rgb.g, rgb.b].entries()) {
      light[3 * i + channel] = LIGHT_OF_BYTE[byte] as number
    }
    const [r, g, b] = light.subarray(3 * i) as unknown as [number, number, number]
    writeLabOfLight(r, g, b, lab, 3 * i)
  }
  return { light, lab }
}

/** Beads matched between two reports of progress. */
const BATCH = 4096

/**
 * Gives each bead the palette colour it should have, with the dithering asked for.
 *
 * @returns a generator that yields the share done, 0 to 1, and returns an index a bead.
 */
export function* matchTargets(
  targets: BeadTargets,
  palette: PaletteColours,
  dithering: Dithering,
): Generator<number, Uint16Array> {
  switch (dithering) {
    case 'none':
      return yield* matchNearest(targets, palette)
    case 'diffusion':
      return yield* matchDiffused(targets, palette)
    case 'ordered':
      return yield* matchOrdered(targets, palette)
  }
}

function* matchNearest(
  { cells, lab, even }: BeadTargets,
  palette: PaletteColours,
): Generator<number, Uint16Array> {
  const matcher = new PaletteMatcher(palette.lab)
  const into = new Uint16Array(cells.length)
  for (let i = 0; i < into.length; i++) {
    if (i % BATCH === 0) yield i / into.length
    into[i] = matcher.match(lab, even, i)
  }
  return into
}

const within = (low: number, value: number, high: number) => Math.min(high, Math.max(low, value))

/**
 * Errors are passed on in linear light, as beads mix from afar.
 *
 * What is wanted may lie up to a whole light beyond what beads can show, so that no error is lost on
 * the way; further off (a palette that lacks a colour altogether) errors would only pile up.
 */
function* matchDiffused(
  { layout, light }: BeadTargets,
  palette: PaletteColours,
): Generator<number, Uint16Array> {
  const matcher = new PaletteMatcher(palette.lab)
  const lab = new Float64Array(3)
  const into = new Uint16Array(light.length / 3)
  const choose = (values: Float64Array, at: number, chosen: Float64Array) => {
    for (let i = at; i < at + 3; i++) values[i] = within(-1, values[i] as number, 2)
    const shown = (channel: number) => within(0, values[at + channel] as number, 1)
    writeLabOfLight(shown(0), shown(1), shown(2), lab, 0)
    const index = matcher.matchLab(lab[0] as number, lab[1] as number, lab[2] as number)
    for (let i = 0; i < 3; i++) chosen[i] = palette.light[3 * index + i] as number
    return index
  }
  const lines = cellLines(layout)
  const diffusion = { lines, x: layout.x, channels: 3, choose, serpentine: true }
  yield* diffuse(diffusion, light.slice(), into)
  return into
}

/** Side of the ordered pattern, in beads. */
const SIDE = 8

/** Each bead takes one of the two colours whose mix is best, by a fixed pattern of thresholds. */
function* matchOrdered(
  targets: BeadTargets,
  palette: PaletteColours,
): Generator<number, Uint16Array> {
  const { lab, even, light, layout } = targets
  const matcher = new PaletteMatcher(palette.lab)
  const into = new Uint16Array(light.length / 3)
  const thresholds = patternOver(layout.x, cellLines(layout))
  for (let i = 0; i < into.length; i++) {
    if (i % BATCH === 0) yield i / into.length
    const base = matcher.match(lab, even, i)
    const { partner, share } = bestPartner(palette.light, base, {
      r: light[3 * i] as number,
      g: light[3 * i + 1] as number,
      b: light[3 * i + 2] as number,
    })
    into[i] = isOn(share, thresholds[i] as number, SIDE) ? partner : base
  }
  return into
}

/** The pattern's threshold for each bead, by its line and its place along it. */
function patternOver(x: ArrayLike<number>, { order, starts, step }: CellLines): Uint8Array {
  const matrix = bayerMatrix(SIDE).flat()
  const thresholds = new Uint8Array(order.length)
  const left = order.reduce((least, cell) => Math.min(least, x[cell] as number), Infinity)
  for (let line = 0; line + 1 < starts.length; line++) {
    for (const cell of order.subarray(starts[line], starts[line + 1])) {
      // A quarter step of grace, so that a rounding does not move a bead to the column before.
      const column = Math.floor(((x[cell] as number) - left) / step + 0.25)
      thresholds[cell] = matrix[(line % SIDE) * SIDE + (column % SIDE)] as number
    }
  }
  return thresholds
}
