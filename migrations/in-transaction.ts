import { type Kysely, sql, type Transaction } from 'kysely'

/**
 * Runs one migration's steps in a transaction of its own and stamps the file with its number.
 *
 * The migrator gives none on SQLite. Foreign keys are off around it (the runner sees to that), so
 * they are checked here, before anything is committed.
 */
export async function inTransaction(
  db: Kysely<unknown>,
  version: number,
  steps: (trx: Transaction<unknown>) => Promise<void>,
): Promise<void> {
  await db.transaction().execute(async (trx) => {
    await steps(trx)
    const { rows } = await sql<{ table: string }>`pragma foreign_key_check`.execute(trx)
    if (rows.length > 0) {
      throw new Error(`Migration ${version}: expected no loose references, got ${rows.length}`)
    }
    await sql.raw(`pragma user_version = ${version}`).execute(trx)
  })
}

/** Runs statements one after the other. */
export async function runAll(
  trx: Transaction<unknown>,
  statements: readonly string[],
): Promise<void> {
  for (const statement of statements) await sql.raw(statement).execute(trx)
}
