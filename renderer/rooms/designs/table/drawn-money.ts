import type { CallOutput } from '../../../../shared-core/contract/calls.ts'
import { type BillKind, billOfMaterials } from '../../../../shared-core/design/bill.ts'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { type PriceSheet, priceSheet } from '../../../../shared-core/pricing/price-sheet.ts'
import { type Makeable, makeable } from '../../../../shared-core/stock/makeable.ts'
import type { PlainReading } from '../reading/plain-reading.ts'

/** What the store says of the colourway's materials. */
export type DraftStock = CallOutput<'drafts.stock'>

/** What one unit of a drawing costs and asks, and how many units stock allows. */
export type DrawnMoney = Readonly<{ sheet: PriceSheet; makeable: Makeable }>

const GROUPS = {
  bead: 'materials',
  thread: 'thread',
  finding: 'findings',
  packaging: 'packaging',
} as const satisfies Readonly<Record<BillKind, string>>

/** Reckons a drawing with the same core as the service reckons a saved version. */
export function drawnMoney(
  { inputs, materials, lots }: DraftStock,
  reading: Pick<PlainReading, 'counts' | 'thread' | 'labour'>,
  body: Pick<DesignBody, 'palette' | 'extras' | 'unitName'>,
): DrawnMoney {
  const byKey = Object.fromEntries(materials.map((material) => [material.key, material]))
  const bill = billOfMaterials(reading, body, byKey)
  const uses = bill.map(({ key, kind, name, unit, quantity, basis }) => ({
    ...{ key, unit, quantity, basis },
    label: byKey[key]?.name ?? name,
    group: GROUPS[kind],
    cost: byKey[key]?.cost ?? null,
  }))
  const labourS = reading.labour.totalS
  return {
    sheet: priceSheet({ ...inputs, unitName: body.unitName, materials: uses, labourS }),
    makeable: makeable(bill, lots),
  }
}
