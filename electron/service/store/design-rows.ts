import type { DesignBody } from '../../../shared-core/design/design.ts'
import { refuse } from '../refused.ts'
import type { Row } from './database.ts'
import { getRow } from './find-row.ts'
import type { View } from './view.ts'

/** A version as versions are listed. */
export type VersionRow = Omit<Row<'design_version'>, 'body_json'>

/** The latest version of every design that counts, without its body, or of one design. */
export async function latestVersions(
  { trx }: Pick<View, 'trx'>,
  designId?: string,
): Promise<ReadonlyMap<string, VersionRow>> {
  let query = trx
    .selectFrom('design_version')
    .select(['id', 'design_id', 'version', 'note', 'saved_at_ms', 'removed_by'])
    .where('removed_by', 'is', null)
  if (designId !== undefined) query = query.where('design_id', '=', designId)
  const rows = await query.orderBy('version').execute()
  return new Map(rows.map((row) => [row.design_id, row]))
}

/** The latest version of a design. */
export async function getLatestVersion(
  view: Pick<View, 'trx'>,
  designId: string,
): Promise<VersionRow> {
  const found = (await latestVersions(view, designId)).get(designId)
  if (found === undefined) throw new Error(`expected design ${designId} to have a version`)
  return found
}

export async function readBody({ trx }: Pick<View, 'trx'>, versionId: string): Promise<DesignBody> {
  const row = await trx
    .selectFrom('design_version')
    .select('body_json')
    .where('id', '=', versionId)
    .executeTakeFirstOrThrow()
  return JSON.parse(row.body_json) as DesignBody
}

/** Colourways that count, of one design or of all, in the order they were added. */
export function listColourways(
  { trx }: Pick<View, 'trx'>,
  designId?: string,
): Promise<Row<'colourway'>[]> {
  let query = trx.selectFrom('colourway').selectAll().where('removed_by', 'is', null)
  if (designId !== undefined) query = query.where('design_id', '=', designId)
  return query.orderBy('design_id').orderBy('position').execute()
}

/** A colourway and its design; refused when the one is not of the other. */
export async function getColourwayOf(
  { trx }: Pick<View, 'trx'>,
  ids: Readonly<{ designId: string; colourwayId: string }>,
  fieldOf: (name: 'designId' | 'colourwayId') => string = (name) => name,
): Promise<Readonly<{ design: Row<'design'>; colourway: Row<'colourway'> }>> {
  const design = await getRow(trx, 'design', ids.designId, fieldOf('designId'))
  const colourway = await getRow(trx, 'colourway', ids.colourwayId, fieldOf('colourwayId'))
  if (colourway.design_id !== design.id) {
    refuse(
      'colourway-of-another-design',
      `The colourway ${colourway.name} belongs to another design than ${design.name}.`,
      `Choose one of the colourways of ${design.name}.`,
      fieldOf('colourwayId'),
    )
  }
  return { design, colourway }
}
