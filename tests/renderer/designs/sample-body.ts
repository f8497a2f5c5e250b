import { readFileSync } from 'node:fs'
import { draftBody, firstDraft } from '../../../renderer/rooms/designs/draft/draft.ts'
import { toChartJson } from '../../../shared-core/chart/chart-json.ts'
import { readGridFile } from '../../../shared-core/chart/read-grid-file.ts'
import type { DesignBody, Strand } from '../../../shared-core/design/design.ts'

/** The chart of a sample file as the studio stores it. */
export function sampleChart(fileName: string) {
  const file = new URL(`../../fixtures/samples/${fileName}`, import.meta.url)
  const read = readGridFile(readFileSync(file, 'utf8'), { fileName })
  if (!read.ok) throw new Error(read.error[0]?.message)
  return toChartJson(read.value.chart)
}

/** The tidewrack diamond as a pair, with the strands asked for. */
export function tidewrack(...strands: readonly Strand[]): DesignBody {
  const body = draftBody(sampleChart('tidewrack-chart.csv'), { ...firstDraft, name: 'Tidewrack' })
  return { ...body, parts: [...body.parts, ...strands] }
}

/** A loop of six beads at the top of the panel. */
export const earLoop: Strand = {
  kind: 'strand',
  id: 'loop',
  name: 'Ear loop',
  shape: 'loop',
  beads: '6A',
  findingId: 'wire',
  anchor: { panelId: 'panel', row: 0, bead: 0 },
  copies: 1,
}

/** Two strands of fringe, one beside the other, at the foot of the panel. */
export const fringe: Strand = {
  kind: 'strand',
  id: 'fringe',
  name: 'Fringe',
  shape: 'fringe',
  beads: '4B 1D',
  anchor: { panelId: 'panel', row: 22, bead: 0 },
  copies: 2,
}
