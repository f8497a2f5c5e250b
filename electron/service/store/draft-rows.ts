import { isDeepStrictEqual } from 'node:util'
import type { Transaction } from 'kysely'
import type { DesignBody } from '../../../shared-core/design/design.ts'
import type { Stroke } from '../../../shared-core/design/edits/body-edit.ts'
import type { Database, Row } from './database.ts'

type Trx = Transaction<Database>

/** What lies on a design's table, read. */
export type DraftRow = Omit<Row<'draft'>, 'body_json'> & Readonly<{ body: DesignBody }>

/** A stroke with its number, counted from 1. */
export type NumberedStroke = Stroke & Readonly<{ seq: number }>

export async function findDraft(trx: Trx, designId: string): Promise<DraftRow | undefined> {
  const row = await trx
    .selectFrom('draft')
    .selectAll()
    .where('design_id', '=', designId)
    .executeTakeFirst()
  if (row === undefined) return undefined
  const { body_json, ...rest } = row
  return { ...rest, body: JSON.parse(body_json) as DesignBody }
}

export async function insertDraft(trx: Trx, { body, ...row }: DraftRow): Promise<void> {
  await trx
    .insertInto('draft')
    .values({ ...row, body_json: JSON.stringify(body) })
    .execute()
}

export async function updateDraft(
  trx: Trx,
  designId: string,
  { body, ...patch }: Partial<Omit<DraftRow, 'design_id'>>,
): Promise<void> {
  await trx
    .updateTable('draft')
    .set({ ...patch, ...(body === undefined ? {} : { body_json: JSON.stringify(body) }) })
    .where('design_id', '=', designId)
    .execute()
}

/** Strokes with these numbers, both ends included, in order. */
export async function readStrokes(
  trx: Trx,
  designId: string,
  from: number,
  to: number,
): Promise<readonly NumberedStroke[]> {
  const rows = await trx
    .selectFrom('draft_stroke')
    .selectAll()
    .where('design_id', '=', designId)
    .where('seq', '>=', from)
    .where('seq', '<=', to)
    .orderBy('seq')
    .execute()
  return rows.map(({ seq, label, redo_json, undo_json }) => ({
    seq,
    label,
    redo: JSON.parse(redo_json) as Stroke['redo'],
    undo: JSON.parse(undo_json) as Stroke['undo'],
  }))
}

// Five values a stroke; a statement takes 32,766.
const STROKES_AT_ONCE = 1_000

/** Writes strokes from number `after + 1` on, in place of those that stood there. */
export async function writeStrokes(
  trx: Trx,
  designId: string,
  after: number,
  strokes: readonly Stroke[],
): Promise<void> {
  await trx
    .deleteFrom('draft_stroke')
    .where('design_id', '=', designId)
    .where('seq', '>', after)
    .execute()
  const rows = strokes.map(({ label, redo, undo }, at) => ({
    design_id: designId,
    seq: after + 1 + at,
    label,
    redo_json: JSON.stringify(redo),
    undo_json: JSON.stringify(undo),
  }))
  for (let from = 0; from < rows.length; from += STROKES_AT_ONCE) {
    await trx
      .insertInto('draft_stroke')
      .values(rows.slice(from, from + STROKES_AT_ONCE))
      .execute()
  }
}

export async function deleteDraft(trx: Trx, designId: string): Promise<void> {
  await trx.deleteFrom('draft_stroke').where('design_id', '=', designId).execute()
  await trx.deleteFrom('draft').where('design_id', '=', designId).execute()
}

/** Notes that a version has been saved, on the table where the same body lies. */
export async function noteSaved(
  trx: Trx,
  {
    designId,
    versionId,
    body,
  }: Readonly<{ designId: string; versionId: string; body: DesignBody }>,
): Promise<void> {
  const draft = await findDraft(trx, designId)
  if (draft === undefined || !isSameBody(draft.body, body)) return
  await updateDraft(trx, designId, { saved_version_id: versionId, saved_position: draft.position })
}

/** Whether two bodies hold the same. */
export function isSameBody(a: DesignBody, b: DesignBody): boolean {
  return isDeepStrictEqual(a, b)
}
