import type { PackOffer } from '../../shared-core/stock/purchase.ts'
import { currencyCode } from '../../shared-core/units/currency.ts'
import { money } from '../../shared-core/units/money.ts'
import type { View } from './store/view.ts'
import { getWorkshop, listSuppliers, type Supplier } from './store/workshop-rows.ts'

/** Every pack on offer, and who brings it. */
export type Market = Readonly<{
  offers: readonly PackOffer[]
  offersOf: (materialId: string) => readonly PackOffer[]
  offer: (offerId: string) => PackOffer | undefined
  supplier: (supplierId: string) => Supplier | undefined
  /** The shortest time in which anyone brings a material, in days. */
  fewestDays: (materialId: string) => number
}>

/** Reads every pack on offer. */
export async function readMarket({ trx }: Pick<View, 'trx'>): Promise<Market> {
  const currency = currencyCode((await getWorkshop(trx)).currency)
  const rows = await trx
    .selectFrom('offer')
    .select(['id', 'supplier_id', 'material_id', 'pack_quantity', 'price_minor'])
    .where('removed_by', 'is', null)
    .orderBy('id')
    .execute()
  const offers = rows.map((row) => ({
    offerId: row.id,
    supplierId: row.supplier_id,
    materialId: row.material_id,
    packQuantity: row.pack_quantity,
    price: money(row.price_minor, currency),
  }))
  const suppliers = new Map((await listSuppliers(trx)).map((supplier) => [supplier.id, supplier]))
  const byMaterial = once(() => Map.groupBy(offers, (offer) => offer.materialId))
  const byId = once(() => new Map(offers.map((offer) => [offer.offerId, offer])))
  const offersOf = (materialId: string) => byMaterial().get(materialId) ?? []
  return {
    offers,
    offersOf,
    offer: (offerId) => byId().get(offerId),
    supplier: (supplierId) => suppliers.get(supplierId),
    fewestDays: (materialId) => {
      const days = offersOf(materialId).map((offer) => suppliers.get(offer.supplierId)?.leadDays)
      return Math.min(...days.map((lead) => lead ?? 0))
    },
  }
}

/** Works something out when it is first asked for. */
function once<T extends object>(work: () => T): () => T {
  let kept: T | undefined
  return () => {
    kept ??= work()
    return kept
  }
}
