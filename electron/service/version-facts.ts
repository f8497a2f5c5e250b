import { type OwnTables, tablesWithOwn } from '../../shared-core/beads/own-tables.ts'
import type { BeadTables } from '../../shared-core/beads/user-forms.ts'
import { makeOutline } from '../../shared-core/bench/make-outline.ts'
import type { DesignBody } from '../../shared-core/design/design.ts'
import { readDesign } from '../../shared-core/design/read-design.ts'
import type { DesignReading } from '../../shared-core/design/reading.ts'
import type { VersionFacts } from './store/facts.ts'
import { ownTables } from './store/table-rows.ts'
import type { View } from './store/view.ts'

/** Raised whenever the core reads designs differently, so that facts kept in files are read anew. */
export const READING_EDITION = 8

/**
 * The facts of versions by id, read once and then kept in the file and in memory; read anew where the
 * workshop's own figures of its beads or thread are no longer those it was read with.
 */
export async function versionFacts(
  view: View,
  versionIds: Iterable<string>,
): Promise<ReadonlyMap<string, VersionFacts>> {
  const wanted = [...new Set(versionIds)]
  const own = await ownTables(view.trx)
  const tables = tablesWithOwn(own)
  const isKnown = (id: string) => {
    const facts = view.memory.get(id)
    return facts !== undefined && facts.ownFigures === ownFigures(facts, own)
  }
  const unknown = wanted.filter((id) => !view.memory.has(id))
  if (unknown.length > 0) await recall(view, unknown)
  for (const id of wanted) if (!isKnown(id)) await readAndKeep(view, id, { own, tables })
  return new Map(
    wanted.flatMap((id) => {
      const facts = view.memory.get(id)
      return facts === undefined ? [] : [[id, facts] as const]
    }),
  )
}

/** The facts of one version. */
export async function factsOf(view: View, versionId: string): Promise<VersionFacts> {
  const facts = (await versionFacts(view, [versionId])).get(versionId)
  if (facts === undefined) throw new Error(`expected facts of version ${versionId}`)
  return facts
}

// A statement takes 32,766 values.
const AT_ONCE = 10_000

async function recall({ trx, memory }: View, versionIds: readonly string[]): Promise<void> {
  for (let from = 0; from < versionIds.length; from += AT_ONCE) {
    const rows = await trx
      .selectFrom('version_reading')
      .select(['version_id', 'reading_json'])
      .where('version_id', 'in', versionIds.slice(from, from + AT_ONCE))
      .where('edition', '=', READING_EDITION)
      .execute()
    for (const row of rows) {
      memory.set(row.version_id, JSON.parse(row.reading_json) as VersionFacts)
    }
  }
}

async function readAndKeep(
  { trx, memory }: View,
  versionId: string,
  { own, tables }: Readonly<{ own: OwnTables; tables: BeadTables }>,
): Promise<void> {
  const row = await trx
    .selectFrom('design_version')
    .select(['design_id', 'body_json'])
    .where('id', '=', versionId)
    .executeTakeFirstOrThrow()
  const body = JSON.parse(row.body_json) as DesignBody
  const read = readDesign(body, tables)
  if (!read.ok) throw new Error(`version ${versionId} was saved readable: ${read.error.message}`)
  const facts = factsFrom(row.design_id, body, read.value, own)
  const kept = { edition: READING_EDITION, reading_json: JSON.stringify(facts) }
  await trx
    .insertInto('version_reading')
    .values({ version_id: versionId, ...kept })
    .onConflict((conflict) => conflict.column('version_id').doUpdateSet(kept))
    .execute()
  memory.set(versionId, facts)
}

function factsFrom(
  designId: string,
  body: DesignBody,
  reading: DesignReading,
  own: OwnTables,
): VersionFacts {
  const formIds = formsOf(body)
  return {
    designId,
    formIds,
    ownFigures: ownFigures({ formIds, threadId: body.threadId }, own),
    unitName: body.unitName,
    palette: body.palette,
    extras: body.extras,
    threadId: body.threadId,
    beads: reading.beads,
    counts: reading.counts,
    thread: reading.thread,
    work: reading.work,
    ownSeconds: {
      ...(body.setUpS === undefined ? {} : { setUpS: body.setUpS }),
      ...(body.finishingS === undefined ? {} : { finishingS: body.finishingS }),
    },
    labour: reading.labour,
    outline: makeOutline(body, reading),
  }
}

/** Every bead form a body names, each once. */
function formsOf({ palette, parts }: DesignBody): readonly string[] {
  const panels = parts.flatMap((part) => (part.kind === 'panel' ? [part.formId] : []))
  return [...new Set([...palette.map(({ formId }) => formId), ...panels])]
}

/** The workshop's own figures that a version is counted with; facts hold only as long as these do. */
function ownFigures(
  { formIds, threadId }: Pick<VersionFacts, 'formIds' | 'threadId'>,
  { forms, threads }: OwnTables,
): string {
  const used = [
    ...forms.filter(({ id }) => formIds.includes(id)),
    ...threads.filter(({ id }) => id === threadId),
  ]
  return used.length === 0 ? '' : JSON.stringify(used)
}
