import { ciede2000, deltaE2000 } from '../../shared-core/colour/ciede2000.ts'
import { writeLabOfLight } from '../../shared-core/colour/lab.ts'
import type { BeadTargets } from '../../shared-core/colour/picture/bead-targets.ts'
import { beadTargets } from '../../shared-core/colour/picture/bead-targets.ts'
import { matchTargets, paletteColours } from '../../shared-core/colour/picture/match-targets.ts'
import type { CellLayout } from '../../shared-core/colour/picture/picture.ts'
import type { PictureRequest } from '../../shared-core/colour/picture/picture-request.ts'
import { pictureToChart } from '../../shared-core/colour/picture/picture-to-chart.ts'
import { runSteps } from '../../shared-core/colour/picture/run-steps.ts'
import { sampleCells } from '../../shared-core/colour/picture/sample-cells.ts'
import { byteOfLight, LIGHT_OF_BYTE } from '../../shared-core/colour/srgb.ts'
import { painters, paintPicture } from '../fixtures/picture-generator.ts'
import { type Pixels, type Quantiser, quantisers } from './picture-quantisers.ts'
import { medianOf, type Row } from './row.ts'

export const name = 'A picture of 4 megapixels as 200 x 200 brick cells in 40 colours'

const SIDE = 2000
const ACROSS = 200
const COLOURS = 40
/** Rounds of each; within a round everything runs in turn, so that a busy machine hits all alike. */
const ROUNDS = 9
/** What has taken this long in all is not run again: some libraries need ten seconds a round. */
const ENOUGH_MS = 2000

/** Brick cells of the 11/0 cylinder: every other row half a bead out of step. */
function brickCells(): CellLayout {
  const cells = Array.from({ length: ACROSS * ACROSS }, (_, i) => i)
  const row = (i: number) => Math.floor(i / ACROSS)
  const x = Float64Array.from(cells, (i) => 1.6 * ((i % ACROSS) + (row(i) % 2) / 2))
  return { x, y: Float64Array.from(cells, (i) => 1.3 * row(i)), pitchX: 1.6, pitchY: 1.3 }
}

function finished<P, T>(steps: Generator<P, T>): T {
  const outcome = runSteps(steps)
  if (outcome.kind === 'cancelled') throw new Error('nobody cancelled')
  return outcome.value
}

const wholeCrop = { x: 0, y: 0, width: SIDE, height: SIDE }

function targetsOf(request: PictureRequest): BeadTargets {
  const { picture, cells, fit } = request
  return beadTargets(finished(sampleCells(picture, wholeCrop, cells, fit)), request)
}

/** The core's averaged cells as bytes, for libraries that want a picture. */
function averagedCells({ picture, cells, fit }: PictureRequest): Pixels {
  const { light } = finished(sampleCells(picture, wholeCrop, cells, fit))
  const rgba = new Uint8ClampedArray((4 * light.length) / 3).fill(255)
  for (let cell = 0; cell < light.length / 3; cell++) {
    for (let i = 0; i < 3; i++) rgba[4 * cell + i] = byteOfLight(light[3 * cell + i] as number)
  }
  return { rgba, width: ACROSS, height: ACROSS }
}

/** Every tenth pixel of every tenth row: the quickest way to cells without the core. */
function pickedCells({ rgba, width }: Pixels): Pixels {
  const pixels = new Uint32Array(rgba.buffer)
  const picked = new Uint32Array(ACROSS * ACROSS)
  const every = SIDE / ACROSS
  for (let cell = 0; cell < picked.length; cell++) {
    const row = every * Math.floor(cell / ACROSS)
    picked[cell] = pixels[row * width + every * (cell % ACROSS)] as number
  }
  return { rgba: new Uint8ClampedArray(picked.buffer), width: ACROSS, height: ACROSS }
}

/** Mean CIEDE2000 of the cells when each takes the nearest of these colours: a palette at its best. */
function meanDeltaE(targets: BeadTargets, hexes: readonly string[]): number {
  const palette = paletteColours(hexes)
  const indexes = finished(matchTargets(targets, palette, 'none'))
  const labAt = (values: Float64Array, i: number) => ({
    l: values[3 * i] as number,
    a: values[3 * i + 1] as number,
    b: values[3 * i + 2] as number,
  })
  const sum = indexes.reduce(
    (total, index, i) => total + ciede2000(labAt(targets.lab, i), labAt(palette.lab, index)),
    0,
  )
  return sum / indexes.length
}

function timed(work: () => unknown): number {
  const start = performance.now()
  work()
  return performance.now() - start
}

/** Mean CIEDE2000 between cells and the colours a library gave them: the core reports its own too. */
function reportedDifference(cells: Pixels, mapped: Uint8Array): number {
  const labs = [new Float64Array(3), new Float64Array(3)] as const
  let sum = 0
  for (let i = 0; i < mapped.length; i += 4) {
    for (const [which, bytes] of [cells.rgba, mapped].entries()) {
      const light = (channel: number) => LIGHT_OF_BYTE[bytes[i + channel] as number] as number
      writeLabOfLight(light(0), light(1), light(2), labs[which as 0 | 1], 0)
    }
    const [[l1 = 0, a1 = 0, b1 = 0], [l2 = 0, a2 = 0, b2 = 0]] = labs
    sum += deltaE2000(l1, a1, b1, l2, a2, b2)
  }
  return sum / (mapped.length / 4)
}

type Runner = Readonly<{ label: string; alone: boolean; reduce: () => readonly string[] }>

/** The core; each library on its own, given the picture; each library helped by the core's averaging. */
function runnersFor(request: PictureRequest): readonly Runner[] {
  const { picture } = request
  const source: Pixels = { ...picture, rgba: new Uint8ClampedArray(picture.rgba) }
  const core = () => finished(pictureToChart(request)).palette.map(({ hex }) => hex)
  const whole = (reduce: Quantiser['reduce'], from: Pixels, cells: Pixels) => {
    const { palette, mapped } = reduce(from, cells, COLOURS)
    if (!(reportedDifference(cells, mapped) >= 0)) throw new Error('a library lost its cells')
    return palette
  }
  return [
    { label: 'core', alone: true, reduce: core },
    ...quantisers.map(({ name: library, reduce }) => ({
      label: library,
      alone: true,
      reduce: () => whole(reduce, source, pickedCells(source)),
    })),
    ...quantisers.map(({ name: library, reduce }) => ({
      label: `${library}, fed with cells averaged by the core`,
      alone: false,
      reduce: () => {
        const cells = averagedCells(request)
        return whole(reduce, cells, cells)
      },
    })),
  ]
}

function rowsFor(picture: keyof typeof painters): Row[] {
  const request: PictureRequest = {
    picture: paintPicture(picture, SIDE, SIDE),
    cells: brickCells(),
    fit: 'stretch',
    colours: { kind: 'free', count: COLOURS },
    dithering: 'none',
    smallestPatch: 1,
  }
  const runs = runnersFor(request).map((runner) => ({
    ...runner,
    times: [] as number[],
    palette: runner.reduce(),
  }))
  for (let round = 0; round < ROUNDS; round++) {
    for (const { times, reduce } of runs) {
      if (times.reduce((sum, ms) => sum + ms, 0) < ENOUGH_MS) times.push(timed(reduce))
    }
  }
  const targets = targetsOf(request)
  const timeRows = runs.map(({ label, times }): Row => {
    return { measure: `${picture}: ${label}`, n: times.length, ...medianOf(times) }
  })
  const colourRows = runs.map(({ label, palette }): Row => {
    const mean = medianOf([meanDeltaE(targets, palette)], 'dE00')
    return { measure: `${picture}: ${label}, mean difference`, n: 1, ...mean }
  })
  const alone = timeRows.filter((_, i) => runs[i]?.alone)
  const helped = timeRows.filter((_, i) => !runs[i]?.alone)
  const besideCore = helped.map((row): Row => ({ ...row, baseline: `${picture}: core` }))
  return [...againstBest(alone), ...besideCore, ...againstBest(colourRows)]
}

/** The core's row is held to the best of the libraries' rows: no slower, no worse. */
function againstBest(rows: readonly Row[]): Row[] {
  const [core, ...libraries] = rows
  const best = libraries.reduce((least, row) => (row.median < least.median ? row : least))
  return core === undefined ? [] : [{ ...core, baseline: best.measure, target: 1 }, ...libraries]
}

/**
 * Each picture in turn. Timed is the whole job for the core and for each library: palette, a colour
 * for each cell, and the mean difference to report. Palettes are then judged alike, untimed: every
 * averaged cell takes the palette's nearest colour by CIEDE2000.
 */
export async function run(): Promise<Row[]> {
  return (Object.keys(painters) as (keyof typeof painters)[]).flatMap(rowsFor)
}
