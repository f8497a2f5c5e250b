import type { CallOutput, ParsedInput } from '../../../shared-core/contract/calls.ts'
import type { DesignBody } from '../../../shared-core/design/design.ts'
import { applyEdits, type BodyEdit } from '../../../shared-core/design/edits/body-edit.ts'
import { bodyStroke } from '../../../shared-core/design/edits/body-stroke.ts'
import { Refused, refuse } from '../refused.ts'
import { getLatestVersion, readBody, type VersionRow } from '../store/design-rows.ts'
import {
  type DraftRow,
  deleteDraft,
  findDraft,
  insertDraft,
  isSameBody,
  readStrokes,
  updateDraft,
  writeStrokes,
} from '../store/draft-rows.ts'
import { getRow } from '../store/find-row.ts'
import type { View } from '../store/view.ts'
import type { QueryHandler } from './handler.ts'

/** Strokes sent at once: enough for a long evening's undo, little enough to send at a blink. */
const STROKES_AT_ONCE = 500

type Opened = CallOutput<'drafts.open'>

export async function openDraft(
  view: View,
  { designId }: ParsedInput<'drafts.open'>,
): Promise<Opened> {
  const { trx } = view
  const design = await getRow(trx, 'design', designId, 'designId')
  const latest = await getLatestVersion(view, designId)
  const latestBody = await readBody(view, latest.id)
  const { draft, isBehind } = await upToDate(view, { latest, latestBody })
  const { body, position, count } = draft
  const from = Math.max(1, position - STROKES_AT_ONCE + 1)
  const strokes = await readStrokes(trx, designId, from, position + STROKES_AT_ONCE)
  return {
    designId,
    name: design.name,
    tags: JSON.parse(design.tags_json) as string[],
    version: latest.version,
    body: body as Opened['body'],
    position,
    count,
    strokes: strokes as Opened['strokes'],
    savedPosition: draft.saved_position,
    isBehind,
  }
}

type Latest = Readonly<{ latest: VersionRow; latestBody: DesignBody }>
type Found = Readonly<{ draft: DraftRow; isBehind: boolean }>

/** The draft as it is to be shown beside the latest version: new, left as it was, or brought after it. */
async function upToDate(view: View, { latest, latestBody }: Latest): Promise<Found> {
  const { trx } = view
  const designId = latest.design_id
  const draft = await findDraft(trx, designId)
  if (draft === undefined) {
    const fresh = freshDraft(designId, { latest, latestBody })
    await insertDraft(trx, fresh)
    return { draft: fresh, isBehind: false }
  }
  if (isSameBody(draft.body, latestBody)) {
    return { draft: await savedAt(view, draft, latest.id), isBehind: false }
  }
  if (draft.saved_version_id === latest.id) return { draft, isBehind: false }
  const saved = await readVersion(view, draft.saved_version_id)
  // A version that was taken back by an undo leaves the drawing as it is, to be saved once more.
  if (saved.removed_by !== null) return { draft: await unsaved(view, draft), isBehind: false }
  if (draft.position !== draft.saved_position) {
    return { draft: await unsaved(view, draft), isBehind: true }
  }
  return { draft: await takeVersion(view, draft, { latest, latestBody }), isBehind: false }
}

function freshDraft(designId: string, { latest, latestBody }: Latest): DraftRow {
  return {
    design_id: designId,
    body: latestBody,
    position: 0,
    count: 0,
    saved_version_id: latest.id,
    saved_position: 0,
  }
}

async function savedAt({ trx }: View, draft: DraftRow, versionId: string): Promise<DraftRow> {
  if (draft.saved_version_id === versionId && draft.saved_position === draft.position) return draft
  const patch = { saved_version_id: versionId, saved_position: draft.position }
  await updateDraft(trx, draft.design_id, patch)
  return { ...draft, ...patch }
}

async function unsaved({ trx }: View, draft: DraftRow): Promise<DraftRow> {
  if (draft.saved_position === null) return draft
  await updateDraft(trx, draft.design_id, { saved_position: null })
  return { ...draft, saved_position: null }
}

/** A version saved elsewhere becomes a stroke, so that it can be undone like any other. */
async function takeVersion(
  { trx }: View,
  draft: DraftRow,
  { latest, latestBody }: Latest,
): Promise<DraftRow> {
  const { design_id, position } = draft
  const label = `Version ${latest.version}`
  await writeStrokes(trx, design_id, position, [bodyStroke(label, draft.body, latestBody)])
  const patch = {
    body: latestBody,
    position: position + 1,
    count: position + 1,
    saved_version_id: latest.id,
    saved_position: position + 1,
  }
  await updateDraft(trx, design_id, patch)
  return { ...draft, ...patch }
}

function readVersion({ trx }: View, id: string) {
  return trx
    .selectFrom('design_version')
    .select(['id', 'version', 'removed_by'])
    .where('id', '=', id)
    .executeTakeFirstOrThrow()
}

export const readDraftState: QueryHandler<'drafts.state'> = async (view, { designId }) => {
  await getRow(view.trx, 'design', designId, 'designId')
  const draft = await findDraft(view.trx, designId)
  if (draft === undefined) return { hasUnsaved: false, strokes: 0 }
  const { id } = await getLatestVersion(view, designId)
  return {
    hasUnsaved: !isSameBody(draft.body, await readBody(view, id)),
    strokes: draft.position,
  }
}

export const readDraftStrokes: QueryHandler<'drafts.strokes'> = async (
  { trx },
  { designId, from, to },
) => {
  await getDraft(trx, designId)
  const last = Math.min(to, from + STROKES_AT_ONCE - 1)
  return { strokes: (await readStrokes(trx, designId, from, last)) as Opened['strokes'] }
}

export async function addStrokes(
  { trx }: View,
  { designId, position, strokes }: ParsedInput<'drafts.stroke'>,
): Promise<CallOutput<'drafts.stroke'>> {
  const draft = await getDraft(trx, designId)
  if (draft.position !== position) return refuseMoved(draft)
  const body = bodyAfter(
    draft.body,
    strokes.map(({ redo }) => redo),
  )
  await writeStrokes(trx, designId, position, strokes)
  const count = position + strokes.length
  const isSavedGone = draft.saved_position !== null && draft.saved_position > position
  await updateDraft(trx, designId, {
    body,
    position: count,
    count,
    ...(isSavedGone ? { saved_position: null } : {}),
  })
  return { position: count, count }
}

export async function moveDraft(
  { trx }: View,
  { designId, position }: ParsedInput<'drafts.moveTo'>,
): Promise<CallOutput<'drafts.moveTo'>> {
  const draft = await getDraft(trx, designId)
  if (position > draft.count) {
    return refuse(
      'stroke-not-there',
      `The drawing has ${draft.count} strokes; there is no stroke ${position}.`,
      `Choose a position from 0 to ${draft.count}.`,
      'position',
    )
  }
  const [low, high] = [Math.min(position, draft.position), Math.max(position, draft.position)]
  const between = await readStrokes(trx, designId, low + 1, high)
  const edits =
    position < draft.position
      ? between.toReversed().map(({ undo }) => undo)
      : between.map(({ redo }) => redo)
  await updateDraft(trx, designId, { body: bodyAfter(draft.body, edits), position })
  return { position, count: draft.count }
}

export async function forgetDraft(
  { trx }: View,
  { designId }: ParsedInput<'drafts.forget'>,
): Promise<CallOutput<'drafts.forget'>> {
  await getRow(trx, 'design', designId, 'designId')
  await deleteDraft(trx, designId)
  return {}
}

async function getDraft(trx: View['trx'], designId: string): Promise<DraftRow> {
  const design = await getRow(trx, 'design', designId, 'designId')
  const draft = await findDraft(trx, designId)
  if (draft !== undefined) return draft
  return refuse(
    'no-draft',
    `${design.name} does not lie on the drawing table.`,
    'Open it on the drawing table first.',
    'designId',
  )
}

function bodyAfter(body: DesignBody, edits: readonly (readonly BodyEdit[])[]): DesignBody {
  let changed = body
  for (const edit of edits) {
    const next = applyEdits(changed, edit)
    if (!next.ok) throw new Refused(next.error)
    changed = next.value
  }
  return changed
}

function refuseMoved({ position }: DraftRow): never {
  return refuse(
    'draft-moved',
    `The drawing stands after stroke ${position} and not where this stroke was drawn.`,
    'Open the drawing again; it stands as it was last kept.',
    'position',
  )
}
