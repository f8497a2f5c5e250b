import { readFileSync } from 'node:fs'
import { basename } from 'node:path'

import { referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import { slotLabel } from '../../../shared-core/chart/chart.ts'
import { toChartJson } from '../../../shared-core/chart/chart-json.ts'
import { readGridFile } from '../../../shared-core/chart/read-grid-file.ts'
import type { DesignBody, Extra } from '../../../shared-core/design/design.ts'
import { readDesign } from '../../../shared-core/design/read-design.ts'
import type { DesignReading } from '../../../shared-core/design/reading.ts'
import type { Result } from '../../../shared-core/result.ts'
import { job } from './job.ts'
import { sampleFile } from './sample-file.ts'

/** A chart that is brought in, what one unit of it is, and the bead of her stock for each slot. */
export type ChartOnHand = Readonly<{
  file: string
  name: string
  unitName: string
  copies: number
  extras: readonly Extra[]
  /** Names of materials for A, B, C, D. */
  beads: readonly string[]
}>

const card: Extra = { id: 'card', kind: 'packaging', name: 'Card', count: 1 }
const wire: Extra = { id: 'wire', kind: 'finding', name: 'Ear wire', count: 2 }

export const tidewrack: ChartOnHand = {
  file: sampleFile('tidewrack-chart.csv'),
  name: job.design,
  unitName: 'pair',
  copies: 2,
  extras: [wire, card],
  beads: ['Zylinderperle wet slate', 'brine', 'oyster shell', 'rust chain'],
}

export const mudflat: ChartOnHand = {
  file: sampleFile('mudflat-chart.csv'),
  name: job.band,
  unitName: 'band',
  copies: 1,
  extras: [card],
  beads: ['brine', 'samphire', 'oyster shell', 'rust chain'],
}

/** A unit's design from the chart's file alone. */
export function bodyByCore({ file, unitName, copies, extras, beads }: ChartOnHand): DesignBody {
  const formId = 'cylinder-11/0'
  const { chart } = need(readGridFile(readFileSync(file, 'utf8'), { fileName: basename(file) }))
  const look = { formId, colourHex: '#888888', finish: 'matte' } as const
  return {
    unitName,
    palette: beads.map((name, at) => ({ label: slotLabel(at), name, ...look })),
    parts: [
      {
        kind: 'panel',
        id: 'panel',
        name: 'Panel',
        chart: toChartJson(chart),
        formId,
        copies,
        mirrored: false,
        route: {},
      },
    ],
    extras,
    threadId: 'braided-6lb',
    needleSize: '12',
  }
}

/** What the core reads from a chart's file. */
export function readByCore(chart: ChartOnHand): DesignReading {
  return need(readDesign(bodyByCore(chart), referenceTables))
}

function need<T>(result: Result<T, unknown>): T {
  if (!result.ok) throw new Error(`The core refuses: ${JSON.stringify(result.error)}`)
  return result.value
}
