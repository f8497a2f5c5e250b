import { type BeadExtent, beadExtent } from '../../../../shared-core/chart/bead-extent.ts'
import type { Chart } from '../../../../shared-core/chart/chart.ts'
import type { StitchPitch } from '../../../../shared-core/chart/stitch-pitch.ts'
import { readWordLine } from '../../../../shared-core/words/parse-word-line.ts'
import type { SlotLook } from './slot-look.ts'

/** A chart about to be printed: where its beads lie, and the side each of its rows is begun at. */
export type PrintedChart = Readonly<{
  name: string
  chart: Chart
  extent: BeadExtent
  pitch: StitchPitch
  /** Rows as they are worked (peyote has two to a chart row), from 0; absent for a row not worked. */
  sideOfRow: ReadonlyMap<number, 'left' | 'right'>
  lookOf: (slot: number) => SlotLook
}>

/** A chart ready to print, or nothing when it has no beads. */
export function printedChart(
  from: Omit<PrintedChart, 'extent' | 'sideOfRow'> & Readonly<{ words: readonly string[] }>,
): PrintedChart | undefined {
  const { words, ...rest } = from
  const extent = beadExtent(rest.chart.rows)
  return extent && { ...rest, extent, sideOfRow: sidesOf(words) }
}

/** A line of a word chart says where its row begins; a row's first line counts. */
function sidesOf(words: readonly string[]): ReadonlyMap<number, 'left' | 'right'> {
  const sides = new Map<number, 'left' | 'right'>()
  for (const line of words) {
    const read = readWordLine(line)
    if ('code' in read || read.side === undefined) continue
    for (const row of read.rows) if (!sides.has(row)) sides.set(row, read.side)
  }
  return sides
}
