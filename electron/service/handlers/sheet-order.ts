import { calendarDate } from '../../../shared-core/units/calendar-date.ts'
import { formatDate } from '../../../shared-core/units/format-date.ts'
import { openBills } from '../bills.ts'
import type { SheetOrder } from '../documents/document-task.ts'
import type { Filling } from '../documents/pattern-sheet/sheet-data.ts'
import { localDay } from '../local-day.ts'
import { refuse } from '../refused.ts'
import { getColourwayOf, getLatestVersion, readBody } from '../store/design-rows.ts'
import { listMaterials, toMaterialFields } from '../store/material-rows.ts'
import { workshopTables } from '../store/table-rows.ts'
import type { View } from '../store/view.ts'
import { getWorkshop } from '../store/workshop-rows.ts'
import type { Reading } from './handler.ts'

/** Which design, and how its sheet is to be. */
export type SheetWish = Pick<SheetOrder, 'audience' | 'paper'> &
  Readonly<{
    designId: string
    colourwayId: string
    version?: number | undefined
    terms?: string | undefined
  }>

/** Reads all that a sheet is made from. */
export async function readSheetOrder(reading: Reading, wish: SheetWish): Promise<SheetOrder> {
  const workshop = await getWorkshop(reading.trx)
  const { design, colourway } = await getColourwayOf(reading, wish)
  const version = await findVersion(reading, design, wish.version)
  return {
    audience: wish.audience,
    paper: wish.paper,
    name: design.name,
    colourway: colourway.name,
    version: version.version,
    maker: workshop.tagMaker || workshop.name,
    day: formatDate(calendarDate(localDay(reading.atMs))),
    decimal: workshop.decimalMark,
    tables: await workshopTables(reading.trx),
    caution: workshop.tagCaution,
    terms: wish.terms ?? '',
    ...(await readVersion(reading, version.id, colourway.id)),
  }
}

async function findVersion(
  view: View,
  design: Readonly<{ id: string; name: string }>,
  wanted: number | undefined,
): Promise<Readonly<{ id: string; version: number }>> {
  const latest = await getLatestVersion(view, design.id)
  if (wanted === undefined || wanted === latest.version) return latest
  const found = await view.trx
    .selectFrom('design_version')
    .select(['id', 'version'])
    .where('design_id', '=', design.id)
    .where('version', '=', wanted)
    .where('removed_by', 'is', null)
    .executeTakeFirst()
  return (
    found ??
    refuse(
      'not-found',
      `${design.name} has no version ${wanted}.`,
      `Choose one of 1 to ${latest.version}.`,
      'version',
    )
  )
}

/** The version's body, the colourway's materials, and what the workshop knows of its beads and its work. */
async function readVersion(view: View, versionId: string, colourwayId: string) {
  const body = await readBody(view, versionId)
  const making = { versionId, colourwayId }
  const bills = await openBills(view, [making])
  const fillings = await readFillings(view, bills.assigned(colourwayId))
  return { body, fillings, known: bills.knownOf(making) }
}

async function readFillings(
  { trx }: View,
  assigned: Readonly<Record<string, string>>,
): Promise<Record<string, Filling>> {
  const rows = new Map((await listMaterials(trx)).map((row) => [row.id, row]))
  const fillings: Record<string, Filling> = {}
  for (const [key, id] of Object.entries(assigned)) {
    const row = rows.get(id)
    if (row !== undefined) fillings[key] = toMaterialFields(row)
  }
  return fillings
}
