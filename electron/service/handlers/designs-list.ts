import { makeable } from '../../../shared-core/stock/makeable.ts'
import { readAvailability } from '../availability.ts'
import { openBills } from '../bills.ts'
import { latestVersions, listColourways, type VersionRow } from '../store/design-rows.ts'
import type { View } from '../store/view.ts'
import { versionFacts } from '../version-facts.ts'
import type { QueryHandler } from './handler.ts'

export const listDesigns: QueryHandler<'designs.list'> = async (reading, input) => {
  const wanted = input.search?.trim().toLowerCase() ?? ''
  const rows = await reading.trx
    .selectFrom('design')
    .selectAll()
    .where('removed_by', 'is', null)
    .where('archived', '=', input.archived === true ? 1 : 0)
    .orderBy('name')
    .orderBy('id')
    .execute()
  const versions = await latestVersions(reading)
  const chosen = rows.filter((row) => `${row.name} ${row.tags_json}`.toLowerCase().includes(wanted))
  const latest = chosen.flatMap((row) => versions.get(row.id) ?? [])
  const facts = await versionFacts(
    reading,
    latest.map((version) => version.id),
  )
  const makeableOf = await countMakeable(reading, latest)
  const sold = await readSold(reading)
  return {
    designs: chosen.flatMap((row) => {
      const version = versions.get(row.id)
      const known = version && facts.get(version.id)
      if (version === undefined || known === undefined) return []
      return {
        id: row.id,
        name: row.name,
        unitName: known.unitName,
        tags: JSON.parse(row.tags_json) as string[],
        version: version.version,
        beads: known.beads,
        archived: row.archived === 1,
        savedAtMs: version.saved_at_ms,
        makeable: makeableOf.get(version.id) ?? null,
        sold: sold.get(row.id)?.units ?? 0,
        takenMinor: sold.get(row.id)?.takenMinor ?? 0,
      }
    }),
  }
}

/** Units that can be made of each version in its design's first colourway; none where beads are missing. */
async function countMakeable(
  view: View,
  versions: readonly VersionRow[],
): Promise<ReadonlyMap<string, number>> {
  const firstOf = new Map<string, string>()
  for (const { id, design_id } of (await listColourways(view)).toReversed()) {
    firstOf.set(design_id, id)
  }
  const makings = versions.flatMap((version) => {
    const colourwayId = firstOf.get(version.design_id)
    return colourwayId === undefined ? [] : [{ versionId: version.id, colourwayId }]
  })
  const bills = await openBills(view, makings)
  const lots = Map.groupBy((await readAvailability(view)).availableTo(), (lot) => lot.materialId)
  return new Map(
    makings.flatMap((making) => {
      const { lines, needs } = bills.billOf(making)
      const own = needs.flatMap(({ materialId }) => lots.get(materialId) ?? [])
      const { units, unassigned } = makeable(lines, own)
      return unassigned.length > 0 ? [] : [[making.versionId, units] as const]
    }),
  )
}

/** Pieces sold of each design, less those that came back, and what they took. */
async function readSold({ trx }: View) {
  const rows = await trx
    .selectFrom('sale')
    .innerJoin('piece', 'piece.id', 'sale.piece_id')
    .innerJoin('make', 'make.id', 'piece.make_id')
    .innerJoin('design_version', 'design_version.id', 'make.version_id')
    .select(({ fn }) => [
      'design_version.design_id',
      fn.sum<number>('sale.units').as('units'),
      fn.sum<number>('sale.price_minor').as('taken'),
    ])
    .groupBy('design_version.design_id')
    .execute()
  return new Map(
    rows.map((row) => [row.design_id, { units: Number(row.units), takenMinor: Number(row.taken) }]),
  )
}
