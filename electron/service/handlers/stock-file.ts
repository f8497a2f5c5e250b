import {
  type KnownMaterial,
  type KnownStock,
  readStockFile,
  type StockFilePreview,
} from '../exchange/stock-file.ts'
import { Refused, refuse } from '../refused.ts'
import type { Act } from '../store/act.ts'
import { fromMaterialFields, listLots, listMaterials } from '../store/material-rows.ts'
import { workshopTables } from '../store/table-rows.ts'
import type { View } from '../store/view.ts'
import { getWorkshop, listSuppliers } from '../store/workshop-rows.ts'
import { valueOfReceipt } from '../valuation.ts'
import type { ActHandler, QueryHandler } from './handler.ts'

export const previewStockFile: QueryHandler<'stockFile.preview'> = async (reading, input) =>
  readStockFile(input, await readKnownStock(reading))

async function readKnownStock({ trx }: View): Promise<KnownStock> {
  const { currency, decimalMark } = await getWorkshop(trx)
  const lots = Map.groupBy(await listLots(trx), (lot) => lot.material_id)
  const materials = (await listMaterials(trx)).map((row): [string, KnownMaterial] => [
    row.code.toLowerCase(),
    {
      name: row.name,
      kind: row.kind,
      unit: row.unit,
      lots: (lots.get(row.id) ?? []).map((lot) => ({
        dyeLot: lot.dye_lot,
        boughtOn: lot.bought_on,
        onHand: lot.on_hand,
      })),
    },
  ])
  const tables = await workshopTables(trx)
  return { currency, decimalMark, tables, materials: new Map(materials) }
}

export const importStockFile: ActHandler<'stockFile.import'> = async (act, input) => {
  const { leaveOutLines, ...request } = input
  const preview = readStockFile(request, await readKnownStock(act))
  const [fault] = preview.faults
  if (fault !== undefined) throw new Refused(fault)
  const leftOut = new Set(leaveOutLines)
  checkLeftOut(preview, leftOut)
  const rows = preview.rows.filter((row) => !leftOut.has(row.line))
  if (rows.length === 0) {
    refuse(
      'nothing-to-import',
      'Every line of the file was left out.',
      'Keep at least one line.',
      'leaveOutLines',
    )
  }
  const written = await writeRows(act, rows)
  const { fileName } = input.file
  return {
    value: { ...written, leftOut: leftOut.size },
    label: `Imported ${rows.length} lines of ${fileName}`,
  }
}

/** Nothing bad is passed over in silence, and nothing is left out that is not there. */
function checkLeftOut(preview: StockFilePreview, leftOut: ReadonlySet<number>): void {
  const bad = preview.badRows.filter((row) => !leftOut.has(row.line))
  const [first] = bad
  if (first !== undefined) {
    const lines = bad.map((row) => row.line).join(', ')
    throw new Refused({
      code: 'bad-rows',
      message: `${bad.length === 1 ? 'Line' : 'Lines'} ${lines} cannot be taken: ${first.faults[0]?.message ?? ''}`,
      next: 'Put the file right, or leave these lines out by name.',
      field: 'leaveOutLines',
      line: first.line,
    })
  }
  const there = new Set([...preview.rows, ...preview.badRows].map((row) => row.line))
  const stray = [...leftOut].find((line) => !there.has(line))
  if (stray === undefined) return
  refuse(
    'no-such-line',
    `Line ${stray} is to be left out, and the file has no row there.`,
    'Give the line on which a row begins.',
    'leaveOutLines',
  )
}

type Row = StockFilePreview['rows'][number]

async function writeRows(act: Act, rows: readonly Row[]) {
  const suppliers = new Map(
    (await listSuppliers(act.trx)).map((one) => [nameKey(one.name), one.id]),
  )
  const materials = new Map(
    (await listMaterials(act.trx)).map((row) => [row.code.toLowerCase(), row.id]),
  )
  const before = { suppliers: suppliers.size, materials: materials.size }
  for (const row of rows) {
    const supplierId = await supplierOf(act, row.supplier, suppliers)
    const materialId = await materialOf(act, row, materials)
    await addLot(act, row, { materialId, supplierId })
    if (supplierId !== null) await addOffer(act, row, { materialId, supplierId })
  }
  return {
    materials: materials.size - before.materials,
    lots: rows.length,
    suppliers: suppliers.size - before.suppliers,
  }
}

function nameKey(name: string): string {
  return name.trim().toLowerCase()
}

async function supplierOf(
  act: Act,
  name: string,
  known: Map<string, string>,
): Promise<string | null> {
  if (name === '') return null
  const there = known.get(nameKey(name))
  if (there !== undefined) return there
  const id = act.newId('sup')
  await act.insert('supplier', { id, name, lead_days: 7, note: '' })
  known.set(nameKey(name), id)
  return id
}

async function materialOf(act: Act, row: Row, known: Map<string, string>): Promise<string> {
  const there = known.get(row.code.toLowerCase())
  if (there !== undefined) return there
  const id = act.newId('mat')
  const { code, name, kind, formId, colourHex, finish, drawer, note } = row
  const fields = { code, name, kind, formId, colourHex, finish, drawer }
  await act.insert('material', {
    id,
    ...fromMaterialFields({
      ...fields,
      note: '',
      // Only of beads do dye lots show.
      lotsMatter: kind === 'bead',
      lowAt: null,
      tareMg: null,
      declaration: kind === 'finding' ? note : '',
    }),
  })
  known.set(code.toLowerCase(), id)
  return id
}

type Ids = Readonly<{ materialId: string; supplierId: string | null }>

async function addLot(act: Act, row: Row, { materialId, supplierId }: Ids): Promise<void> {
  const id = act.newId('lot')
  const cost =
    row.packPriceMinor === null || row.packQuantity === null
      ? null
      : { costMinor: row.packPriceMinor, costQuantity: row.packQuantity }
  await act.insert('lot', {
    id,
    material_id: materialId,
    dye_lot: row.dyeLot,
    supplier_id: supplierId,
    bought_on: row.boughtOn,
    cost_minor: cost?.costMinor ?? null,
    cost_quantity: cost?.costQuantity ?? null,
    weighed: row.quantity === null ? 0 : 1,
    note: row.note,
  })
  if (row.quantity === null || row.quantity === 0) return
  await act.append('stock_movement', {
    lot_id: id,
    quantity: row.quantity,
    value_minor: valueOfReceipt(cost, row.quantity),
    kind: 'opening',
    make_id: null,
    note: '',
  })
}

/** The pack the list names, as an offer of its supplier; the latest price where it is there already. */
async function addOffer(
  act: Act,
  row: Row,
  { materialId, supplierId }: Ids & Readonly<{ supplierId: string }>,
): Promise<void> {
  const { packQuantity, packPriceMinor } = row
  if (packQuantity === null || packPriceMinor === null) return
  const there = await act.trx
    .selectFrom('offer')
    .selectAll()
    .where('material_id', '=', materialId)
    .where('supplier_id', '=', supplierId)
    .where('pack_quantity', '=', packQuantity)
    .where('removed_by', 'is', null)
    .executeTakeFirst()
  if (there !== undefined) {
    await act.update('offer', there.id, { price_minor: packPriceMinor })
    return
  }
  await act.insert('offer', {
    id: act.newId('off'),
    material_id: materialId,
    supplier_id: supplierId,
    pack_quantity: packQuantity,
    price_minor: packPriceMinor,
  })
}
