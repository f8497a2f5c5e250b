import { sql, type Transaction } from 'kysely'
import { refuse } from '../refused.ts'
import { anyTable } from './act.ts'
import type { Database, KeptName, LedgerName, Row } from './database.ts'

/** Amounts of a ledger's lines: what takes a line back carries the opposite of each. */
const AMOUNTS: Readonly<Record<LedgerName, readonly string[]>> = {
  stock_movement: ['quantity', 'value_minor'],
  piece_movement: [],
  sale: [
    'units',
    'price_minor',
    'tax_minor',
    'net_minor',
    'fees_minor',
    'cost_minor',
    'profit_minor',
  ],
}

/** The latest act that stands and may be undone. */
export async function findUndoable(trx: Transaction<Database>): Promise<Row<'action'> | undefined> {
  const last = await latest(trx, 'done')
  return last?.fixed === 0 ? last : undefined
}

/** The first of the acts undone since the latest one that stands: what a redo does again. */
export async function findRedoable(trx: Transaction<Database>): Promise<Row<'action'> | undefined> {
  const last = await latest(trx, 'done')
  return trx
    .selectFrom('action')
    .selectAll()
    .where('state', '=', 'undone')
    .where('seq', '>', last?.seq ?? 0)
    .orderBy('seq')
    .limit(1)
    .executeTakeFirst()
}

function latest(trx: Transaction<Database>, state: 'done' | 'undone') {
  return trx
    .selectFrom('action')
    .selectAll()
    .where('state', '=', state)
    .orderBy('seq', 'desc')
    .limit(1)
    .executeTakeFirst()
}

/** Undoes the latest act that stands; gives its label. */
export async function undo(trx: Transaction<Database>, atMs: number): Promise<string> {
  const action = await findUndoable(trx)
  if (action === undefined) {
    return refuse('nothing-to-undo', 'There is nothing to undo.', 'Go on working.')
  }
  for (const change of (await changesOf(trx, action.id)).toReversed()) {
    await turn(trx, { change, action, atMs, to: 'undone' })
  }
  await setState(trx, action.id, 'undone')
  return action.label
}

/** Does the act undone last again; gives its label. */
export async function redo(trx: Transaction<Database>, atMs: number): Promise<string> {
  const action = await findRedoable(trx)
  if (action === undefined) {
    return refuse(
      'nothing-to-redo',
      'There is nothing to do again.',
      'A step can be done again until the next new one.',
    )
  }
  for (const change of await changesOf(trx, action.id)) {
    await turn(trx, { change, action, atMs, to: 'done' })
  }
  await setState(trx, action.id, 'done')
  return action.label
}

function changesOf(trx: Transaction<Database>, actionId: string) {
  return trx
    .selectFrom('change')
    .selectAll()
    .where('action_id', '=', actionId)
    .orderBy('seq')
    .execute()
}

async function setState(
  trx: Transaction<Database>,
  id: string,
  state: 'done' | 'undone',
): Promise<void> {
  await trx.updateTable('action').set({ state }).where('id', '=', id).execute()
}

type Turn = Readonly<{
  change: Row<'change'>
  action: Row<'action'>
  atMs: number
  to: 'done' | 'undone'
}>

async function turn(trx: Transaction<Database>, { change, action, atMs, to }: Turn): Promise<void> {
  // The names were written by an act, whose types let no others in.
  const table = change.table_name
  switch (change.kind) {
    case 'insert': {
      const [from, into] = to === 'undone' ? [null, action.id] : [action.id, null]
      const patch = { before: { removed_by: from }, after: { removed_by: into } }
      return rewrite(trx, table as KeptName, change.row_id, patch, action.label)
    }
    case 'update': {
      const [before, after] = [parse(change.before_json), parse(change.after_json)]
      const patch = to === 'undone' ? { before: after, after: before } : { before, after }
      return rewrite(trx, table as KeptName, change.row_id, patch, action.label)
    }
    case 'append':
      return takeBack(trx, table as LedgerName, Number(change.row_id), atMs)
  }
}

type Values = Readonly<Record<string, unknown>>

function parse(json: string | null): Values {
  return JSON.parse(json ?? '{}') as Values
}

/** Sets columns from what they must be now to what they were; refused when something else changed them. */
async function rewrite(
  trx: Transaction<Database>,
  table: KeptName,
  id: string,
  { before, after }: Readonly<{ before: Values; after: Values }>,
  label: string,
): Promise<void> {
  const any = anyTable(trx)
  const row = await any.read(table, id)
  if (Object.keys(before).some((column) => row[column] !== before[column])) {
    refuse(
      'changed-since',
      `“${label}” cannot be turned back: something it touched has changed since.`,
      'Put it right by hand, for example with a count or a new entry.',
    )
  }
  await any.write(table, id, after)
}

/** Adds the exact opposite of a line as it stands: of the line itself, or of what took it back last. */
async function takeBack(
  trx: Transaction<Database>,
  table: LedgerName,
  headId: number,
  atMs: number,
): Promise<void> {
  const { rows } = await sql<Values>`select * from ${sql.table(table)}
    where id = ${headId} or head_id = ${headId} order by id desc limit 1`.execute(trx)
  const [last] = rows
  if (last === undefined) throw new Error(`${table}: expected a line ${headId}, found none`)
  const { id, ...line } = last
  const opposite = Object.fromEntries(
    AMOUNTS[table].map((column) => [column, 0 - Number(line[column])]),
  )
  await anyTable(trx).add(table, {
    ...line,
    ...opposite,
    at_ms: atMs,
    head_id: headId,
    reverses_id: id,
  })
}
