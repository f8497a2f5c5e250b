import { indexBeads } from '../../shared-core/chart/bead-index.ts'
import type { Chart, StitchKind } from '../../shared-core/chart/chart.ts'
import { chartSize } from '../../shared-core/chart/chart-size.ts'
import { countSlots } from '../../shared-core/chart/count-slots.ts'
import { floodFill } from '../../shared-core/chart/edits/flood-fill.ts'
import { mirrorChart } from '../../shared-core/chart/edits/mirror-chart.ts'
import { paintCells } from '../../shared-core/chart/edits/paint-cells.ts'
import { layoutChart } from '../../shared-core/chart/layout.ts'
import { traceOutline } from '../../shared-core/chart/outline.ts'
import { readGridFile } from '../../shared-core/chart/read-grid-file.ts'
import {
  type RowCentres,
  rowCentres,
  type StitchPitch,
  stitchPitch,
  threadGapMm,
} from '../../shared-core/chart/stitch-pitch.ts'
import { writeGridFile } from '../../shared-core/chart/write-grid-file.ts'
import { CYLINDER } from '../shared-core/chart/forms.ts'
import { medianOf, type Row } from './row.ts'

export const name = 'Charts of 1,000,000 cells'

const SIDE = 1000
const WARM_UP = 15
const ROUNDS = 41
const PLAIN_PASS = 'one plain pass: every cell read and added up'
const MEBIBYTE = 1024 * 1024

type Task = Readonly<{ measure: string; work: () => unknown; target?: number; rounds?: number }>

/** Counts, geometry and outline of a million cells against one plain pass over them, in the same run. */
export async function run(): Promise<Row[]> {
  const brick = panel('brick')
  const peyote = panel('peyote')
  const threadMm = threadGapMm(0.17)
  const size = { diameterMm: 1.6, lengthMm: 1.3, threadMm }
  const [brickPitch, peyotePitch] = [stitchPitch('brick', size), stitchPitch('peyote', size)]
  const text = writeGridFile(brick)
  const middle = { row: SIDE / 2, at: SIDE }
  const readings: readonly Task[] = [
    { measure: 'counts by slot', work: () => countSlots(brick), target: 2 },
    {
      measure: 'size with its spread',
      work: () => chartSize(brick, CYLINDER, { threadMm }),
      target: 2,
    },
    {
      measure: 'every centre in closed form, brick',
      work: () => centresBeyond(brick, brickPitch),
      target: 2,
    },
    {
      measure: 'every centre in closed form, peyote',
      work: () => centresBeyond(peyote, peyotePitch),
      target: 2,
    },
    { measure: 'outline, brick', work: () => traceOutline(brick, brickPitch), target: 2 },
    { measure: 'outline, peyote', work: () => traceOutline(peyote, peyotePitch), target: 2 },
  ]
  // Measured one after the other: what they allocate must not be collected on another's time.
  const heavy: readonly Task[] = [
    { measure: 'bead numbers', work: () => indexBeads(brick) },
    {
      measure: 'centres written out as arrays, brick',
      work: () => layoutChart(brick, CYLINDER, { threadMm }).xMm,
    },
    {
      measure: 'centres written out as arrays, peyote',
      work: () => layoutChart(peyote, CYLINDER, { threadMm }).xMm,
    },
    { measure: 'painting one cell', work: () => paintCells(brick, [middle], 3) },
    { measure: 'mirroring', work: () => mirrorChart(brick, 'left-right') },
    { measure: 'filling one patch', work: () => floodFill(brick, middle, 40), rounds: 11 },
    { measure: 'reading a grid file', work: () => read(text), rounds: 5 },
  ]
  const plainTask = { measure: PLAIN_PASS, work: () => plainPass(brick) }
  const times = [
    ...measureInTurn([plainTask, ...readings]),
    ...heavy.flatMap((task) => measureInTurn([task])),
  ]
  const rows = [...readings, ...heavy].map((task, i): Row => {
    const values = times[i + 1] ?? []
    const row = {
      measure: task.measure,
      n: values.length,
      ...medianOf(values),
      baseline: PLAIN_PASS,
    }
    return task.target === undefined ? row : { ...row, target: task.target }
  })
  const plain = { measure: PLAIN_PASS, n: ROUNDS, ...medianOf(times[0] ?? []) }
  return [plain, ...rows, ...memoryRows(brick)]
}

/** Rows of motifs in a dozen slots, a few cells to a run, as charts are. */
function panel(stitch: StitchKind): Chart {
  const rows = Array.from({ length: SIDE }, (_, row) => ({
    start: stitch === 'brick' ? row % 2 : 0,
    cells: Uint16Array.from({ length: SIDE }, (_, i) => 1 + (((row >> 3) * 5 + (i >> 2) * 7) % 12)),
  }))
  return { stitch, rows }
}

function plainPass({ rows }: Chart): number {
  let sum = 0
  for (const { cells } of rows) {
    for (let i = 0; i < cells.length; i += 1) sum += cells[i] ?? 0
  }
  return sum
}

/** Goes to every bead's centre and counts those in the lower right half: what a lasso asks. Nothing is stored. */
function centresBeyond({ rows }: Chart, pitch: StitchPitch): number {
  const middle = (SIDE / 2) * (2 * pitch.halfMm + pitch.downMm)
  let beyond = 0
  for (let row = 0; row < rows.length; row += 1) {
    const line = rows[row]
    if (line === undefined) continue
    beyond += beyondInRow(line.cells, rowCentres(pitch, row, line.start), middle)
  }
  return beyond
}

/** Beads of a row for which x + y is more than `middle`: by pairs, an even cell and an odd one. */
function beyondInRow(
  cells: Uint16Array,
  { xMm, stepMm, evenMm, oddMm }: RowCentres,
  middle: number,
): number {
  const [even, odd] = [xMm + evenMm, xMm + oddMm]
  let beyond = 0
  for (let i = 0; i < cells.length; i += 2) {
    if (cells[i] !== 0 && even + i * stepMm > middle) beyond += 1
    // Past the end of a row of odd length there is no cell, and none is counted.
    if ((cells[i + 1] ?? 0) !== 0 && odd + (i + 1) * stepMm > middle) beyond += 1
  }
  return beyond
}

function read(text: string): number {
  const outcome = readGridFile(text, { fileName: 'panel.csv' })
  if (!outcome.ok) throw new Error('the panel does not read back')
  return outcome.value.beads
}

/** Every task once in each round, so that a slow moment of the machine falls on all alike. */
function measureInTurn(tasks: readonly Task[]): readonly (readonly number[])[] {
  const times = tasks.map((): number[] => [])
  const most = tasks.reduce((rounds, task) => Math.max(rounds, task.rounds ?? ROUNDS), 0)
  const warmUp = Math.min(WARM_UP, most)
  for (let round = -warmUp; round < most; round += 1) {
    tasks.forEach(({ work }, i) => {
      const start = performance.now()
      work()
      if (round >= 0) times[i]?.push(performance.now() - start)
    })
  }
  return times
}

/** What a chart, its bead numbers and its centres take, counted from their arrays. */
function memoryRows(chart: Chart): readonly Row[] {
  const { rowOf, atOf, slotOf, rowStart } = indexBeads(chart)
  const { xMm, yMm } = layoutChart(chart, CYLINDER)
  const cells = chart.rows.reduce((sum, row) => sum + row.cells.byteLength, 0)
  const arrays = [rowOf, atOf, slotOf, rowStart, xMm, yMm]
  const bytes = arrays.reduce((sum, array) => sum + array.byteLength, cells)
  const baseline = 'sixteen bytes a cell'
  const exactly = (measure: string, value: number) => ({
    measure,
    n: 1,
    ...medianOf([value / MEBIBYTE], 'MiB'),
  })
  return [
    exactly(baseline, 16 * SIDE * SIDE),
    { ...exactly('cells alone', cells), baseline },
    // The starts of rows are the one part that grows with rows, not with cells: 4 kB here.
    { ...exactly('cells, bead numbers and centres', bytes), baseline, target: 1.001 },
  ]
}
