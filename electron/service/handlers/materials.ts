import { findForm, findThread } from '../../../shared-core/beads/bead-tables.ts'
import type { BeadTables } from '../../../shared-core/beads/user-forms.ts'
import { reservedByMaterial } from '../promises.ts'
import { refuse } from '../refused.ts'
import type { Act } from '../store/act.ts'
import { getRow } from '../store/find-row.ts'
import {
  calibrationsOf,
  fromMaterialFields,
  listLots,
  listMaterials,
  type MaterialFields,
  toLot,
  UNIT_OF_KIND,
} from '../store/material-rows.ts'
import { workshopTables } from '../store/table-rows.ts'
import type { View } from '../store/view.ts'
import { getWorkshop } from '../store/workshop-rows.ts'
import type { ActHandler, QueryHandler, Reading } from './handler.ts'
import { calibrationOf, type MaterialView, viewMaterial } from './material-view.ts'

export const listMaterialViews: QueryHandler<'materials.list'> = async (reading, input) => {
  const wanted = input.search?.trim().toLowerCase() ?? ''
  const views = await viewMaterials(reading)
  return {
    materials: views.filter(
      (view) =>
        (input.kind === undefined || view.kind === input.kind) &&
        [view.code, view.name, view.drawer, view.note].some((text) =>
          text.toLowerCase().includes(wanted),
        ),
    ),
  }
}

/** Every material with what is on hand, reserved and available. */
export async function viewMaterials(reading: View): Promise<MaterialView[]> {
  const { trx } = reading
  const rows = await listMaterials(trx)
  const lots = Map.groupBy(await listLots(trx), (lot) => lot.material_id)
  const tables = await workshopTables(trx)
  const calibrations = await calibrationsOf(trx, new Map(rows.map((row) => [row.id, row])), tables)
  const reserved = await reservedByMaterial(reading)
  return rows.map((row) =>
    viewMaterial(row, {
      lots: lots.get(row.id) ?? [],
      reserved: reserved.get(row.id) ?? 0,
      calibration: calibrations.get(row.id),
      tables,
    }),
  )
}

export const readMaterial: QueryHandler<'materials.read'> = async (reading, { id }) => {
  const { trx } = reading
  const row = await getRow(trx, 'material', id)
  const lots = await listLots(trx, [id])
  const tables = await workshopTables(trx)
  const calibration = (await calibrationsOf(trx, new Map([[id, row]]), tables)).get(id)
  const reserved = (await reservedByMaterial(reading)).get(id) ?? 0
  return {
    material: viewMaterial(row, { lots, reserved, calibration, tables }),
    lots: lots.map(toLot),
    movements: await movementsOf(trx, id),
    weighings: await weighingsOf(trx, id),
    offers: await offersOf(trx, id),
    beadsPerGram: calibrationOf(row, calibration, tables)?.beadsPerGram ?? null,
  }
}

async function movementsOf(trx: Reading['trx'], materialId: string) {
  const rows = await trx
    .selectFrom('stock_movement')
    .innerJoin('lot', 'lot.id', 'stock_movement.lot_id')
    .innerJoin('action', 'action.id', 'stock_movement.action_id')
    .selectAll('stock_movement')
    .select('action.label')
    .where('lot.material_id', '=', materialId)
    .where('lot.removed_by', 'is', null)
    .orderBy('stock_movement.id', 'desc')
    .execute()
  return rows.map((row) => ({
    id: row.id,
    atMs: row.at_ms,
    lotId: row.lot_id,
    quantity: row.quantity,
    kind: row.reverses_id === null ? row.kind : ('reversed' as const),
    label: row.note === '' ? row.label : `${row.label}: ${row.note}`,
  }))
}

async function weighingsOf(trx: Reading['trx'], materialId: string) {
  const rows = await trx
    .selectFrom('weighing')
    .selectAll()
    .where('material_id', '=', materialId)
    .where('removed_by', 'is', null)
    .orderBy('at_ms', 'desc')
    .execute()
  return rows.map((row) => ({
    id: row.id,
    atMs: row.at_ms,
    beads: row.beads,
    grossMg: row.gross_mg,
    tareMg: row.tare_mg,
    scaleResolutionMg: row.scale_resolution_mg,
  }))
}

async function offersOf(trx: Reading['trx'], materialId: string) {
  const rows = await trx
    .selectFrom('offer')
    .selectAll()
    .where('material_id', '=', materialId)
    .where('removed_by', 'is', null)
    .orderBy('pack_quantity')
    .orderBy('id')
    .execute()
  return rows.map((row) => ({
    id: row.id,
    materialId: row.material_id,
    supplierId: row.supplier_id,
    packQuantity: row.pack_quantity,
    priceMinor: row.price_minor,
  }))
}

export const saveMaterial: ActHandler<'materials.save'> = async (act, { id, material }) => {
  await getWorkshop(act.trx)
  refuseUnknownForm(material, await workshopTables(act.trx))
  await refuseDoubleCode(act, material.code, id)
  if (id === undefined) {
    const added = act.newId('mat')
    await act.insert('material', { id: added, ...fromMaterialFields(material) })
    return { value: { id: added }, label: `Added ${material.name}` }
  }
  const row = await getRow(act.trx, 'material', id)
  if (UNIT_OF_KIND[material.kind] !== row.unit) await refuseUnitChange(act, id)
  await act.update('material', id, fromMaterialFields(material))
  return { value: { id }, label: `Saved ${material.name}` }
}

function refuseUnknownForm({ kind, formId }: MaterialFields, tables: BeadTables): void {
  if (formId === null) return
  const known =
    kind === 'bead'
      ? findForm(tables, formId) !== undefined
      : kind === 'thread' && findThread(tables, formId) !== undefined
  if (known) return
  const next =
    kind === 'bead'
      ? 'Choose a bead form such as cylinder-11/0, or leave it empty.'
      : kind === 'thread'
        ? 'Choose a thread such as braided-6lb, or leave it empty.'
        : 'Leave it empty: only beads and threads have a form.'
  refuse('unknown-form', `“${formId}” is not a form of a ${kind}.`, next, 'material.formId')
}

async function refuseDoubleCode(act: Act, code: string, id: string | undefined): Promise<void> {
  const materials = await listMaterials(act.trx)
  const twin = materials.find(
    (row) => row.code.toLowerCase() === code.toLowerCase() && row.id !== id,
  )
  if (twin === undefined) return
  refuse(
    'code-taken',
    `${twin.name} has the code ${twin.code} already.`,
    'Give this one another code, or add a lot to that one.',
    'material.code',
  )
}

async function refuseUnitChange(act: Act, id: string): Promise<void> {
  const lots = await listLots(act.trx, [id])
  const used = await act.trx
    .selectFrom('colourway_material')
    .select('id')
    .where('material_id', '=', id)
    .where('removed_by', 'is', null)
    .limit(1)
    .execute()
  if (lots.length === 0 && used.length === 0) return
  refuse(
    'kind-in-use',
    'The kind decides what the material is counted in, and it has lots or stands in a design.',
    'Keep its kind, or add a new material of the other kind.',
    'material.kind',
  )
}
