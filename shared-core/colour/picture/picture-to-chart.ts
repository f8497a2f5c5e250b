import { deltaE2000 } from '../ciede2000.ts'
import { type BeadTargets, beadTargets } from './bead-targets.ts'
import { cellLines } from './cell-lines.ts'
import { cellNeighbours } from './cell-neighbours.ts'
import { chooseBeads } from './choose-beads.ts'
import { writeEven } from './even-space.ts'
import { freePalette } from './free-palette.ts'
import { matchTargets, type PaletteColours, paletteColours } from './match-targets.ts'
import type { PictureProgress, PictureStage } from './picture.ts'
import type { PictureBead, PictureColours, PictureRequest } from './picture-request.ts'
import { sampleCells } from './sample-cells.ts'
import { recolourStrays } from './stray-beads.ts'

/** A colour of the finished chart: the bead it stands for, if any, and how many cells it takes. */
export type PictureSlot = Readonly<{ hex: string; beadId?: string; count: number }>

/**
 * A picture as a chart's colours.
 *
 * `slots` holds for each cell 0 (no bead) or the index in `palette` plus one. The palette lists used
 * colours only, the most used first. `meanDeltaE` and `worstDeltaE` are CIEDE2000 between the colour
 * wanted of each bead and the one it got; `recoloured` counts beads changed as strays.
 */
export type PictureChart = Readonly<{
  slots: Uint16Array
  palette: readonly PictureSlot[]
  meanDeltaE: number
  worstDeltaE: number
  recoloured: number
}>

/**
 * Turns a picture into the colours of a chart's cells, step by step.
 *
 * The picture is averaged over each cell's own rectangle in linear light, its tone changed, colours
 * chosen (freely, or from beads at hand), each bead matched by CIEDE2000 with the dithering asked
 * for, and patches smaller than the limit recoloured. The same request always gives the same chart.
 *
 * @param request - Checked by `checkPictureRequest` before.
 * @returns a generator: each `next()` does a little work and yields progress; the chart comes last.
 *   Stop asking and the work is cancelled. `runSteps` drives it.
 */
export function* pictureToChart(request: PictureRequest): Generator<PictureProgress, PictureChart> {
  const { picture, cells, colours, dithering, smallestPatch } = request
  const crop = request.crop ?? { x: 0, y: 0, width: picture.width, height: picture.height }
  const sampling = sampleCells(picture, crop, cells, request.fit)
  const targets = beadTargets(yield* staged('sampling', sampling), request)
  if (targets.cells.length === 0) return emptyChart(cells.x.length)

  yield { stage: 'choosing', done: 0 }
  const choice = yield* staged('choosing', chooseColours(targets, colours))
  const palette = paletteColours(choice.map(({ hex }) => hex))
  const matching = matchTargets(targets, palette, dithering)
  const indexes = yield* staged('matching', matching)
  yield { stage: 'tidying', done: 0 }
  const recoloured = smallestPatch > 1 ? tidy(targets, palette, indexes, smallestPatch) : 0
  return asChart(targets, palette, choice, indexes, recoloured, cells.x.length)
}

/** Passes a stage's progress on under its name. */
function* staged<T>(
  stage: PictureStage,
  work: Generator<number, T>,
): Generator<PictureProgress, T> {
  for (;;) {
    const step = work.next()
    if (step.done) return step.value
    yield { stage, done: step.value }
  }
}

function emptyChart(cells: number): PictureChart {
  return {
    slots: new Uint16Array(cells),
    palette: [],
    meanDeltaE: 0,
    worstDeltaE: 0,
    recoloured: 0,
  }
}

type Choice = Readonly<{ hex: string; bead?: PictureBead }>

function* chooseColours(
  { even }: BeadTargets,
  colours: PictureColours,
): Generator<number, readonly Choice[]> {
  if (colours.kind === 'free') return freePalette(even, colours.count).map((hex) => ({ hex }))
  const { beads, most = beads.length } = colours
  const { lab } = paletteColours(beads.map(({ hex }) => hex))
  const evens = new Float64Array(lab.length)
  writeEven(lab, evens, 0, beads.length)
  const chosen = most < beads.length ? yield* chooseBeads(even, lab, evens, most) : beads.keys()
  return Array.from(chosen, (index) => {
    const bead = beads[index] as PictureBead
    return { hex: bead.hex.toLowerCase(), bead }
  })
}

/** Difference between the colour wanted of bead `i` and palette colour `index`. */
function difference(
  { lab }: BeadTargets,
  palette: PaletteColours,
  i: number,
  index: number,
): number {
  return deltaE2000(
    lab[3 * i] as number,
    lab[3 * i + 1] as number,
    lab[3 * i + 2] as number,
    palette.lab[3 * index] as number,
    palette.lab[3 * index + 1] as number,
    palette.lab[3 * index + 2] as number,
  )
}

/** No palette colour has this index: every bead of `targets` has one. */
const NO_COLOUR = 0xffff

function tidy(
  targets: BeadTargets,
  palette: PaletteColours,
  indexes: Uint16Array,
  least: number,
): number {
  const neighbours = cellNeighbours(targets.layout, cellLines(targets.layout))
  return recolourStrays(indexes, NO_COLOUR, neighbours, least, (cell, colour) =>
    difference(targets, palette, cell, colour),
  )
}

function asChart(
  targets: BeadTargets,
  palette: PaletteColours,
  choice: readonly Choice[],
  indexes: Uint16Array,
  recoloured: number,
  cells: number,
): PictureChart {
  const counts = new Uint32Array(choice.length)
  let sum = 0
  let worst = 0
  for (let i = 0; i < indexes.length; i++) {
    const index = indexes[i] as number
    counts[index] = (counts[index] as number) + 1
    const deltaE = difference(targets, palette, i, index)
    sum += deltaE
    if (deltaE > worst) worst = deltaE
  }
  const used = Array.from(choice.keys())
    .filter((index) => (counts[index] as number) > 0)
    .toSorted((a, b) => (counts[b] as number) - (counts[a] as number) || a - b)
  const slotOf = new Uint16Array(choice.length)
  for (const [slot, index] of used.entries()) slotOf[index] = slot + 1
  const slots = new Uint16Array(cells)
  for (let i = 0; i < indexes.length; i++) {
    slots[targets.cells[i] as number] = slotOf[indexes[i] as number] as number
  }
  return {
    slots,
    palette: used.map((index) => slotOfChoice(choice[index] as Choice, counts[index] as number)),
    meanDeltaE: sum / indexes.length,
    worstDeltaE: worst,
    recoloured,
  }
}

function slotOfChoice({ hex, bead }: Choice, count: number): PictureSlot {
  return bead === undefined ? { hex, count } : { hex, beadId: bead.id, count }
}
