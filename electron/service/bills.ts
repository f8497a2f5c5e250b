import { findForm, referenceTables } from '../../shared-core/beads/bead-tables.ts'
import type { Calibration } from '../../shared-core/beads/calibration.ts'
import { massOfCount, needMass } from '../../shared-core/beads/grams-and-counts.ts'
import {
  type BillLine,
  billOfMaterials,
  type MaterialFacts,
  slotKey,
} from '../../shared-core/design/bill.ts'
import type { SlotCount } from '../../shared-core/design/reading.ts'
import type { Row } from './store/database.ts'
import type { VersionFacts } from './store/facts.ts'
import { calibrationsOf, listMaterials } from './store/material-rows.ts'
import type { View } from './store/view.ts'
import { versionFacts } from './version-facts.ts'

/** A version made in a colourway. */
export type Making = Readonly<{ versionId: string; colourwayId: string }>

/** What the bill of anything is written from, read once. */
export type BillBook = Readonly<{
  /** What one unit takes. */
  billOf: (making: Making) => readonly BillLine[]
  factsOf: (versionId: string) => VersionFacts
  materials: ReadonlyMap<string, Row<'material'>>
  calibrations: ReadonlyMap<string, Calibration>
  /** Material ids by key of the bill, of a colourway. */
  assigned: (colourwayId: string) => Readonly<Record<string, string>>
}>

/** Opens the book for some makings; each bill is written once. */
export async function openBills(view: View, makings: readonly Making[]): Promise<BillBook> {
  const rows = await listMaterials(view.trx)
  const materials = new Map(rows.map((row) => [row.id, row]))
  const calibrations = await calibrationsOf(view.trx, rows)
  const assignments = await readAssignments(view)
  const facts = await versionFacts(
    view,
    makings.map((making) => making.versionId),
  )
  const factsOf = (versionId: string): VersionFacts => {
    const found = facts.get(versionId)
    if (found === undefined) throw new Error(`expected the book to hold version ${versionId}`)
    return found
  }
  const assigned = (colourwayId: string) => assignments.get(colourwayId) ?? {}
  const written = new Map<string, readonly BillLine[]>()
  return {
    factsOf,
    materials,
    calibrations,
    assigned,
    billOf: ({ versionId, colourwayId }) => {
      const key = `${versionId} ${colourwayId}`
      const bill =
        written.get(key) ??
        writeBill(factsOf(versionId), { assigned: assigned(colourwayId), materials, calibrations })
      written.set(key, bill)
      return bill
    },
  }
}

async function readAssignments({
  trx,
}: View): Promise<ReadonlyMap<string, Readonly<Record<string, string>>>> {
  const rows = await trx
    .selectFrom('colourway_material')
    .select(['colourway_id', 'key', 'material_id'])
    .where('removed_by', 'is', null)
    .execute()
  const found = new Map<string, Record<string, string>>()
  for (const { colourway_id, key, material_id } of rows) {
    const keys = found.get(colourway_id) ?? {}
    keys[key] = material_id
    found.set(colourway_id, keys)
  }
  return found
}

type Fillings = Readonly<{
  assigned: Readonly<Record<string, string>>
  materials: ReadonlyMap<string, Row<'material'>>
  calibrations: ReadonlyMap<string, Calibration>
}>

function writeBill(facts: VersionFacts, fillings: Fillings): readonly BillLine[] {
  const { assigned, materials } = fillings
  const filled: Record<string, MaterialFacts> = {}
  for (const [key, materialId] of Object.entries(assigned)) {
    const row = materials.get(materialId)
    if (row === undefined) continue
    filled[key] = { materialId, unit: row.unit, lotsMatter: row.lots_matter === 1 }
  }
  const counts = facts.counts.map((slot) => weighedSlot(slot, facts, fillings))
  return billOfMaterials({ counts, thread: facts.thread }, facts, filled)
}

/** The slot's masses by the workshop's own weighings of the bead that fills it, where there are any. */
function weighedSlot(slot: SlotCount, facts: VersionFacts, fillings: Fillings): SlotCount {
  const materialId = fillings.assigned[slotKey(slot.label)]
  const calibration = materialId === undefined ? undefined : fillings.calibrations.get(materialId)
  const entry = facts.palette.find(({ label }) => label === slot.label)
  const form = entry && findForm(referenceTables, entry.formId)
  if (calibration === undefined || form === undefined) return slot
  return {
    ...slot,
    massMg: massOfCount(slot.count, calibration),
    needMg: needMass(slot.count, calibration, form.cullRate),
  }
}
