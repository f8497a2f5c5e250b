import { type Insertable, sql, type Transaction } from 'kysely'
import type { CallName } from '../../../shared-core/contract/calls.ts'
import type { Database, KeptName, LedgerName, Row } from './database.ts'
import type { View } from './view.ts'

/** What a new row of a kept table is made of; that it counts goes without saying. */
export type NewRow<T extends KeptName> = Omit<Insertable<Database[T]>, 'removed_by'>
/** What a new line of a ledger is made of; the act adds whose it is and when. */
export type NewLine<T extends LedgerName> = Omit<
  Insertable<Database[T]>,
  'id' | 'at_ms' | 'action_id' | 'head_id' | 'reverses_id'
>
/** Columns to change. */
export type Patch<T extends KeptName> = Partial<Omit<Row<T>, 'id' | 'removed_by'>>

/**
 * One act of the maker: every change of the store goes through it, inside one transaction, and is
 * kept so that it can be undone.
 */
export type Act = View &
  Readonly<{
    atMs: number
    /** A new id with this prefix. */
    newId: (prefix: string) => string
    insert: <T extends KeptName>(table: T, row: NewRow<T>) => Promise<void>
    /** Changes columns of a row and says whether any did; columns that stay as they are are not recorded. */
    update: <T extends KeptName>(table: T, id: string, patch: Patch<T>) => Promise<boolean>
    /** Takes a row out of account and says whether it was not already; it stays in the file, and undo brings it back. */
    remove: (table: KeptName, id: string) => Promise<boolean>
    /** Adds a line to a ledger and gives its number. */
    append: <T extends LedgerName>(table: T, line: NewLine<T>) => Promise<number>
  }>

/** An act under way, with its end. */
export type OpenAct = Act &
  Readonly<{
    /** Writes the act into the history; one that changed nothing leaves no trace there, and says false. */
    finish: (label: string) => Promise<boolean>
  }>

type Change = Readonly<{
  kind: 'insert' | 'update' | 'append'
  table_name: string
  row_id: string
  before_json: string | null
  after_json: string | null
}>

type Opening = Readonly<{
  view: View
  call: CallName
  atMs: number
  newId: (prefix: string) => string
  /** Whether the act belongs to a past that cannot be undone. */
  fixed: boolean
}>

/** Opens an act in a transaction. Its row is written last; the references to it wait for the commit. */
export function openAct({ view, call, atMs, newId, fixed }: Opening): OpenAct {
  const { trx } = view
  const actionId = newId('act')
  const changes: Change[] = []
  const any = anyTable(trx)

  async function update(table: KeptName, id: string, patch: AnyRow) {
    const change = await updateChange(any, table, id, patch)
    if (change !== undefined) changes.push(change)
    return change !== undefined
  }

  return {
    ...view,
    atMs,
    newId,
    insert: async (table, row) => {
      await any.add(table, { ...row, removed_by: null })
      changes.push(plainChange('insert', table, String((row as unknown as { id: string }).id)))
    },
    update,
    remove: (table, id) => update(table, id, { removed_by: actionId }),
    append: async (table, line) => {
      const own = { at_ms: atMs, action_id: actionId, head_id: null, reverses_id: null }
      const id = await any.add(table, { ...line, ...own })
      changes.push(plainChange('append', table, String(id)))
      return id
    },
    finish: async (label) => {
      if (changes.length === 0) return false
      await keep(trx, { id: actionId, call, atMs, label, fixed }, changes)
      return true
    },
  }
}

/** Writes the columns that differ; nothing where none does. */
async function updateChange(
  any: ReturnType<typeof anyTable>,
  table: KeptName,
  id: string,
  patch: AnyRow,
): Promise<Change | undefined> {
  const row = await any.read(table, id)
  const changed = Object.keys(patch).filter((column) => row[column] !== patch[column])
  if (changed.length === 0) return undefined
  const [before, after] = [pick(row, changed), pick(patch, changed)]
  await any.write(table, id, after)
  return {
    kind: 'update',
    table_name: table,
    row_id: id,
    before_json: JSON.stringify(before),
    after_json: JSON.stringify(after),
  }
}

function plainChange(kind: 'insert' | 'append', table: string, id: string): Change {
  return { kind, table_name: table, row_id: id, before_json: null, after_json: null }
}

function pick(row: Readonly<Record<string, unknown>>, columns: readonly string[]) {
  return Object.fromEntries(columns.map((column) => [column, row[column]]))
}

type Finished = Readonly<{
  id: string
  call: CallName
  atMs: number
  label: string
  fixed: boolean
}>

// Seven values a change; a statement takes 32,766.
const CHANGES_AT_ONCE = 1_000

async function keep(
  trx: Transaction<Database>,
  { id, call, atMs, label, fixed }: Finished,
  changes: readonly Change[],
): Promise<void> {
  const last = await trx
    .selectFrom('action')
    .select(({ fn }) => fn.max('seq').as('seq'))
    .executeTakeFirst()
  await trx
    .insertInto('action')
    .values({
      id,
      seq: (last?.seq ?? 0) + 1,
      at_ms: atMs,
      call,
      label,
      fixed: fixed ? 1 : 0,
      state: 'done',
    })
    .execute()
  const rows = changes.map((change, seq) => ({ action_id: id, seq, ...change }))
  for (let from = 0; from < rows.length; from += CHANGES_AT_ONCE) {
    await trx
      .insertInto('change')
      .values(rows.slice(from, from + CHANGES_AT_ONCE))
      .execute()
  }
}

type AnyRow = Readonly<Record<string, unknown>>

/** Reads and writes rows of a table known only by name, for acts and their undoing. */
export function anyTable(trx: Transaction<Database>) {
  async function find(table: KeptName | LedgerName, id: string): Promise<AnyRow | undefined> {
    const query = sql<AnyRow>`select * from ${sql.table(table)} where id = ${id}`
    return (await query.execute(trx)).rows[0]
  }
  return {
    find,
    read: async (table: KeptName | LedgerName, id: string): Promise<AnyRow> => {
      const row = await find(table, id)
      if (row === undefined) throw new Error(`${table}: expected a row ${id}, found none`)
      return row
    },
    write: async (table: KeptName, id: string, patch: AnyRow): Promise<void> => {
      const sets = Object.entries(patch).map(
        ([column, value]) => sql`${sql.ref(column)} = ${value}`,
      )
      await sql`update ${sql.table(table)} set ${sql.join(sets)} where id = ${id}`.execute(trx)
    },
    add: async (table: KeptName | LedgerName, row: AnyRow): Promise<number> => {
      const columns = sql.join(Object.keys(row).map((column) => sql.ref(column)))
      const values = sql.join(Object.values(row))
      const query = sql`insert into ${sql.table(table)} (${columns}) values (${values})`
      return Number((await query.execute(trx)).insertId ?? 0)
    },
  }
}
