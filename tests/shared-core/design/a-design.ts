import { referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import type { Chart } from '../../../shared-core/chart/chart.ts'
import { toChartJson } from '../../../shared-core/chart/chart-json.ts'
import type { DesignBody, Panel, Part, Strand } from '../../../shared-core/design/design.ts'
import { readDesign } from '../../../shared-core/design/read-design.ts'
import type { DesignReading } from '../../../shared-core/design/reading.ts'

/** A panel of cylinder beads 11/0. */
export function panelOf(chart: Chart, more: Partial<Panel> = {}): Panel {
  return {
    kind: 'panel',
    id: 'panel',
    name: 'Panel',
    chart: toChartJson(chart),
    formId: 'cylinder-11/0',
    copies: 1,
    mirrored: false,
    route: {},
    ...more,
  }
}

/** A strand that hangs from nothing unless told. */
export function strandOf(beads: string, more: Partial<Strand> = {}): Strand {
  return {
    kind: 'strand',
    id: 'strand',
    name: 'Strand',
    shape: 'fringe',
    beads,
    copies: 1,
    ...more,
  }
}

/** A design of some parts in slots A to C, braided thread, needle 12. */
export function designOf(parts: readonly Part[], more: Partial<DesignBody> = {}): DesignBody {
  const slots = ['A', 'B', 'C']
  return {
    unitName: 'piece',
    palette: slots.map((label) => ({
      label,
      name: label,
      formId: 'cylinder-11/0',
      colourHex: '#556677',
      finish: 'opaque',
    })),
    parts,
    extras: [],
    threadId: 'braided-6lb',
    needleSize: '12',
    ...more,
  }
}

/** Reads a design that must not be refused. */
export function read(body: DesignBody): DesignReading {
  const result = readDesign(body, referenceTables)
  if (!result.ok) throw new Error(`${result.error.code}: ${result.error.message}`)
  return result.value
}
