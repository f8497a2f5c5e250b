import type { Transaction } from 'kysely'
import type { z } from 'zod'
import type { BeadFinish } from '../../../shared-core/beads/bead-form.ts'
import { findForm } from '../../../shared-core/beads/bead-tables.ts'
import { beadCv, type Calibration, poolWeighings } from '../../../shared-core/beads/calibration.ts'
import { formWithFinish } from '../../../shared-core/beads/finish-effects.ts'
import type { BeadTables } from '../../../shared-core/beads/user-forms.ts'
import type { Weighing } from '../../../shared-core/beads/weighing.ts'
import type {
  materialFields as fieldsShape,
  lot as lotShape,
} from '../../../shared-core/contract/stock-calls.ts'
import type { Lot } from '../../../shared-core/stock/lot.ts'
import type { LotCost } from '../../../shared-core/stock/lot-value.ts'
import { massMg } from '../../../shared-core/units/mass.ts'
import type { Database, Row } from './database.ts'
import type { Flag } from './tables/kept.ts'

export type MaterialFields = z.output<typeof fieldsShape>
export type LotFacts = z.output<typeof lotShape>

/** The one unit a kind of material is kept in. */
export const UNIT_OF_KIND = {
  bead: 'mg',
  thread: 'mm',
  finding: 'piece',
  packaging: 'piece',
} as const satisfies Readonly<Record<MaterialFields['kind'], Row<'material'>['unit']>>

export function toFlag(value: boolean): Flag {
  return value ? 1 : 0
}

export function toMaterialFields(row: Row<'material'>): MaterialFields {
  return {
    code: row.code,
    name: row.name,
    kind: row.kind,
    formId: row.form_id,
    colourHex: row.colour_hex,
    // Only finishes of the contract are ever written.
    finish: row.finish as BeadFinish | null,
    lotsMatter: row.lots_matter === 1,
    lowAt: row.low_at,
    tareMg: row.tare_mg,
    drawer: row.drawer,
    note: row.note,
    declaration: row.declaration,
  }
}

/** A material's fields as columns. */
export function fromMaterialFields(fields: MaterialFields) {
  return {
    code: fields.code,
    name: fields.name,
    kind: fields.kind,
    unit: UNIT_OF_KIND[fields.kind],
    form_id: fields.formId,
    colour_hex: fields.colourHex,
    finish: fields.finish,
    lots_matter: toFlag(fields.lotsMatter),
    low_at: fields.lowAt,
    tare_mg: fields.tareMg,
    drawer: fields.drawer,
    note: fields.note,
    declaration: fields.declaration,
  }
}

export function listMaterials(trx: Transaction<Database>): Promise<Row<'material'>[]> {
  return trx
    .selectFrom('material')
    .selectAll()
    .where('removed_by', 'is', null)
    .orderBy('code')
    .execute()
}

const BRIEF = ['id', 'name', 'unit', 'form_id', 'lots_matter', 'colour_hex', 'drawer'] as const

/** Of a material, what bills and covers ask for. */
export type BriefMaterial = Pick<Row<'material'>, (typeof BRIEF)[number]>

/** Every material that counts, in brief and in no order. */
function listBriefMaterials(trx: Transaction<Database>): Promise<BriefMaterial[]> {
  return trx.selectFrom('material').select(BRIEF).where('removed_by', 'is', null).execute()
}

/** Every material that counts, in brief, by id. */
export async function materialsById(
  trx: Transaction<Database>,
): Promise<ReadonlyMap<string, BriefMaterial>> {
  return new Map((await listBriefMaterials(trx)).map((row) => [row.id, row]))
}

/** Every lot that counts as the core knows it, in no order. */
export function listCoreLots(trx: Transaction<Database>): Promise<Lot[]> {
  return (
    trx
      .selectFrom('lot')
      .innerJoin('lot_balance', 'lot_balance.lot_id', 'lot.id')
      .select([
        'lot.id as lotId',
        'lot.material_id as materialId',
        'lot_balance.on_hand as onHand',
        'lot.bought_on as boughtOn',
      ])
      .where('lot.removed_by', 'is', null)
      // The table itself takes nothing but days of the calendar.
      .$castTo<Lot>()
      .execute()
  )
}

/** A lot with what its ledger comes to. */
export type LotRow = Row<'lot'> & Readonly<{ on_hand: number; value_minor: number }>

/** Lots that count, of one material or of all, oldest first. */
export async function listLots(
  trx: Transaction<Database>,
  materialIds?: readonly string[],
): Promise<LotRow[]> {
  let query = trx
    .selectFrom('lot')
    .leftJoin('lot_balance', 'lot_balance.lot_id', 'lot.id')
    .selectAll('lot')
    .select(({ fn, val }) => [
      fn.coalesce('lot_balance.on_hand', val(0)).as('on_hand'),
      fn.coalesce('lot_balance.value_minor', val(0)).as('value_minor'),
    ])
    .where('lot.removed_by', 'is', null)
  if (materialIds !== undefined) query = query.where('lot.material_id', 'in', materialIds)
  return query.orderBy('lot.bought_on').orderBy('lot.id').execute()
}

/** What a lot cost, if that is known. */
export function costOf(lot: Pick<Row<'lot'>, 'cost_minor' | 'cost_quantity'>): LotCost | null {
  return lot.cost_minor === null || lot.cost_quantity === null
    ? null
    : { costMinor: lot.cost_minor, costQuantity: lot.cost_quantity }
}

export function toLot(row: LotRow): LotFacts {
  return {
    id: row.id,
    materialId: row.material_id,
    dyeLot: row.dye_lot,
    supplierId: row.supplier_id,
    boughtOn: row.bought_on,
    onHand: row.on_hand,
    costMinor: row.cost_minor,
    costQuantity: row.cost_quantity,
    note: row.note,
  }
}

/**
 * Weighings of materials pooled, by material, with the tables the workshop reckons with; nothing for one
 * that was never weighed bead by bead.
 */
export async function calibrationsOf(
  trx: Transaction<Database>,
  materials: ReadonlyMap<string, Pick<Row<'material'>, 'form_id'>>,
  tables: BeadTables,
): Promise<ReadonlyMap<string, Calibration>> {
  const rows = await trx
    .selectFrom('weighing')
    .selectAll()
    .where('removed_by', 'is', null)
    .orderBy('at_ms')
    .orderBy('id')
    .execute()
  const found = [...Map.groupBy(rows, (row) => row.material_id)].flatMap(([id, weighings]) => {
    const formId = materials.get(id)?.form_id ?? null
    const form = formId === null ? undefined : findForm(tables, formId)
    const pooled = form && poolWeighings(weighings.map(toWeighing), beadCv(form))
    return pooled === undefined ? [] : [[id, pooled] as const]
  })
  return new Map(found)
}

function toWeighing(row: Row<'weighing'>): Weighing {
  return {
    beads: row.beads,
    grossMg: massMg(row.gross_mg),
    tareMg: massMg(row.tare_mg),
    digitMg: row.scale_resolution_mg,
  }
}

/** Beads per gram and their spread from the tables, finish included. */
export function tableForm(row: Pick<Row<'material'>, 'form_id' | 'finish'>, tables: BeadTables) {
  const form = row.form_id === null ? undefined : findForm(tables, row.form_id)
  return form && row.finish !== null ? formWithFinish(form, row.finish as BeadFinish) : form
}
