import { existsSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import BetterSqlite, { type Database as Connection, type Statement } from 'better-sqlite3'
import {
  CompiledQuery,
  type DatabaseConnection,
  type Dialect,
  Kysely,
  type Driver as KyselyDriver,
  SqliteDialect,
  type SqliteDialectConfig,
  SqliteDriver,
  type TransactionSettings,
} from 'kysely'
import type { Database } from './database.ts'

// The one module that knows which database stands behind kysely, and how to set it up.

/** A store's open file: kysely in front, and what only this database can do. */
export type Driver = Readonly<{
  db: Kysely<Database>
  pragma: (text: string) => unknown
  /** Copies the file as it stands, log included, while it is open. */
  copyTo: (file: string) => Promise<void>
  close: () => Promise<void>
}>

/** Statements kept prepared; a store has a few hundred kinds of them. */
const KEPT_STATEMENTS = 600

/** Opens a file, or a database in memory for `:memory:`. Sets nothing yet: see `setUpConnection`. */
export function openDriver(file: string): Driver {
  const connection = new BetterSqlite(file, { timeout: 5_000, ...nativeBinding() })
  const db = new Kysely<Database>({ dialect: dialectOn(connection) })
  return {
    db,
    pragma: (text) => connection.pragma(text, { simple: true }),
    copyTo: async (target) => {
      await connection.backup(target)
    },
    close: async () => {
      await db.destroy()
      // Kysely closes only what it has asked something.
      if (connection.open) connection.close()
    },
  }
}

/** The version in the write-ahead log counts too; read-only, so that closing changes nothing. */
export function peekVersion(file: string): number {
  const connection = new BetterSqlite(file, { readonly: true, ...nativeBinding() })
  try {
    return Number(connection.pragma('user_version', { simple: true }))
  } finally {
    connection.close()
  }
}

/**
 * The native module, by path: the library looks for it from its own file, and bundled it has none.
 *
 * Runtimes whose Node-API is older than the shipped module wants bring a module of their own. Where
 * none is shipped for this machine, the library may still find one that was compiled here.
 */
function nativeBinding(): Readonly<{ nativeBinding?: string }> {
  const own = process.env['TALLYSTRAND_SQLITE_BINDING']
  if (Number(process.versions['napi']) < 10 && own) return { nativeBinding: own }
  const library = createRequire(import.meta.url).resolve('better-sqlite3/package.json')
  const shipped = `${process.platform}-${process.arch}.node`
  const path = join(dirname(library), 'prebuilds', shipped)
  return existsSync(path) ? { nativeBinding: path } : {}
}

function dialectOn(connection: Connection): Dialect {
  const kept = new Map<string, Statement>()
  const prepare = (sql: string): Statement => {
    const known = kept.get(sql)
    if (known !== undefined) return known
    const statement = connection.prepare(sql)
    if (kept.size >= KEPT_STATEMENTS) kept.clear()
    kept.set(sql, statement)
    return statement
  }
  return new LockingDialect({
    database: {
      prepare,
      close: () => {
        kept.clear()
        connection.close()
      },
    },
  })
}

/**
 * Takes the write lock at the beginning of a serializable transaction.
 *
 * A transaction that reads first and writes later fails at once, without waiting, when another
 * process has written in between.
 */
class LockingDriver extends SqliteDriver {
  override async beginTransaction(
    connection: DatabaseConnection,
    settings?: TransactionSettings,
  ): Promise<void> {
    const mode = settings?.isolationLevel === 'serializable' ? 'begin immediate' : 'begin'
    await connection.executeQuery(CompiledQuery.raw(mode))
  }
}

class LockingDialect extends SqliteDialect {
  readonly #config: SqliteDialectConfig

  constructor(config: SqliteDialectConfig) {
    super(config)
    this.#config = config
  }

  override createDriver(): KyselyDriver {
    return new LockingDriver(this.#config)
  }
}

/**
 * Makes the connection durable and strict, and reads back that it is.
 *
 * Write-ahead log synced at every commit; foreign keys held; no memory mapping, which turns a read
 * error into a crash; on macOS the drive's cache is flushed too.
 */
export function setUpConnection({ pragma }: Driver, inMemory: boolean): void {
  if (!inMemory) expectPragma(pragma, 'journal_mode = wal', 'wal')
  pragma('synchronous = full')
  expectPragma(pragma, 'synchronous', 2)
  pragma('foreign_keys = on')
  expectPragma(pragma, 'foreign_keys', 1)
  pragma('mmap_size = 0')
  if (process.platform === 'darwin') {
    expectPragma(pragma, 'fullfsync = on', undefined)
    expectPragma(pragma, 'fullfsync', 1)
    pragma('checkpoint_fullfsync = on')
  }
}

function expectPragma(pragma: Driver['pragma'], text: string, expected: unknown): void {
  const found = pragma(text)
  if (expected !== undefined && found !== expected) {
    throw new Error(`pragma ${text}: expected ${expected}, got ${found}`)
  }
}
