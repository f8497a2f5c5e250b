import { slotLabel } from '../../../shared-core/chart/chart.ts'
import {
  type BillLine,
  billOfMaterials,
  type MaterialsByKey,
} from '../../../shared-core/design/bill.ts'
import { bodyByCore, type ChartOnHand, readByCore } from './design-by-core.ts'
import type { StockFacts } from './stock-facts.ts'

/** What one unit of a chart takes, from the chart's file and the choice of beads. */
export function billByCore(chart: ChartOnHand, { materials }: StockFacts): readonly BillLine[] {
  const facts = (name: string) => {
    const material = materials.find((one) => one.name === name)
    if (material === undefined) throw new Error(`There is no ${name} in stock.`)
    return { materialId: material.id, unit: material.unit, lotsMatter: material.lotsMatter }
  }
  const byKey: MaterialsByKey = Object.fromEntries([
    ...chart.beads.map((bead, at) => [`slot:${slotLabel(at)}`, facts(bead)] as const),
    ...chart.extras.map(({ id, kind }) => [`extra:${id}`, facts(extraOf[kind])] as const),
    ['thread', facts(threadName)] as const,
  ])
  return billOfMaterials(readByCore(chart), bodyByCore(chart), byKey)
}

/** Which of her findings and packaging fill a design's places. */
export const extraOf = { finding: 'ear wire, steel', packaging: 'card, "small", kraft' } as const
export const threadName = 'braided thread 0,17 mm'
