import type { DesignBody } from '../../../shared-core/design/design.ts'
import { refuse } from '../refused.ts'
import type { Act } from '../store/act.ts'
import { getLatestVersion, listColourways, readBody } from '../store/design-rows.ts'
import { noteSaved } from '../store/draft-rows.ts'
import { getRow } from '../store/find-row.ts'
import { calibrationsOf, materialsById, toFlag } from '../store/material-rows.ts'
import { workshopTables } from '../store/table-rows.ts'
import type { View } from '../store/view.ts'
import { getWorkshop } from '../store/workshop-rows.ts'
import { factsOf } from '../version-facts.ts'
import { checkDesign } from './check-design.ts'
import { fillColourway } from './colourways.ts'
import type { ActHandler, QueryHandler } from './handler.ts'

export const readDesignWhole: QueryHandler<'designs.read'> = async (reading, input) => {
  const { trx } = reading
  const design = await getRow(trx, 'design', input.id)
  const versions = await trx
    .selectFrom('design_version')
    .select(['id', 'version', 'note', 'saved_at_ms'])
    .where('design_id', '=', design.id)
    .where('removed_by', 'is', null)
    .orderBy('version', 'desc')
    .execute()
  const wanted =
    input.version === undefined
      ? versions[0]
      : versions.find((one) => one.version === input.version)
  if (wanted === undefined) {
    return refuse(
      'not-found',
      `${design.name} has no version ${input.version}.`,
      `Choose one of 1 to ${versions[0]?.version ?? 1}.`,
      'version',
    )
  }
  return {
    id: design.id,
    name: design.name,
    tags: JSON.parse(design.tags_json) as string[],
    archived: design.archived === 1,
    versionId: wanted.id,
    version: wanted.version,
    body: (await readBody(reading, wanted.id)) as MutableBody,
    colourways: await readColourways(reading, design.id),
    versions: versions.map((one) => ({
      id: one.id,
      version: one.version,
      savedAtMs: one.saved_at_ms,
      note: one.note,
    })),
    beadsPerGram: await weighedBeads(reading),
  }
}

/** The contract's shape of a body: the same, but its lists may be changed. */
type MutableBody = Awaited<ReturnType<QueryHandler<'designs.read'>>>['body']

async function readColourways(view: View, designId: string) {
  const rows = await listColourways(view, designId)
  const filled = await view.trx
    .selectFrom('colourway_material')
    .innerJoin('colourway', 'colourway.id', 'colourway_material.colourway_id')
    .select(['colourway_id', 'key', 'material_id'])
    .where('colourway.design_id', '=', designId)
    .where('colourway_material.removed_by', 'is', null)
    .orderBy('key')
    .execute()
  const byColourway = Map.groupBy(filled, (one) => one.colourway_id)
  return rows.map(({ id, name }) => ({
    id,
    name,
    materials: Object.fromEntries(
      (byColourway.get(id) ?? []).map(({ key, material_id }) => [key, material_id]),
    ),
  }))
}

async function weighedBeads({ trx }: View) {
  const tables = await workshopTables(trx)
  const calibrations = await calibrationsOf(trx, await materialsById(trx), tables)
  return Object.fromEntries([...calibrations].map(([id, { beadsPerGram }]) => [id, beadsPerGram]))
}

export const saveDesign: ActHandler<'designs.save'> = async (act, input) => {
  await getWorkshop(act.trx)
  checkDesign(input.body, await workshopTables(act.trx))
  const row = { name: input.name, tags_json: JSON.stringify(input.tags) }
  if (input.id === undefined) {
    const id = act.newId('des')
    await act.insert('design', { id, ...row, archived: 0 })
    const colourwayId = act.newId('cw')
    await act.insert('colourway', {
      id: colourwayId,
      design_id: id,
      position: 1,
      name: 'First colourway',
    })
    await fillColourway(act, { colourwayId, body: input.body, materials: input.materials ?? {} })
    const saved = await saveVersion(act, { designId: id, version: 1, input })
    return { value: { id, ...saved }, label: `Added the design ${input.name}` }
  }
  if (input.materials !== undefined) {
    refuse(
      'colourways-stand',
      `${input.name} has colourways already, each with its own beads.`,
      'Save the beads with the colourway they belong to.',
      'materials',
    )
  }
  const design = await getRow(act.trx, 'design', input.id)
  await act.update('design', design.id, row)
  const latest = await getLatestVersion(act, design.id)
  const same = sameBody(await readBody(act, latest.id), input.body)
  const saved = same
    ? { versionId: latest.id, version: latest.version }
    : await saveVersion(act, { designId: design.id, version: latest.version + 1, input })
  await noteSaved(act.trx, { designId: design.id, versionId: saved.versionId, body: input.body })
  return {
    value: { id: design.id, ...saved },
    label: same ? `Saved ${input.name}` : `Saved version ${saved.version} of ${input.name}`,
  }
}

function sameBody(a: DesignBody, b: DesignBody): boolean {
  return JSON.stringify(a) === JSON.stringify(b)
}

type NewVersion = Readonly<{
  designId: string
  version: number
  input: Readonly<{ body: DesignBody; note: string }>
}>

async function saveVersion(act: Act, { designId, version, input }: NewVersion) {
  const versionId = act.newId('ver')
  await act.insert('design_version', {
    id: versionId,
    design_id: designId,
    version,
    body_json: JSON.stringify(input.body),
    note: input.note,
    saved_at_ms: act.atMs,
  })
  // Read once now, so that no later screen has to wait for it.
  await factsOf(act, versionId)
  return { versionId, version }
}

export const archiveDesign: ActHandler<'designs.archive'> = async (act, { id, archived }) => {
  const design = await getRow(act.trx, 'design', id)
  await act.update('design', id, { archived: toFlag(archived) })
  return { value: {}, label: `${archived ? 'Put away' : 'Brought back'} ${design.name}` }
}
