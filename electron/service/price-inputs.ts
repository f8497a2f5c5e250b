import type { BillKind, BillLine } from '../../shared-core/design/bill.ts'
import type { PriceInputs } from '../../shared-core/pricing/price-sheet.ts'
import { type Making, openBills } from './bills.ts'
import { getRow } from './store/find-row.ts'
import type { View } from './store/view.ts'
import { getWorkshop, listChannels } from './store/workshop-rows.ts'
import { openValuer, type Valuer } from './valuation.ts'

const GROUPS = {
  bead: 'materials',
  thread: 'thread',
  finding: 'findings',
  packaging: 'packaging',
} as const satisfies Readonly<Record<BillKind, string>>

/** What the prices of some makings are computed from, in their order. */
export async function readPriceInputs(
  view: View,
  makings: readonly Making[],
): Promise<readonly PriceInputs[]> {
  if (makings.length === 0) return []
  const workshop = await getWorkshop(view.trx)
  const channels = await listChannels(view.trx)
  const bills = await openBills(view, makings)
  const all = makings.map((making) => bills.billOf(making).lines)
  const valuer = await openValuer(view, materialIdsOf(all.flat()))
  const setPrices = await readSetPrices(view)
  const names = await designNames(view)
  return makings.map((making, at) => {
    const facts = bills.factsOf(making.versionId)
    return {
      designName: names.get(facts.designId) ?? '',
      unitName: facts.unitName,
      materials: (all[at] ?? []).map((line) => materialCost(line, bills, valuer)),
      labourS: facts.labour.totalS,
      workshop,
      channels,
      setPrices: setPrices.get(making.colourwayId) ?? {},
    }
  })
}

type Bills = Awaited<ReturnType<typeof openBills>>

function materialCost(
  line: BillLine,
  bills: Bills,
  valuer: Valuer,
): PriceInputs['materials'][number] {
  const material = line.material && bills.materials.get(line.material.materialId)
  return {
    key: line.key,
    label: material?.name ?? line.name,
    group: GROUPS[line.kind],
    unit: line.unit,
    quantity: line.quantity,
    basis: line.basis,
    cost: material === undefined ? null : valuer.rate(material.id),
  }
}

function materialIdsOf(lines: readonly BillLine[]): readonly string[] {
  return [...new Set(lines.flatMap((line) => line.material?.materialId ?? []))]
}

async function designNames({ trx }: View): Promise<ReadonlyMap<string, string>> {
  const rows = await trx.selectFrom('design').select(['id', 'name']).execute()
  return new Map(rows.map((row) => [row.id, row.name]))
}

/** The maker's own prices by colourway, then by channel. */
async function readSetPrices({
  trx,
}: View): Promise<ReadonlyMap<string, Readonly<Record<string, number>>>> {
  const rows = await trx
    .selectFrom('set_price')
    .selectAll()
    .where('removed_by', 'is', null)
    .where('price_minor', 'is not', null)
    .execute()
  const found = new Map<string, Record<string, number>>()
  for (const { colourway_id, channel_id, price_minor } of rows) {
    const prices = found.get(colourway_id) ?? {}
    prices[channel_id] = price_minor ?? 0
    found.set(colourway_id, prices)
  }
  return found
}

/** The latest version of a colourway's design, in that colourway. */
export async function latestMaking(view: View, colourwayId: string): Promise<Making> {
  const colourway = await getRow(view.trx, 'colourway', colourwayId, 'colourwayId')
  const version = await view.trx
    .selectFrom('design_version')
    .select('id')
    .where('design_id', '=', colourway.design_id)
    .where('removed_by', 'is', null)
    .orderBy('version', 'desc')
    .limit(1)
    .executeTakeFirstOrThrow()
  return { versionId: version.id, colourwayId }
}
