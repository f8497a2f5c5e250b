import type { Kysely } from 'kysely'
import { type Migration, Migrator } from 'kysely/migration'
import type { Database } from './database.ts'
import type { Driver } from './driver.ts'

/**
 * Brings a file up to date (or, for tests, to one migration). Throws what a migration threw; the
 * failed migration has left nothing behind.
 *
 * Foreign keys are off while it runs, because a table may have to be rebuilt; each migration checks
 * them before it commits.
 */
export async function migrate(
  driver: Driver,
  migrations: Readonly<Record<string, Migration>>,
  to?: string,
): Promise<void> {
  driver.pragma('foreign_keys = off')
  try {
    const migrator = migratorFor(driver.db, migrations)
    const { error } = await (to === undefined ? migrator.migrateToLatest() : migrator.migrateTo(to))
    if (error !== undefined) throw error
  } finally {
    driver.pragma('foreign_keys = on')
  }
}

function migratorFor(
  db: Kysely<Database>,
  migrations: Readonly<Record<string, Migration>>,
): Migrator {
  return new Migrator({ db, provider: { getMigrations: async () => ({ ...migrations }) } })
}
