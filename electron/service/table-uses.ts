import type { Transaction } from 'kysely'
import type { Database } from './store/database.ts'

/** What names an entry of the tables: materials by name, and designs by id with their names. */
export type EntryUses = Readonly<{
  materials: readonly string[]
  designs: ReadonlyMap<string, string>
}>

/** Uses of bead forms and of threads by their ids; no entry for what nothing names. */
export type TableUses = Readonly<{
  forms: ReadonlyMap<string, EntryUses>
  threads: ReadonlyMap<string, EntryUses>
}>

type Noted = Readonly<{ materials: string[]; designs: Map<string, string> }>
type Notes = Readonly<{ forms: Map<string, Noted>; threads: Map<string, Noted> }>

/** Reads what names which form and thread: materials, every version of a design, what lies on the drawing table. */
export async function readTableUses(trx: Transaction<Database>): Promise<TableUses> {
  const notes: Notes = { forms: new Map(), threads: new Map() }
  const materials = await trx
    .selectFrom('material')
    .select(['kind', 'form_id', 'name'])
    .where('removed_by', 'is', null)
    .where('form_id', 'is not', null)
    .orderBy('name')
    .execute()
  for (const { kind, form_id, name } of materials) {
    const list = kind === 'thread' ? notes.threads : notes.forms
    noted(list, form_id ?? '').materials.push(name)
  }
  const names = new Map(
    (
      await trx
        .selectFrom('design')
        .select(['id', 'name'])
        .where('removed_by', 'is', null)
        .execute()
    ).map(({ id, name }) => [id, name]),
  )
  for (const { design_id, json } of await designTexts(trx)) {
    const name = names.get(design_id)
    if (name !== undefined) noteNamed(notes, json, { id: design_id, name })
  }
  return notes
}

/** Everything a design is written in: its versions, its drawing, and the strokes that undo may bring back. */
async function designTexts(trx: Transaction<Database>) {
  const versions = await trx
    .selectFrom('design_version')
    .select(['design_id', 'body_json as json'])
    .where('removed_by', 'is', null)
    .execute()
  const drafts = await trx.selectFrom('draft').select(['design_id', 'body_json as json']).execute()
  const strokes = await trx
    .selectFrom('draft_stroke')
    .select(['design_id', 'redo_json', 'undo_json'])
    .where(({ eb, or }) =>
      or([
        eb('redo_json', 'like', '%formId%'),
        eb('redo_json', 'like', '%threadId%'),
        eb('undo_json', 'like', '%formId%'),
        eb('undo_json', 'like', '%threadId%'),
      ]),
    )
    .execute()
  return [
    ...versions,
    ...drafts,
    ...strokes.map(({ design_id, redo_json, undo_json }) => ({
      design_id,
      json: redo_json + undo_json,
    })),
  ]
}

/** Inside a quoted text the quotes are escaped, so that only a field can look like this. */
const NAMED = /"(formId|threadId)":("(?:[^"\\]|\\.)*")/g

function noteNamed(
  { forms, threads }: Notes,
  json: string,
  { id, name }: Readonly<{ id: string; name: string }>,
): void {
  const seen = new Set<string>()
  for (const [whole, field, quoted = '""'] of json.matchAll(NAMED)) {
    if (seen.has(whole)) continue
    seen.add(whole)
    const entry = JSON.parse(quoted) as string
    noted(field === 'threadId' ? threads : forms, entry).designs.set(id, name)
  }
}

function noted(list: Map<string, Noted>, id: string): Noted {
  const found = list.get(id) ?? { materials: [], designs: new Map<string, string>() }
  list.set(id, found)
  return found
}
