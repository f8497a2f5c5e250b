import { referenceTables } from '../../../shared-core/beads/bead-tables.ts'
import { readDesign } from '../../../shared-core/design/read-design.ts'
import { calendarDate } from '../../../shared-core/units/calendar-date.ts'
import { formatDate } from '../../../shared-core/units/format-date.ts'
import { openBills } from '../bills.ts'
import type { Filling, SheetData } from '../documents/pattern-sheet/sheet-data.ts'
import { localDay } from '../local-day.ts'
import { refuse } from '../refused.ts'
import { getColourwayOf, getLatestVersion, readBody } from '../store/design-rows.ts'
import { listMaterials, toMaterialFields } from '../store/material-rows.ts'
import type { View } from '../store/view.ts'
import { getWorkshop } from '../store/workshop-rows.ts'
import type { QueryHandler } from './handler.ts'

export const makeSheet: QueryHandler<'designs.sheet'> = async (reading, input) => {
  const workshop = await getWorkshop(reading.trx)
  const { design, colourway } = await getColourwayOf(reading, input)
  const version = await findVersion(reading, design, input.version)
  const data: SheetData = {
    audience: input.audience,
    paper: input.paper,
    name: design.name,
    colourway: colourway.name,
    version: version.version,
    maker: workshop.tagMaker || workshop.name,
    day: formatDate(calendarDate(localDay(reading.atMs))),
    decimal: workshop.decimalMark,
    caution: workshop.tagCaution,
    terms: input.terms ?? '',
    ...(await readVersion(reading, version.id, colourway.id)),
  }
  // Loaded with the first document: reading fonts and writing PDF would triple the time of the start.
  const { makePatternSheet } = await import('../documents/pattern-sheet/make-pattern-sheet.ts')
  const made = await makePatternSheet(data, reading.atMs)
  return {
    fileName: `${fileStem(design.name)}.pdf`,
    mediaType: 'application/pdf',
    base64: Buffer.from(made.bytes).toString('base64'),
    pages: made.pages,
    notes: made.missingScripts.map(
      (script) => `The sheet's fonts have no letters for ${script}: they stand as empty boxes.`,
    ),
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

/** The version's body and reading, the colourway's materials, and what of each bead to have at hand. */
async function readVersion(view: View, versionId: string, colourwayId: string) {
  const body = await readBody(view, versionId)
  const read = readDesign(body, referenceTables)
  if (!read.ok) throw new Error(`version ${versionId} was saved readable: ${read.error.message}`)
  const making = { versionId, colourwayId }
  const bills = await openBills(view, [making])
  const needMg: Record<string, number> = {}
  for (const { key, kind, unit, quantity } of bills.billOf(making).lines) {
    if (kind === 'bead' && unit === 'mg') needMg[key.slice('slot:'.length)] = quantity
  }
  const fillings = await readFillings(view, bills.assigned(colourwayId))
  return { body, reading: read.value, needMg, fillings }
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

/** A name as a file may be called on any system; letters of any script stay. */
function fileStem(name: string): string {
  const stem = name
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60)
  return stem === '' ? 'pattern-sheet' : `${stem}-pattern-sheet`
}
