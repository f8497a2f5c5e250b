import type { Page } from '@playwright/test'

import type { CallOutput } from '../../../shared-core/contract/calls.ts'
import type { Lot } from '../../../shared-core/stock/lot.ts'
import type { LotCost } from '../../../shared-core/stock/lot-value.ts'
import type { PackOffer } from '../../../shared-core/stock/purchase.ts'
import { calendarDate } from '../../../shared-core/units/calendar-date.ts'
import { currencyCode } from '../../../shared-core/units/currency.ts'
import { money } from '../../../shared-core/units/money.ts'
import { ask } from '../ask.ts'

type Detail = CallOutput<'materials.read'>

/** What stands in the drawers now and who sells more of it, in the core's words. */
export type StockFacts = Readonly<{
  materials: readonly Detail['material'][]
  lots: readonly Lot[]
  offers: readonly PackOffer[]
  /** Everything that came in, in order, each with what its lot cost. */
  received: readonly Readonly<{ materialId: string; quantity: number; cost: LotCost | null }>[]
  /** Value of everything at cost. */
  worthMinor: number
}>

/** Reads all materials with their lots and offers. */
export async function stockFacts(page: Page): Promise<StockFacts> {
  const { materials } = await ask(page, 'materials.list', {})
  const details = await Promise.all(materials.map(({ id }) => ask(page, 'materials.read', { id })))
  return {
    materials,
    lots: details
      .flatMap(({ lots }) => lots)
      .map(({ id, materialId, onHand, boughtOn }) => ({
        lotId: id,
        materialId,
        onHand,
        ...(boughtOn === null ? {} : { boughtOn: calendarDate(boughtOn) }),
      })),
    offers: details
      .flatMap(({ offers }) => offers)
      .map((offer) => ({
        offerId: offer.id,
        supplierId: offer.supplierId,
        materialId: offer.materialId,
        packQuantity: offer.packQuantity,
        price: money(offer.priceMinor, currencyCode('EUR')),
      })),
    received: details.flatMap(receipts),
    worthMinor: materials.reduce((sum, { valueMinor }) => sum + valueMinor, 0),
  }
}

function receipts({ material, lots, movements }: Detail): StockFacts['received'] {
  const costs = new Map(
    lots.map(({ id, costMinor, costQuantity }) => [
      id,
      costMinor === null || costQuantity === null ? null : { costMinor, costQuantity },
    ]),
  )
  return movements
    .filter(({ quantity }) => quantity > 0)
    .toSorted((a, b) => a.id - b.id)
    .map(({ lotId, quantity }) => ({
      materialId: material.id,
      quantity,
      cost: costs.get(lotId) ?? null,
    }))
}
