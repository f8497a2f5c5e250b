import { findForm } from '../../shared-core/beads/bead-tables.ts'
import type { Calibration } from '../../shared-core/beads/calibration.ts'
import type { BeadTables } from '../../shared-core/beads/user-forms.ts'
import {
  type BillLine,
  billOfMaterials,
  type MaterialFacts,
  slotKey,
} from '../../shared-core/design/bill.ts'
import type { Learned } from '../../shared-core/design/learned.ts'
import type { SlotCount } from '../../shared-core/design/reading.ts'
import { weighSlot } from '../../shared-core/design/weigh-slot.ts'
import {
  type MaterialNeed,
  needsPerUnit,
  unassignedKeys,
} from '../../shared-core/stock/material-need.ts'
import { factsAsWorked, readLearning } from './learned.ts'
import type { VersionFacts } from './store/facts.ts'
import { type BriefMaterial, calibrationsOf, materialsById } from './store/material-rows.ts'
import { workshopTables } from './store/table-rows.ts'
import type { View } from './store/view.ts'
import { versionFacts } from './version-facts.ts'

/** A version made in a colourway. */
export type Making = Readonly<{ versionId: string; colourwayId: string }>

/** What one unit takes: the bill, its needs by material, and the keys that have none yet. */
export type UnitBill = Readonly<{
  lines: readonly BillLine[]
  needs: readonly MaterialNeed[]
  unassigned: readonly string[]
  /** The first line that each material fills. */
  byMaterial: ReadonlyMap<string, BillLine>
}>

/** What the bill of anything is written from, read once. */
export type BillBook = Readonly<{
  billOf: (making: Making) => UnitBill
  factsOf: (versionId: string) => VersionFacts
  materials: ReadonlyMap<string, BriefMaterial>
  /** Material ids by key of the bill, of a colourway. */
  assigned: (colourwayId: string) => Assigned
  /** What the workshop knows that the tables do not: a design is read with it in a colourway. */
  knownOf: (making: Making) => WorkshopKnown
}>

/** A workshop's own weighings by slot letter, and what it has learnt of itself. */
export type WorkshopKnown = Learned &
  Readonly<{ calibrations: Readonly<Record<string, Calibration>> }>

type Assigned = Readonly<Record<string, string>>

/** Opens the book for some makings; each bill is written once. */
export async function openBills(view: View, makings: readonly Making[]): Promise<BillBook> {
  const materials = await materialsById(view.trx)
  const tables = await workshopTables(view.trx)
  const calibrations = await calibrationsOf(view.trx, materials, tables)
  const assignments = await readAssignments(view)
  const facts = await versionFacts(
    view,
    makings.map((making) => making.versionId),
  )
  const { learned } = await readLearning(view)
  const worked = new Map([...facts].map(([id, found]) => [id, factsAsWorked(found, learned)]))
  const factsOf = (versionId: string): VersionFacts => {
    const found = worked.get(versionId)
    if (found === undefined) throw new Error(`expected the book to hold version ${versionId}`)
    return found
  }
  const assigned = (colourwayId: string) => assignments.get(colourwayId) ?? {}
  const write = (making: Making) =>
    toUnitBill(
      writeBill(factsOf(making.versionId), {
        assigned: assigned(making.colourwayId),
        materials,
        calibrations,
        tables,
        learned,
      }),
    )
  const knownOf = ({ versionId, colourwayId }: Making) => ({
    ...learned,
    calibrations: slotCalibrations(factsOf(versionId), assigned(colourwayId), calibrations),
  })
  return { factsOf, materials, assigned, knownOf, billOf: writtenOnce(write) }
}

function slotCalibrations(
  { palette }: Pick<VersionFacts, 'palette'>,
  assigned: Assigned,
  calibrations: ReadonlyMap<string, Calibration>,
): Readonly<Record<string, Calibration>> {
  return Object.fromEntries(
    palette.flatMap(({ label }) => {
      const weighed = calibrations.get(assigned[slotKey(label)] ?? '')
      return weighed === undefined ? [] : [[label, weighed] as const]
    }),
  )
}

/** Keeps each bill: a hundred lines of orders may be made alike. */
function writtenOnce(write: (making: Making) => UnitBill): (making: Making) => UnitBill {
  const written = new Map<string, Map<string, UnitBill>>()
  return (making) => {
    const ofVersion = written.get(making.versionId) ?? new Map<string, UnitBill>()
    const known = ofVersion.get(making.colourwayId)
    if (known !== undefined) return known
    const bill = write(making)
    ofVersion.set(making.colourwayId, bill)
    written.set(making.versionId, ofVersion)
    return bill
  }
}

function toUnitBill(lines: readonly BillLine[]): UnitBill {
  let byMaterial: ReadonlyMap<string, BillLine> | undefined
  return {
    lines,
    needs: needsPerUnit(lines),
    unassigned: unassignedKeys(lines),
    // Worked out when asked: only what is short is worded.
    get byMaterial() {
      byMaterial ??= new Map(
        lines.toReversed().map((line) => [line.material?.materialId ?? '', line]),
      )
      return byMaterial
    },
  }
}

async function readAssignments({ trx }: View): Promise<ReadonlyMap<string, Assigned>> {
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
  assigned: Assigned
  materials: ReadonlyMap<string, BriefMaterial>
  calibrations: ReadonlyMap<string, Calibration>
  tables: BeadTables
  learned: Learned
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

/** The slot's masses by the workshop's own weighings and culls of the bead that fills it, where there are any. */
function weighedSlot(slot: SlotCount, facts: VersionFacts, fillings: Fillings): SlotCount {
  const materialId = fillings.assigned[slotKey(slot.label)]
  const calibration = materialId === undefined ? undefined : fillings.calibrations.get(materialId)
  const entry = facts.palette.find(({ label }) => label === slot.label)
  const form = entry && findForm(fillings.tables, entry.formId)
  if (form === undefined) return slot
  return weighSlot(slot, form, { calibration, cullRates: fillings.learned.cullRates })
}
