import { findWorkshop, listChannels, listPlaces, listSuppliers } from '../store/workshop-rows.ts'
import type { QueryHandler } from './handler.ts'

export const readWorkshop: QueryHandler<'workshop.read'> = async ({ trx }) => ({
  workshop: (await findWorkshop(trx)) ?? null,
  channels: await listChannels(trx),
  places: await listPlaces(trx),
  suppliers: await listSuppliers(trx),
})
