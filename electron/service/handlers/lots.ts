import { findForm } from '../../../shared-core/beads/bead-tables.ts'
import { checkWeighing } from '../../../shared-core/beads/weighing.ts'
import { stocktake } from '../../../shared-core/stock/stocktake.ts'
import { massMg } from '../../../shared-core/units/mass.ts'
import { Refused, refuse } from '../refused.ts'
import type { Act } from '../store/act.ts'
import type { Row } from '../store/database.ts'
import { getRow } from '../store/find-row.ts'
import { calibrationsOf, costOf, listLots } from '../store/material-rows.ts'
import { workshopTables } from '../store/table-rows.ts'
import { getWorkshop } from '../store/workshop-rows.ts'
import { openValuer, valueOfReceipt } from '../valuation.ts'
import type { ActHandler } from './handler.ts'
import { calibrationOf } from './material-view.ts'

export const receiveLot: ActHandler<'lots.receive'> = async (act, input) => {
  const material = await getRow(act.trx, 'material', input.materialId, 'materialId')
  if (input.supplierId !== null) {
    await getRow(act.trx, 'supplier', input.supplierId, 'supplierId')
  }
  if (input.quantity === 0) {
    refuse('nothing-received', 'A lot of nothing was entered.', 'Give what came in.', 'quantity')
  }
  const lotId = act.newId('lot')
  const cost =
    input.costMinor === null ? null : { costMinor: input.costMinor, costQuantity: input.quantity }
  await act.insert('lot', {
    id: lotId,
    material_id: input.materialId,
    dye_lot: input.dyeLot.trim(),
    supplier_id: input.supplierId,
    bought_on: input.boughtOn,
    cost_minor: cost?.costMinor ?? null,
    cost_quantity: cost?.costQuantity ?? null,
    weighed: 1,
    note: input.note,
  })
  await act.append('stock_movement', {
    lot_id: lotId,
    quantity: input.quantity,
    value_minor: valueOfReceipt(cost, input.quantity),
    kind: 'received',
    make_id: null,
    note: '',
  })
  return { value: { lotId }, label: `Received ${material.name}` }
}

export const countLot: ActHandler<'lots.count'> = async (act, input) => {
  const lot = await getRow(act.trx, 'lot', input.lotId, 'lotId')
  const material = await getRow(act.trx, 'material', lot.material_id)
  const lots = await listLots(act.trx, [lot.material_id])
  const facts = lots.map((row) => ({
    lotId: row.id,
    materialId: row.material_id,
    onHand: row.on_hand,
  }))
  const taken = stocktake(facts, [{ lotId: lot.id, quantity: input.quantity }])
  if (!taken.ok) throw new Refused(taken.error)
  const difference = taken.value.lines[0]?.difference ?? 0
  await act.update('lot', lot.id, { weighed: 1 })
  if (difference !== 0) {
    await act.append('stock_movement', {
      lot_id: lot.id,
      quantity: difference,
      value_minor: await valueOfDifference(act, lot, difference),
      kind: input.kind,
      make_id: null,
      note: input.note,
    })
  }
  const verb = input.kind === 'counted' ? 'Counted' : 'Weighed'
  return { value: { difference }, label: `${verb} ${material.name}` }
}

async function valueOfDifference(act: Act, lot: Row<'lot'>, difference: number): Promise<number> {
  const valuer = await openValuer(act, [lot.material_id])
  if (difference > 0) return valuer.surplus(lot.material_id, difference, costOf(lot))
  return 0 - (valuer.issue(lot.material_id, [-difference])[0] ?? 0)
}

function refuseFormless(name: string): never {
  return refuse(
    'not-a-bead',
    `${name} has no bead form, so its beads cannot be told from their weight.`,
    'Give it its bead form first.',
    'materialId',
  )
}

export const addWeighing: ActHandler<'weighings.add'> = async (act, input) => {
  const material = await getRow(act.trx, 'material', input.materialId, 'materialId')
  const tables = await workshopTables(act.trx)
  const form = material.form_id === null ? undefined : findForm(tables, material.form_id)
  if (form === undefined) return refuseFormless(material.name)
  const { scaleResolutionMg, decimalMark } = await getWorkshop(act.trx)
  const checked = checkWeighing(
    {
      beads: input.beads,
      grossMg: massMg(input.grossMg),
      tareMg: massMg(input.tareMg),
      digitMg: scaleResolutionMg,
    },
    form,
    decimalMark,
  )
  if (!checked.ok) throw new Refused(checked.error)
  const id = act.newId('wei')
  await act.insert('weighing', {
    id,
    material_id: material.id,
    at_ms: act.atMs,
    beads: input.beads,
    gross_mg: input.grossMg,
    tare_mg: input.tareMg,
    scale_resolution_mg: scaleResolutionMg,
  })
  const only = new Map([[material.id, material]])
  const own = (await calibrationsOf(act.trx, only, tables)).get(material.id)
  const beadsPerGram = calibrationOf(material, own, tables)?.beadsPerGram ?? form.beadsPerGram
  return {
    value: { id, beadsPerGram },
    label: `Weighed ${input.beads} beads of ${material.name}`,
  }
}

export const saveOffer: ActHandler<'offers.save'> = async (act, { offer }) => {
  const material = await getRow(act.trx, 'material', offer.materialId, 'offer.materialId')
  const supplier = await getRow(act.trx, 'supplier', offer.supplierId, 'offer.supplierId')
  const label = `Saved ${supplier.name}’s pack of ${material.name}`
  const row = {
    material_id: offer.materialId,
    supplier_id: offer.supplierId,
    pack_quantity: offer.packQuantity,
    price_minor: offer.priceMinor,
  }
  if (offer.id !== undefined) {
    await getRow(act.trx, 'offer', offer.id, 'offer.id')
    await act.update('offer', offer.id, row)
    return { value: { id: offer.id }, label }
  }
  const id = act.newId('off')
  await act.insert('offer', { id, ...row })
  return { value: { id }, label }
}
